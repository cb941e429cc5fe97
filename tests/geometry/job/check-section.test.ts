import { describe, expect, test } from 'vitest';
import { sentences } from './sentences.ts';
import { wholeJob } from './whole-job.ts';

/** The sentences about the whole job with these sections on one of its parts: 0 round plate, 1 outlined, 2 impeller. */
function laid(part: number, ...sections: unknown[]): string[] {
  const job = wholeJob();
  job.parts[part].sections = sections;
  return sentences(job);
}

const line = { kind: 'line', face: 'face', from: [70, 10], to: [150, 40] };

describe('a section', () => {
  test('of every kind that fits is no fault, also where it misses the metal', () => {
    expect(laid(0, line, { kind: 'along-first', face: 'bore', at: 4 })).toEqual([]);
    expect(laid(0, { ...line, from: [20, 0], to: [500, 0] })).toEqual([]);
    expect(laid(0, { kind: 'along-second', face: 'face', at: 900 })).toEqual([]);
    expect(laid(1, { ...line, from: [-5, -5], to: [130, 90] })).toEqual([]);
    expect(laid(2, { kind: 'along-second', face: 'vane-5/tip', at: 40 })).toEqual([]);
  });

  test('names its kind', () => {
    expect(laid(0, { ...line, kind: 'cut' })).toEqual([
      'parts[0].sections[0].kind: "cut" is not "line", "along-first" or "along-second"',
    ]);
    expect(laid(0, 'line')).toEqual([
      'parts[0].sections[0]: the text "line" is not a section in braces, { "kind": … }',
    ]);
  });

  test('lies on one face that the part has', () => {
    expect(laid(0, { ...line, face: 'rim' })).toEqual([
      'parts[0].sections[0].face: "rim" is not one face of this part: "face" or "bore"',
    ]);
    expect(laid(2, { kind: 'along-first', face: 'vane-*/tip', at: 0 })).toEqual([
      'parts[2].sections[0].face: "vane-*/tip" is not one face of this part: "shroud/front", "shroud/back", or vane-1 to vane-5 with /pressure, /suction, /tip, /leading-edge, /trailing-edge',
    ]);
    expect(laid(0, { kind: 'line', from: [1, 1], to: [2, 2] })).toEqual([
      'parts[0].sections[0].face: missing, needs the name of one face such as "face" or "vane-2/tip"',
    ]);
  });

  test('has no radius below 0', () => {
    expect(laid(0, { ...line, from: [-1, 0], to: [-2, 0] })).toEqual([
      'parts[0].sections[0].from[0]: -1 is not a radius, at least 0',
      'parts[0].sections[0].to[0]: -2 is not a radius, at least 0',
    ]);
    expect(laid(0, { kind: 'along-second', face: 'face', at: -70 })).toEqual([
      'parts[0].sections[0].at: -70 is not a radius, at least 0',
    ]);
    // In the bore the first number is an angle, and the other one a depth past its edge is no fault.
    expect(laid(0, { kind: 'along-second', face: 'bore', at: -70 })).toEqual([]);
  });

  test('ends elsewhere than it begins, however many turns away its angle is written', () => {
    const fault = (to: string) => `parts[0].sections[0].to: ${to} is not another place than from [70,10]`;
    expect(laid(0, { ...line, to: [70, 10] })).toEqual([fault('[70,10]')]);
    expect(laid(0, { ...line, to: [70, 370] })).toEqual([fault('[70,370]')]);
    expect(laid(0, { ...line, to: [70, 10.1] })).toEqual([]);
    expect(laid(0, { ...line, from: [0, 10], to: [0, 50] })).toEqual([
      'parts[0].sections[0].to: [0,50] is not another place than from [0,10]',
    ]);
    expect(laid(1, { ...line, from: [10, 10], to: [10, 370] })).toEqual([]);
  });

  test('comes with no more than 19 others', () => {
    const sections = Array.from({ length: 21 }, () => line);
    expect(laid(0, ...sections)).toEqual([
      'parts[0].sections: a list of 21 is not a list of at most 20 sections',
    ]);
    expect(laid(0, ...sections.slice(1))).toEqual([]);
  });
});
