import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RATIO_LIMIT, weighOut } from '../../../geometry/material/weigh-out.ts';
import { COAT, FILLER } from './generic-materials.ts';

const ML = 1000;

describe('weighOut', () => {
  // Derived: 2 : 1 by volume at 2.4 and 2.1 g/mL is 240 g to 105 g for 150 mL of mix.
  it('leaves masses alone that the scale can show', () => {
    expect(weighOut(FILLER, 150 * ML, 200 * ML, 1)).toEqual({
      partA: 240,
      partB: 105,
      ratioError: expect.closeTo(0, 12),
    });
  });

  // Derived: 263.4 mL of the same take 421.44 g and 184.38 g; 421 and 184 are 0.04 % off in ratio.
  it('rounds both parts to the step and says what that does to the ratio', () => {
    const weighed = weighOut(FILLER, 263.4 * ML, 300 * ML, 1);
    expect(weighed).toMatchObject({ partA: 421, partB: 184 });
    expect(weighed?.ratioError).toBeCloseTo(184 / 421 / (105 / 240) - 1, 12);
  });

  // Derived: 10 mL take 16 g and 7 g; on a scale of 5 g the pairs near by are 15 : 5 (ratio 24 % off) and 15 : 10 (52 %).
  it('gives nothing when the scale is too coarse for so small a mix', () => {
    expect(weighOut(FILLER, 10 * ML, 100 * ML, 5)).toBeNull();
  });

  // Derived: 11.7 g and 5.1 g. The nearest pair, 12 and 5, is 4.8 % short of B; 11 and 5 is 3.9 % over; 14 and 6 is right within 2.1 %;
  // 16 and 7 is exact and 37 % more; none of them is within both limits. A tenth of a gram does it.
  it('would rather say no than break the ratio, and a finer scale helps', () => {
    const volume = (11.7 / 2.4 + 5.11875 / 2.1) * ML;
    expect(weighOut(FILLER, volume, 100 * ML, 1)).toBeNull();
    expect(weighOut(FILLER, volume, 100 * ML, 0.1)).toMatchObject({ partA: 11.7, partB: 5.1 });
  });

  it('gives no grams where A and B have no densities', () => {
    expect(weighOut({ ...FILLER, densityA: null, densityB: null }, 150 * ML, 200 * ML, 1)).toBeNull();
  });

  it('keeps the ratio within 2 %, the total near the need, and both parts on the scale, whatever is mixed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(FILLER, COAT, { ...FILLER, ratioByVolume: [4, 1] as const, densityB: 1.1e-3 }),
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.constantFrom(0.01, 0.1, 0.5, 1, 2, 5),
        fc.double({ min: 1, max: 2, noNaN: true }),
        (mix, millilitres, step, room) => {
          const volume = millilitres * ML;
          const weighed = weighOut(mix, volume, volume * room, step);
          if (weighed === null) return;
          const [a, b] = mix.ratioByVolume;
          const right = (b * (mix.densityB ?? 0)) / (a * (mix.densityA ?? 0));
          expect(Math.abs(weighed.ratioError)).toBeLessThanOrEqual(RATIO_LIMIT);
          expect(weighed.partB / weighed.partA / right - 1).toBeCloseTo(weighed.ratioError, 9);
          for (const mass of [weighed.partA, weighed.partB])
            expect(Math.abs(mass / step - Math.round(mass / step))).toBeLessThan(1e-6);
          const need = (volume / (a + b)) * (a * (mix.densityA ?? 0) + b * (mix.densityB ?? 0));
          const total = weighed.partA + weighed.partB;
          expect(total).toBeGreaterThanOrEqual(0.95 * need - 1e-6);
          expect(total).toBeLessThanOrEqual(need * Math.min(1.25, room) + 1e-6);
        },
      ),
    );
  });

  // Derived: within one step of a coarse 1 g scale both roundings together shift the ratio by less than 0.5/A + 0.5/B.
  it('never says no to a mix of 100 g and more on a kitchen scale', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 1000, noNaN: true }), (grams) => {
        expect(weighOut(FILLER, grams / 2.3e-3, 1e9, 1)).not.toBeNull();
      }),
    );
  });
});
