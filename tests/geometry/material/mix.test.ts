import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { densityMismatch, type Mix, mixedDensity, portionsOf } from '../../../geometry/material/mix.ts';
import { weighingOf } from '../../../geometry/material/weighing.ts';

const mix = (ratio: [number, number], a: number | null, b: number | null, stated = 9): Mix => ({
  density: stated / 1000,
  ratioByVolume: ratio,
  densityA: a === null ? null : a / 1000,
  densityB: b === null ? null : b / 1000,
});

// Derived: by weight ra dA : rb dB, mixed (ra dA + rb dB) / (ra + rb); each row worked by hand, g/cm3 and mL.
const WORKED = [
  { ratio: [2, 1], a: 2.4, b: 2.1, mixed: 2.3, bPer100: 43.75, batch: 150, massA: 240, massB: 105 },
  { ratio: [2, 1], a: 1.75, b: 1.6, mixed: 1.7, bPer100: 45.7143, batch: 150, massA: 175, massB: 80 },
  { ratio: [4, 1], a: 2.5, b: 1.1, mixed: 2.22, bPer100: 11, batch: 500, massA: 1000, massB: 110 },
  { ratio: [1, 1], a: 2.6, b: 2.3, mixed: 2.45, bPer100: 88.4615, batch: 100, massA: 130, massB: 115 },
] as const;

describe('mixedDensity and portionsOf', () => {
  it.each(WORKED)('$ratio of $a and $b g/cm3', ({ ratio, a, b, mixed, bPer100, batch, massA, massB }) => {
    const material = mix([ratio[0], ratio[1]], a, b);
    expect(mixedDensity(material) * 1000).toBeCloseTo(mixed, 12);
    const { partA, partB } = portionsOf(material, batch * 1000);
    expect(partA.mass).toBeCloseTo(massA, 9);
    expect(partB.mass).toBeCloseTo(massB, 9);
    expect(weighingOf(material)?.partBPer100).toBeCloseTo(bPer100, 4);
  });

  it('splits 263.4 mL of 2 : 1 into 421.44 g and 184.38 g', () => {
    // 175.6 mL x 2.4 and 87.8 mL x 2.1 g/mL.
    const { partA, partB } = portionsOf(mix([2, 1], 2.4, 2.1), 263_400);
    expect([partA.volume, partB.volume]).toEqual([expect.closeTo(175_600, 6), expect.closeTo(87_800, 6)]);
    expect([partA.mass, partB.mass]).toEqual([expect.closeTo(421.44, 9), expect.closeTo(184.38, 9)]);
  });

  it('takes the stated density for the mix and both parts when A or B has none', () => {
    for (const material of [
      mix([2, 1], null, null, 2),
      mix([2, 1], 2.4, null, 2),
      mix([2, 1], null, 2.1, 2),
    ]) {
      expect(mixedDensity(material)).toBe(0.002);
      expect(densityMismatch(material)).toBeNull();
      const { partA, partB } = portionsOf(material, 150_000);
      expect([partA.mass, partB.mass]).toEqual([expect.closeTo(200, 9), expect.closeTo(100, 9)]);
    }
  });

  it('keeps volume and mass: A and B add up to the mix, and weight fractions give the same density', () => {
    const density = fc.double({ min: 0.8, max: 5, noNaN: true });
    const part = fc.double({ min: 0.1, max: 20, noNaN: true });
    fc.assert(
      fc.property(
        part,
        part,
        density,
        density,
        fc.double({ min: 1, max: 1e8, noNaN: true }),
        (ra, rb, a, b, v) => {
          const material = mix([ra, rb], a, b);
          const { partA, partB } = portionsOf(material, v);
          const mass = partA.mass + partB.mass;
          expect((partA.volume + partB.volume) / v).toBeCloseTo(1, 12);
          expect(mass / (v * mixedDensity(material))).toBeCloseTo(1, 12);
          // 1 / (wA / dA + wB / dB), the form from weight fractions.
          const byWeight = 1 / (partA.mass / mass / a + partB.mass / mass / b);
          expect((mixedDensity(material) * 1000) / byWeight).toBeCloseTo(1, 12);
        },
      ),
    );
  });
});

describe('weighingOf', () => {
  it('finds 14 % too much B when 2 : 1 of 2.4 and 2.1 g/cm3 is weighed out', () => {
    // Weighing 2 : 1 gives 2 / 2.4 : 1 / 2.1 = 1.75 : 1 by volume instead of 2 : 1, so B is 2 / 1.75 - 1 over.
    expect(weighingOf(mix([2, 1], 2.4, 2.1))?.error).toBeCloseTo(2 / 1.75 - 1, 12);
  });

  it('says nothing when the densities are within 2 % of each other or not known', () => {
    expect(weighingOf(mix([1, 1], 2.03, 2))).toBeNull();
    expect(weighingOf(mix([1, 1], 2.05, 2))).not.toBeNull();
    expect(weighingOf(mix([1, 1], 2.4, null))).toBeNull();
  });
});
