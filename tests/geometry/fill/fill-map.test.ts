import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { decideFill, isListed } from '../../../geometry/fill/fill-map.ts';
import type { Job, Mark } from '../../../geometry/job/job.ts';
import { metalOf } from '../../../geometry/moments/integrate.ts';
import { faceOf, job, patch, pit, polar } from '../made.ts';

const face = faceOf('face', { holes: [] });
const decide = (marks: Mark[], repair: Partial<Job['repair']> = {}) => {
  const map = replay(face, marks);
  return { map, fill: decideFill('plate', face, map, job([], {}, repair).repair) };
};

describe('damage regions', () => {
  test('patches that touch are one region, patches apart are two', () => {
    expect(decide([patch([90, 110], [0, 40], 2), patch([110, 130], [30, 60], 3)]).fill.regions).toHaveLength(
      1,
    );
    expect(decide([patch([90, 110], [0, 40], 2), patch([115, 130], [30, 60], 3)]).fill.regions).toHaveLength(
      2,
    );
  });
  test('a region across the 0/360 line is one region', () => {
    const { fill } = decide([patch([90, 110], [350, 360], 2), patch([90, 110], [0, 12], 2)]);
    expect(fill.regions).toHaveLength(1);
    // (110^2 - 90^2)/2 x 22 degrees, closed form.
    expect(
      Math.abs(fill.regions[0].area / (((110 ** 2 - 90 ** 2) / 2) * ((22 * Math.PI) / 180)) - 1),
    ).toBeLessThan(2e-3);
  });
  test('wear of 0.05 mm or less is no damage', () => {
    expect(decide([patch([90, 110], [0, 40], 0.05)]).fill.regions).toHaveLength(0);
    expect(decide([patch([90, 110], [0, 40], 0.06)]).fill.regions).toHaveLength(1);
  });
  test('regions come deepest first, and say where', () => {
    const { fill } = decide([
      pit(100, 50, 10, 1.5, 'cone'),
      pit(120, 200, 10, 4, 'cone'),
      pit(90, 300, 10, 2.5, 'cone'),
    ]);
    expect(fill.regions.map((region) => Math.round(region.deepest * 10) / 10)).toEqual([4, 2.5, 1.5]);
    const [radius, angle] = fill.regions[0].at;
    expect(Math.abs(radius - 120)).toBeLessThan(0.3);
    expect(Math.abs(angle * radius - polar(120, 200)[1] * 120)).toBeLessThan(0.5);
  });
});

describe('fill or leave', () => {
  const shallow = pit(100, 50, 10, 0.6, 'bowl');
  const deep = pit(120, 200, 10, 2, 'bowl');
  test('the limit decides', () => {
    const actions = decide([shallow, deep]).fill.regions.map((region) => region.action);
    expect(actions).toEqual(['fill', 'leave']);
  });
  test('the person overrules the region under a point, the last word wins, and a point on sound metal does nothing', () => {
    const overrule = (radius: number, degrees: number, action: 'fill' | 'leave') => ({
      part: 'plate',
      face: 'face',
      point: polar(radius, degrees),
      action,
    });
    const { fill } = decide([shallow, deep], {
      overrules: [
        overrule(120, 200, 'leave'),
        overrule(100.5, 50, 'leave'),
        overrule(100.5, 50, 'fill'),
        overrule(140, 0, 'fill'),
      ],
    });
    expect(fill.regions.map(({ action, overruled }) => [action, overruled])).toEqual([
      ['leave', true],
      ['fill', true],
    ]);
  });
});

test('with an allowance the outermost layer of a listed face is kept for the coat', () => {
  const marks = [patch([90, 130], [20, 95], 3.5)];
  const { map, fill } = decide(marks, { coatAllowance: 0.5 });
  // Sector 90..130, 75 degrees, 3.5 - 0.5 = 3 mm of filler: closed form, edges true to 1/32 cell.
  const exact = ((130 ** 2 - 90 ** 2) / 2) * ((75 * Math.PI) / 180) * 3;
  expect(Math.abs(metalOf(face, map, fill, 'fill').volume / exact - 1)).toBeLessThan(5e-4);
  const unlisted = decide(marks, { coatAllowance: 0.5, allowanceFaces: ['other:*'] });
  expect(metalOf(face, unlisted.map, unlisted.fill, 'fill').volume / exact).toBeCloseTo(3.5 / 3, 3);
});

test('a pattern with * names every face it fits and no other', () => {
  expect(isListed(['plate:*'], 'plate', 'bore')).toBe(true);
  expect(isListed(['plate:*'], 'plate-2', 'bore')).toBe(false);
  expect(isListed(['impeller:vane-*/tip'], 'impeller', 'vane-3/tip')).toBe(true);
  expect(isListed(['a.b:face'], 'axb', 'face')).toBe(false);
  expect(isListed(['*'], 'plate', 'face')).toBe(true);
  expect(isListed(['plate:f*ace'], 'plate', 'face')).toBe(true);
  expect(isListed(['plate:fa*ace'], 'plate', 'face')).toBe(false);
});

test('a pattern of many * on a long name is answered at once', () => {
  expect(isListed([`${'*a'.repeat(200)}*c:face`], `${'a'.repeat(400)}b`, 'face')).toBe(false);
  expect(isListed([`${'*a'.repeat(200)}*b:face`], `${'a'.repeat(400)}b`, 'face')).toBe(true);
});
