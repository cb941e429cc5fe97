import { describe, expect, test } from 'vitest';
import { replay } from '../../../geometry/depth/replay.ts';
import { lostMetal } from '../../../geometry/moments/integrate.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, patch } from '../made.ts';

const face = faceOf('face', { holes: [] });
const lost = (...marks: Parameters<typeof replay>[1]) => lostMetal(face, replay(face, marks));

describe('a patch 90 to 130 mm, 20 to 95 degrees', () => {
  // Sector of an annulus: A = (R2^2 - R1^2) a / 2, rc = 4 sin(a/2) (R2^3 - R1^3) / (3 a (R2^2 - R1^2)); closed forms.
  // An edge lies true to 1/32 cell (0.016 mm here), twice across 40 mm: 0.04 %; the required 0.2 % leaves room.
  test('3.5 mm deep is 20 158.5529 mm3, its heavy spot at 57.5 degrees', () => {
    const metal = lost(patch([90, 130], [20, 95], 3.5));
    expect(Math.abs(metal.volume / 20158.5529 - 1)).toBeLessThan(5e-4);
    // Filler of 0.0023 g/mm3 there weighs in with 4795.98 g.mm.
    expect(Math.abs((0.0023 * Math.hypot(metal.x, metal.y)) / 4795.98 - 1)).toBeLessThan(5e-4);
    expect(Math.atan2(metal.y, metal.x)).toBeCloseTo(toRadians(57.5), 4);
  });
  test('a ramp from 2 to 5 mm along the radius is 20 682.1516 mm3 and 5042.41 g.mm', () => {
    const metal = lost(patch([90, 130], [20, 95], [2, 5]));
    expect(Math.abs(metal.volume / 20682.1516 - 1)).toBeLessThan(5e-4);
    expect(Math.abs((0.0023 * Math.hypot(metal.x, metal.y)) / 5042.41 - 1)).toBeLessThan(5e-4);
  });
});

test('halving the cell shrinks the error of edges that lie anywhere', () => {
  // Mean over eight patches whose edges fall at unrelated places, so that no one cell size is lucky.
  const error = (cell: number): number => {
    const fine = faceOf('face', { holes: [] }, cell);
    let sum = 0;
    for (let k = 0; k < 8; k++) {
      const [r1, r2] = [80 + 0.37 * k, 90 + 1.71 * k];
      const [a1, a2] = [10 + 13.3 * k, 31 + 17.9 * k];
      const exact = (((r2 ** 2 - r1 ** 2) * toRadians(a2 - a1)) / 2) * 2;
      sum += Math.abs(lostMetal(fine, replay(fine, [patch([r1, r2], [a1, a2], 2)])).volume / exact - 1);
    }
    return sum / 8;
  };
  const errors = [4, 2, 1, 0.5].map(error);
  expect(errors[1]).toBeLessThan(errors[0]);
  expect(errors[2]).toBeLessThan(errors[1]);
  expect(errors[3]).toBeLessThan(errors[2]);
  expect(errors[3]).toBeLessThan(1e-3);
});

test('an angle range that passes 360 is the same patch turned', () => {
  const across = lost(patch([90, 130], [340, 415], 3.5)).volume;
  const plain = lost(patch([90, 130], [340, 55], 3.5)).volume;
  expect(across).toBeCloseTo(plain, 6);
  expect(Math.abs(across / 20158.5529 - 1)).toBeLessThan(5e-4);
});

test('a range of a whole turn is the ring', () => {
  // pi (130^2 - 90^2) 3.5, closed form.
  const ring = lost(patch([90, 130], [0, 360], 3.5)).volume;
  expect(Math.abs(ring / (Math.PI * (130 ** 2 - 90 ** 2) * 3.5) - 1)).toBeLessThan(5e-4);
  expect(lost(patch([90, 130], [123, 483], 3.5)).volume).toBeCloseTo(ring, 6);
});

test('blend: deepest takes the larger, add sums, replace holds inside only', () => {
  const base = patch([90, 130], [0, 180], 2);
  const over = { ...patch([90, 130], [90, 270], 3), blend: 'add' as const };
  const quarter = (Math.PI / 4) * (130 ** 2 - 90 ** 2);
  const close = (volume: number, exact: number) => expect(Math.abs(volume / exact - 1)).toBeLessThan(1e-3);
  close(lost(base, over).volume, quarter * (2 + 5 + 3));
  close(lost(base, { ...over, blend: 'deepest' }).volume, quarter * (2 + 3 + 3));
  close(lost(base, { ...over, blend: 'replace', depth: [1, 1] }).volume, quarter * (2 + 1 + 1));
});

test('metal cannot be lost deeper than the wall', () => {
  const ring = lost(
    { ...patch([90, 130], [0, 360], 15), blend: 'add' },
    { ...patch([90, 130], [0, 360], 15), blend: 'add' },
  );
  expect(Math.abs(ring.volume / (Math.PI * (130 ** 2 - 90 ** 2) * 18) - 1)).toBeLessThan(1e-3);
});
