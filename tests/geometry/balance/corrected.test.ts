import { describe, expect, test } from 'vitest';
import { corrected } from '../../../geometry/balance/corrected.ts';
import type { Correction, Mark } from '../../../geometry/job/job.ts';
import { toRadians } from '../../../geometry/units.ts';
import { madeImpeller } from '../made.ts';
import { rotorInput, shroudOf } from './made-rotor.ts';

const IRON = 7.2e-3;
const PUTTY = 2.3e-3;
const at = (radius: number, degrees: number) => [radius, toRadians(degrees)] as const;
/** On one of few vanes, for speed; the shroud is the same. */
const done = (corrections: readonly Correction[], { marks = [], cell = 0.5, count = 1 }: Worn = {}) => {
  const shape = madeImpeller({ count }, { leastThickness: 4 });
  const shroud = shroudOf(rotorInput({ shape, marks, cell }));
  return corrected(corrections, shroud, { metal: IRON, filler: PUTTY }).each;
};
interface Worn {
  readonly marks?: readonly Mark[];
  readonly cell?: number;
  readonly count?: number;
}
const hole = (over: Partial<Extract<Correction, { kind: 'holes' }>> = {}): Correction => ({
  kind: 'holes',
  face: 'shroud/back',
  at: [at(135, 0)],
  radius: 5,
  depth: 6,
  ...over,
});
const skim = (depth: number, from = 340, to = 380): Correction => ({
  kind: 'skim',
  face: 'shroud/back',
  first: [110, 150],
  second: [toRadians(from), toRadians(to)],
  depth,
});

// Maps hold an edge to 1/32 cell: 0.1 % and better on these sizes, which is what 2.7 digits are.
describe('what is taken off the back', () => {
  test('an axial hole: rho pi r^2 h, and its unbalance at its radius', () => {
    const [{ weighed, leaves }] = done([hole()]);
    const mass = IRON * Math.PI * 25 * 6;
    expect(weighed.mass / -mass).toBeCloseTo(1, 2.7);
    expect(weighed.x / (-mass * 135)).toBeCloseTo(1, 2.7);
    expect(Math.abs(weighed.y)).toBeLessThan(0.001 * mass * 135);
    // The metal of a hole from z = -10 up to -4 has its middle at -7.
    expect(weighed.xz / (mass * 135 * 7)).toBeCloseTo(1, 2.7);
    expect(leaves).toBeCloseTo(4, 5);
  });

  test('a skim 110 to 150 mm, 20 deg to either side, 1 mm: 26.1381 g, 3355.63 g.mm, across the mark as well', () => {
    const [{ weighed }] = done([skim(1)]);
    expect(weighed.mass / -26.1381).toBeCloseTo(1, 2.7);
    expect(weighed.x / -3355.63).toBeCloseTo(1, 2.7);
    expect(Math.abs(weighed.y)).toBeLessThan(1);
  });

  test('metal gone already is not taken again: a hole in a skim, and a hole twice', () => {
    const [first, second, third] = done([skim(1), hole(), hole()]);
    expect(first.weighed.mass / -26.1381).toBeCloseTo(1, 2.7);
    expect(second.weighed.mass / (-IRON * Math.PI * 25 * 5)).toBeCloseTo(1, 2.7);
    expect(third.weighed.mass).toBe(0);
  });

  test('where the back was worn 2 mm and filled, the drill takes 2 mm of filler and metal below', () => {
    const worn: Mark = {
      kind: 'patch',
      face: 'shroud/back',
      blend: 'deepest',
      first: [120, 150],
      second: [toRadians(350), toRadians(370)],
      depth: [2, 2],
    };
    const [{ weighed, leaves }] = done([hole()], { marks: [worn] });
    expect(weighed.mass / (-Math.PI * 25 * (2 * PUTTY + 4 * IRON))).toBeCloseTo(1, 2.7);
    expect(leaves).toBeCloseTo(4, 5);
  });

  test('wear of the vane side counts off the wall that is left', () => {
    const worn: Mark = {
      kind: 'pit',
      face: 'shroud/front',
      blend: 'deepest',
      at: at(135, 0),
      radius: 4,
      depth: 1.5,
      form: 'flat',
    };
    expect(done([hole()], { marks: [worn] })[0].leaves).toBeCloseTo(2.5, 4);
  });

  test('finer cells bring it nearer', () => {
    const error = (cell: number) =>
      Math.abs(
        done([hole({ at: [at(133.3, 17.7)], radius: 4 })], { cell })[0].weighed.mass /
          (IRON * Math.PI * 16 * 6) +
          1,
      );
    expect(error(0.5)).toBeLessThan(1e-3);
    expect(error(2)).toBeLessThan(2e-2);
  });
});

