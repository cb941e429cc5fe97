import { describe, expect, it } from 'vitest';
import { type FillDemand, fillerNeed, passesFor } from '../../../geometry/material/filler.ts';
import { FILLER, REPAIR } from './generic-materials.ts';

const CM3 = 1000;
const demand = (netVolume: number, filledArea = 40_000, deepestFill = 4): FillDemand => ({
  netVolume,
  filledArea,
  deepestFill,
  runs: [],
});

describe('fillerNeed', () => {
  it('adds overbuild over the filled area, then waste on both', () => {
    // (100 mL + 0.5 mm x 400 cm2 = 20 mL) x 1.1 = 132 mL; x 2.3 g/mL = 303.6 g; 2 : 1 -> 88 and 44 mL, 211.2 and 92.4 g.
    const need = fillerNeed(demand(100 * CM3), FILLER, { ...REPAIR, overbuild: 0.5 }, null);
    expect(need.volume / CM3).toBeCloseTo(132, 9);
    expect(need.mass).toBeCloseTo(303.6, 9);
    expect(need.partA).toEqual({ volume: expect.closeTo(88 * CM3, 6), mass: expect.closeTo(211.2, 9) });
    expect(need.partB).toEqual({ volume: expect.closeTo(44 * CM3, 6), mass: expect.closeTo(92.4, 9) });
    expect(need.packs).toEqual([{ label: 'kit', count: 1 }]);
  });

  it('caps a batch at the mass the working time was quoted for', () => {
    // 20 min x 20 mL/min = 400 mL, but 300 g / 2.3 g/mL = 130.43 mL is less: 132 mL take two mixes of 66.
    const need = fillerNeed(demand(120 * CM3), FILLER, REPAIR, null);
    expect(need.largestBatch / CM3).toBeCloseTo(300 / 2.3, 9);
    expect(need.batches.map(({ volume }) => volume / CM3)).toEqual([
      expect.closeTo(66, 9),
      expect.closeTo(66, 9),
    ]);
  });

  it('caps a batch at what can be placed in the working time at the surface temperature', () => {
    // 20 min at 25 degC are 9.73506 min at 35 degC (Arrhenius, 55 kJ/mol); x 20 mL/min = 194.70 mL.
    const bulk = { ...FILLER, workingTime: { minutes: 20, at: 25, mass: null } };
    const need = fillerNeed(demand(500 * CM3), bulk, REPAIR, 35);
    expect(need.workingTime).toBeCloseTo(9.73506, 4);
    expect(need.largestBatch / CM3).toBeCloseTo(194.701, 3);
    expect(need.batches).toHaveLength(3);
    expect(need.batches.every(({ minutes }) => minutes === need.workingTime)).toBe(true);
  });

  it('takes one mix, not two, when the need is the largest batch to the last digit', () => {
    // 3 x 0.1 exceeds 0.3 in floats: three batches of 0.1, not four.
    const exact = { ...FILLER, workingTime: { minutes: 0.1, at: 25, mass: null } };
    const repair = { ...REPAIR, fillerWaste: 0, applicationRate: 1000 };
    expect(fillerNeed(demand(0.1 * 3 * 1000), exact, repair, null).batches).toHaveLength(3);
    expect(fillerNeed(demand(301), exact, repair, null).batches).toHaveLength(4);
  });

  it('needs no mix, no pass and no pack when nothing is filled', () => {
    const need = fillerNeed(demand(0, 0, 0), FILLER, { ...REPAIR, overbuild: 1 }, 20);
    expect(need).toMatchObject({ volume: 0, mass: 0, passes: 0, batches: [], packs: [] });
  });
});

describe('passesFor', () => {
  it('counts layers of at most the most build', () => {
    expect([9.9, 10, 10.01, 20, 20.5].map((depth) => passesFor(depth, 10))).toEqual([1, 1, 2, 2, 3]);
    // 3 x 0.1 is 0.30000000000000004: three passes of 0.1 mm.
    expect(passesFor(0.1 * 3, 0.1)).toBe(3);
  });
});
