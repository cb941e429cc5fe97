import { beforeAll, describe, expect, it } from 'vitest';
import type { Estimate } from '../../../geometry/estimate.ts';
import type { Cover } from '../../../geometry/material/share-out.ts';
import { type Result, toResult } from '../../../geometry/sheet/result.ts';
import { TURN, toRadians } from '../../../geometry/units.ts';
import { unworn, worn } from './worn-plate.ts';

let estimate: Estimate;
let result: Result;
beforeAll(() => {
  estimate = worn();
  result = toResult(estimate);
});

/** The estimate with its first batch covering just this. */
const covering = (cover: Cover): Estimate => ({
  ...estimate,
  filler: { ...estimate.filler, batches: [{ ...estimate.filler.batches[0], covers: [cover] }] },
});

const rangeOf = (from: number, to: number) =>
  toResult(covering({ part: 'plate', face: 'face', pass: 1, first: [90, 120], second: [from, to] })).filler
    .batches[0].covers[0];

describe('toResult', () => {
  it('turns mm2, mm3 and g/mm3 into cm2, cm3 and g/cm3 and leaves mm and g alone', () => {
    const [part] = estimate.parts;
    const [out] = result.parts;
    expect(out.faces[0].area).toBe(part.faces[0].face.area / 100);
    expect(out.faces[0].wornArea).toBe(part.faces[0].wornArea / 100);
    expect(out.lostVolume).toBe(part.lost.volume / 1000);
    expect(out.regions[0].lostVolume).toBe(part.regions[0].lostVolume / 1000);
    expect(out.regions[0].deepest).toBe(part.regions[0].deepest);
    expect(result.filler.volume).toBe(estimate.filler.volume / 1000);
    expect(result.filler.mass).toBe(estimate.filler.mass);
    expect(result.filler.density).toBeCloseTo(2.3, 12);
    expect(result.filler.partA.volume).toBe(estimate.filler.partA.volume / 1000);
    expect(result.filler.batches[0].partB.volume).toBe(estimate.filler.batches[0].partB.volume / 1000);
    expect(result.coat.area).toBe(estimate.coat.area / 100);
    // 0.25 mm dry, all solids: 250 um wet.
    expect(result.coat.wetFilm).toBeCloseTo(250, 9);
    expect(result.coat.perCoat).toEqual(estimate.coat.perCoat.map(({ volume }) => volume / 1000));
  });

  it('weighs lost metal with the part and fill with the mix', () => {
    const [part] = estimate.parts;
    // Cast iron 7.2 g/cm3 in the job, filler 2.3 g/cm3.
    expect(result.parts[0].lostMass).toBeCloseTo((part.lost.volume / 1000) * 7.2, 9);
    expect(result.parts[0].fillMass).toBeCloseTo((part.filled.volume / 1000) * 2.3, 9);
  });

  it('puts the centroid of the fill at its first moments over its volume', () => {
    const { filled } = estimate.parts[0];
    expect(result.parts[0].fillCentroid).toEqual([
      filled.x / filled.volume,
      filled.y / filled.volume,
      filled.z / filled.volume,
    ]);
    expect(toResult(unworn()).parts[0].fillCentroid).toBeNull();
  });

  it('gives angles in degrees in [0, 360) and other coordinates in mm', () => {
    // The wedge is deepest at radius 125 between 60 and 100 degrees, to a cell of 1.5 mm.
    const wedge = result.parts[0].regions[0];
    expect(Math.abs(wedge.at[0] - 125)).toBeLessThan(1.5);
    expect(wedge.at[1]).toBeGreaterThan(59);
    expect(wedge.at[1]).toBeLessThan(101);
    const bore = result.parts[0].regions.find(({ face }) => face === 'bore');
    expect(bore?.at[0]).toBeGreaterThan(198);
    expect(bore?.at[1]).toBeLessThan(9);
    const stroke = result.parts[1].regions[0];
    expect(stroke.at[1]).toBeCloseTo(25, 0);
  });

  it('runs angle ranges counter-clockwise, past 360 when the second is the smaller', () => {
    expect(rangeOf(toRadians(20), toRadians(95))).toMatchObject({ first: [90, 120], second: [20, 95] });
    expect(rangeOf(toRadians(300), toRadians(400)).second).toEqual([300, 40]);
    expect(rangeOf(toRadians(350), TURN).second).toEqual([350, 360]);
    expect(rangeOf(TURN, toRadians(375)).second).toEqual([0, 15]);
    expect(rangeOf(toRadians(-10), toRadians(10)).second).toEqual([350, 10]);
    expect(rangeOf(0, TURN).second).toEqual([0, 360]);
  });

  it('leaves what is not worked out null or empty, never zero', () => {
    expect(result).toMatchObject({
      balance: null,
      clearance: null,
      climate: null,
      advice: null,
      flowTest: null,
      log: [],
    });
    const idle = { ...estimate, day: { steps: [], start: null, end: 0, handsOn: 0 } };
    expect(toResult(idle)).toMatchObject({ plan: [], day: { start: null, end: 0, handsOn: 0 } });
  });

  it('drops the field of a warning that has none', () => {
    const warned = toResult({
      ...estimate,
      warnings: [
        { code: 'a', field: null, text: 'A' },
        { code: 'b', field: 'filler.density', text: 'B' },
      ],
    });
    expect(warned.warnings).toEqual([
      { code: 'a', text: 'A' },
      { code: 'b', field: 'filler.density', text: 'B' },
    ]);
  });

  it('survives JSON unchanged, worn or not: no NaN and no infinity is in it', () => {
    for (const one of [result, toResult(unworn())]) {
      expect(JSON.parse(JSON.stringify(one))).toEqual(one);
      expect(JSON.stringify(one)).not.toMatch(/NaN|Infinity/);
    }
  });

  it('refuses a number that is not one, and names it', () => {
    const broken = { ...estimate, filler: { ...estimate.filler, mass: Number.NaN } };
    expect(() => toResult(broken)).toThrow('toResult: needs a finite filler.mass, got NaN');
    const [plate, wing] = estimate.parts;
    const endless = { ...estimate, parts: [{ ...plate, lost: { ...plate.lost, volume: Infinity } }, wing] };
    expect(() => toResult(endless)).toThrow('toResult: needs a finite parts[0].lostVolume, got Infinity');
  });
});
