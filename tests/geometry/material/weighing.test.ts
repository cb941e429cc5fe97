import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Mix, portionsOf } from '../../../geometry/material/mix.ts';
import { partBFor, weighedAmiss, weighingOf } from '../../../geometry/material/weighing.ts';

// 2 : 1 by volume, A 2.4 and B 2.1 g/cm3. By weight 2 x 2.4 : 1 x 2.1, so 43.75 g of B to 100 g of A; ratio of masses from densities, mechanics.
const PUTTY: Mix = {
  density: 2.3e-3,
  ratioByVolume: [2, 1],
  densityA: 2.4e-3,
  densityB: 2.1e-3,
};
const RIGHT = portionsOf(PUTTY, 150_000);

describe('how to weigh a ratio by volume', () => {
  test('2 : 1 of 2.4 and 2.1 g/cm3 is 43.75 g of B to 100 g of A; weighed as it stands 14 % too much B', () => {
    const weighing = weighingOf(PUTTY);
    expect(weighing?.partBPer100).toBeCloseTo(43.75, 9);
    // 2.4 / 2.1 = 1.142857
    expect(weighing?.error).toBeCloseTo(0.142857, 6);
  });
  test('nothing is said without both densities, or when they are within 2 %', () => {
    expect(weighingOf({ ...PUTTY, densityB: null })).toBeNull();
    expect(weighingOf({ ...PUTTY, densityB: 2.37e-3 })).toBeNull();
  });
});

describe('a mix as it was weighed', () => {
  test('240 g with 105 g is right: 100 mL of 2.4 and 50 mL of 2.1 g/cm3', () => {
    expect(weighedAmiss(240, 105, RIGHT)).toBeNull();
  });
  test('158 g with 79 g stands 2 : 1 on the scale: the ratio by volume, 14 % too much B', () => {
    const amiss = weighedAmiss(158, 79, RIGHT);
    expect(amiss?.kind).toBe('by-volume');
    expect(amiss?.error).toBeCloseTo(0.142857, 6);
  });
  test('up to 2 % either way is taken, more is not; 100 g of A wants 43.75 g', () => {
    expect(weighedAmiss(100, 43.75 * 1.02, RIGHT)).toBeNull();
    expect(weighedAmiss(100, 43.75 * 0.98, RIGHT)).toBeNull();
    expect(weighedAmiss(100, 43.75 * 1.021, RIGHT)?.kind).toBe('off');
    const little = weighedAmiss(100, 43.75 * 0.9, RIGHT);
    expect(little?.kind).toBe('off');
    expect(little?.error).toBeCloseTo(-0.1, 9);
  });
  test('the two the wrong way round is off by far', () => {
    // 105 g of A wants 45.94 g of B, not 240 g.
    expect(weighedAmiss(105, 240, RIGHT)?.error).toBeCloseTo(240 / 45.9375 - 1, 6);
  });
  test('the ratio by volume is named only where it is another one', () => {
    const even = portionsOf({ ...PUTTY, densityB: 2.4e-3 }, 150_000);
    expect(weighedAmiss(100, 50, even)).toBeNull();
    expect(weighedAmiss(100, 57, even)?.kind).toBe('off');
  });
  test('nothing weighed is nobody to judge', () => {
    expect(() => weighedAmiss(0, 10, RIGHT)).toThrow(/more than 0 g/);
  });
});

describe('B for the A that is in the bowl', () => {
  test('165 g of A wants 72.1875 g of B, 72 g on a scale of 1 g and 72.2 g on one of 0.1 g', () => {
    expect(partBFor(165, RIGHT, 1)).toBe(72);
    expect(partBFor(165, RIGHT, 0.1)).toBe(72.2);
  });
  test('a scale whose nearest step is more than 2 % off gives none: 10 g wants 4.375 g', () => {
    expect(partBFor(10, RIGHT, 1)).toBeNull();
    expect(partBFor(0.5, RIGHT, 1)).toBeNull();
  });
  test('whatever it gives is on the scale and never amiss', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), fc.constantFrom(0.1, 1, 5), (a, step) => {
        const b = partBFor(a, RIGHT, step);
        if (b === null) return;
        expect(weighedAmiss(a, b, RIGHT)).toBeNull();
        expect(Math.abs(b / step - Math.round(b / step))).toBeLessThan(1e-6);
      }),
    );
  });
});