// A cylinder of radius r about a line through the shaft, from the rim R down to R - h: its moment along the line is
// pi r^2 (R h - h^2/2) - pi r^4/8, its volume pi r^2 h less what the rim falls away, the integral of R - sqrt(R^2 - y^2).
describe('what is drilled from the rim', () => {
  test.each([
    [2, 5],
    [3, 15],
    [4, 24],
  ])('a hole of radius %f mm, %f mm deep keeps its width', (radius, depth) => {
    const [{ weighed, leaves }] = done([hole({ face: 'shroud/rim', at: [[0, 5]], radius, depth })], {
      cell: 0.25,
    });
    const rim = 150;
    const moment = Math.PI * radius ** 2 * (rim * depth - depth ** 2 / 2) - (Math.PI * radius ** 4) / 8;
    const fall = (Math.PI * radius ** 4) / (8 * rim);
    expect(weighed.x / (-IRON * moment)).toBeCloseTo(1, 2.5);
    expect(weighed.mass / (-IRON * (Math.PI * radius ** 2 * depth - fall))).toBeCloseTo(1, 2.5);
    // 5 mm below the vane side.
    expect(weighed.xz / (IRON * moment * 5)).toBeCloseTo(1, 2.5);
    expect(leaves).toBeNull();
  });

  test('a row round the whole rim pulls nowhere', () => {
    const [{ weighed }] = done([
      hole({ face: 'shroud/rim', at: [0, 90, 180, 270].map((angle) => [toRadians(angle), 5]), radius: 3 }),
    ]);
    expect(weighed.mass).toBeLessThan(0);
    expect(Math.hypot(weighed.x, weighed.y)).toBeLessThan(0.005 * Math.abs(weighed.mass) * 150);
  });
});

describe('putty on the vane side', () => {
  const pad = (from: number, to: number, height = 3): Correction => ({
    kind: 'putty',
    face: 'shroud/front',
    first: [120, 140],
    second: [toRadians(from), toRadians(to)],
    height,
    density: 2.5e-3,
  });

  test('stands above z = 0 with its own density', () => {
    // Vane 1 of five, turning counter-clockwise, crosses these radii at 280 to 260 deg: 20 to 40 deg are clear.
    const [{ weighed, leaves }] = done([pad(20, 40)]);
    const area = (toRadians(20) * (140 ** 2 - 120 ** 2)) / 2;
    expect(weighed.mass / (2.5e-3 * 3 * area)).toBeCloseTo(1, 2.7);
    const pull = (2 / 3) * 2.5e-3 * 3 * (140 ** 3 - 120 ** 3) * Math.sin(toRadians(10));
    expect(Math.hypot(weighed.x, weighed.y) / pull).toBeCloseTo(1, 2.7);
    expect(weighed.xz / (weighed.x * 1.5)).toBeCloseTo(1, 6);
    expect(leaves).toBeNull();
  });

  test('may stand higher than the shroud is thick', () => {
    const [low, high] = done([pad(20, 40), pad(20, 40, 24)]);
    expect(high.weighed.mass / low.weighed.mass).toBeCloseTo(8, 6);
    expect(high.weighed.xz / low.weighed.xz).toBeCloseTo(64, 5);
  });

  test('none stands where a vane does', () => {
    const [{ weighed }] = done([pad(0, 360)], { count: 5 });
    const ring = Math.PI * (140 ** 2 - 120 ** 2);
    expect(weighed.mass).toBeLessThan(0.95 * 2.5e-3 * 3 * ring);
    // Five vanes alike.
    expect(Math.hypot(weighed.x, weighed.y)).toBeLessThan(0.001 * weighed.mass * 130);
  });
});

test('nothing decided, nothing changed', () => {
  const shroud = shroudOf(rotorInput({ shape: madeImpeller() }));
  const nothing = corrected([], shroud, { metal: IRON, filler: PUTTY });
  expect(nothing.each).toEqual([]);
  expect(nothing.back).toBe(shroud.back.map);
});
