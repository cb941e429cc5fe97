import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coatNeed } from '../../../geometry/material/coat.ts';
import { COAT, REPAIR } from './generic-materials.ts';

const M2 = 1e6;
const CM3 = 1000;
const RATE = 40_000;

describe('coatNeed', () => {
  // 0.85 m2, 2 x 250 um, all solids, 20 % waste: net 425 mL, 510 mL with it (derived: 1 um over 1 m2 is 1 mL).
  it('is 425 mL net and 510 mL with waste for 0.85 m2 in two coats of 250 um', () => {
    const need = coatNeed({ area: 0.85 * M2, leftVolume: 0 }, { ...COAT, profile: 0 }, REPAIR, null, RATE);
    expect(need.netVolume / CM3).toBeCloseTo(425, 9);
    expect(need.volume / CM3).toBeCloseTo(510, 9);
  });

  // A 75 um profile takes 50 cm3/m2, two thirds of its height (common practice table 30..105 um -> 20..70 cm3/m2, from memory).
  it('fills a 75 um profile on 0.85 m2 once, with 42.5 mL charged to the first coat', () => {
    const need = coatNeed({ area: 0.85 * M2, leftVolume: 0 }, COAT, { ...REPAIR, coatWaste: 0 }, null, RATE);
    expect(need.netVolume / CM3).toBeCloseTo(425 + 42.5, 9);
    expect(need.perCoat.map(({ volume }) => volume / CM3)).toEqual([
      expect.closeTo(212.5 + 42.5, 9),
      expect.closeTo(212.5, 9),
    ]);
  });

  // Wet film = dry film x 100 / solids by volume (definition of solids by volume, ISO 3233): 125 um at 65 % -> 192.308 um.
  it('lays 192.308 um wet for 125 um dry at 65 % solids', () => {
    const need = coatNeed(
      { area: M2, leftVolume: 0 },
      { ...COAT, dryFilm: 0.125, solidsByVolume: 0.65 },
      REPAIR,
      null,
      RATE,
    );
    expect(need.wetFilm * 1000).toBeCloseTo(192.308, 3);
  });

  // Theoretical spreading rate 10 x solids / dry film, m2/L: 5.2, 5.68, 4 and 8 (as printed in common coating tables).
  it.each([
    [0.65, 125, 5.2],
    [0.71, 125, 5.68],
    [1, 250, 4],
    [0.6, 75, 8],
  ])('spreads %f solids at %d um to %f m2/L', (solidsByVolume, film, rate) => {
    const coat = { ...COAT, solidsByVolume, dryFilm: film / 1000, coats: 1, profile: 0 };
    const need = coatNeed({ area: rate * M2, leftVolume: 0 }, coat, REPAIR, null, RATE);
    expect(need.netVolume / CM3).toBeCloseTo(1000, 9);
  });

  it('divides film, left wear and profile alike by the solids', () => {
    // [2 x 0.25 mm x 1e6 mm2 + 30 000 mm3 + 2/3 x 0.075 mm x 1e6 mm2] / 0.8, by hand.
    const need = coatNeed(
      { area: M2, leftVolume: 30 * CM3 },
      { ...COAT, solidsByVolume: 0.8 },
      REPAIR,
      null,
      RATE,
    );
    expect(need.netVolume / CM3).toBeCloseTo((500 + 30 + 50) / 0.8, 9);
    expect(need.mass).toBeCloseTo(need.volume * 1.7e-3, 9);
    // First coat: (250 + 30 + 50) / 0.8 x 1.2.
    expect(need.perCoat[0].volume / CM3).toBeCloseTo(495, 9);
  });

  it('shares the whole among the coats, and each coat between A and B', () => {
    const positive = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(positive(1e7), positive(1e6), fc.integer({ min: 1, max: 6 }), (area, leftVolume, coats) => {
        const need = coatNeed({ area, leftVolume }, { ...COAT, coats }, REPAIR, 20, RATE);
        const sum = need.perCoat.reduce((total, coat) => total + coat.volume, 0);
        const parts = need.perCoat.reduce((total, coat) => total + coat.partA.volume + coat.partB.volume, 0);
        expect(Math.abs(sum - need.volume)).toBeLessThanOrEqual(1e-9 * (1 + need.volume));
        expect(Math.abs(parts - need.volume)).toBeLessThanOrEqual(1e-9 * (1 + need.volume));
        expect(need.partA.mass + need.partB.mass).toBeCloseTo(need.mass, 6);
      }),
    );
  });

  it('is nothing at all without a face to coat or a coat to lay', () => {
    const bare = coatNeed({ area: 0, leftVolume: 0 }, COAT, REPAIR, null, RATE);
    const none = coatNeed({ area: M2, leftVolume: 5 }, { ...COAT, coats: 0 }, REPAIR, null, RATE);
    for (const need of [bare, none]) {
      expect(need).toMatchObject({ netVolume: 0, volume: 0, mass: 0, perCoat: [], packs: [] });
    }
  });

  // Derived: 0.85 m2 at 400 cm2/min take 21.25 min; with 25 min to work in that is one mix, with 20 min two of 10.625 min.
  it('is brushed out in mixes that each stay workable to the end', () => {
    const demand = { area: 0.85 * M2, leftVolume: 0 };
    const mixesOf = (minutes: number) =>
      coatNeed(demand, { ...COAT, workingTime: { minutes, at: 25 } }, REPAIR, null, RATE).perCoat[0].mixes;
    expect(mixesOf(25).map(({ placing }) => placing)).toEqual([expect.closeTo(21.25, 9)]);
    expect(mixesOf(20).map(({ placing }) => placing)).toEqual([
      expect.closeTo(10.625, 9),
      expect.closeTo(10.625, 9),
    ]);
    const whole = coatNeed(demand, COAT, REPAIR, null, RATE).perCoat[0].volume;
    expect(mixesOf(20).reduce((sum, { volume }) => sum + volume, 0)).toBeCloseTo(whole, 6);
  });

  // Arrhenius, 55 kJ/mol, 25 -> 35 degC: 20 min become 9.73506 (checked in minutes-at.test.ts), so 60 min become 29.2052.
  it('brings the overcoat window and hardening to the temperature of the part', () => {
    const warm = coatNeed({ area: M2, leftVolume: 0 }, COAT, REPAIR, 35, RATE);
    expect(warm.overcoat?.from).toBeCloseTo(3 * 9.73506, 4);
    expect(warm.overcoat?.to).toBeCloseTo(12 * 9.73506, 4);
    expect(warm.hard).toBeCloseTo(48 * 9.73506, 3);
  });
});
