import { expect, test } from 'vitest';
import { estimate } from '../../../geometry/estimate.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { ASK, type MadePair, pairJob } from '../clearance/made-gap.ts';
import { evenly, patch } from '../made.ts';

const made = (pair: MadePair) =>
  toResult(estimate(pairJob(pair), { cell: 2 })).clearance ?? expect.fail('the two share their radii');

/** A place 10 deg wide at 300 deg is all that is sound: nothing else can be tightest. */
test('places are in the coordinates of the file: mm, and degrees in [0, 360)', () => {
  const { tightest, left } = made({
    onPlate: [patch([60, 160], [305, 295], 0.9), patch([100, 110], [10, 20], 0.95)],
    onTips: [evenly('vane-*/tip', 0.6)],
    repair: { coatedFaces: [] },
  });
  expect(tightest.plate[1]).toBeGreaterThan(294);
  expect(tightest.plate[1]).toBeLessThan(306);
  expect(tightest.on[0]).toBeGreaterThanOrEqual(0);
  expect(tightest.gap).toBeCloseTo(0.8 + 0.6, 6);
  const [onPlate] = left;
  expect(onPlate.at).toBe('plate:face');
  expect(onPlate.point[1]).toBeGreaterThan(9);
  expect(onPlate.point[1]).toBeLessThan(21);
  expect(left.slice(1).map(({ at }) => at)).toEqual([1, 2, 3, 4, 5].map((i) => `impeller:vane-${i}/tip`));
});

test('everything a screen asks for is there, and what is chosen is handed through', () => {
  const tolerances = { setting: 0.03, film: 0.04, dressing: 0, runOut: 0 };
  const result = made({ ask: { shim: 0.2, dressTips: 0.1, tolerances } });
  expect(result).toMatchObject({
    verdict: 'tight',
    likely: 'tight',
    asNew: ASK.asNew,
    shim: 0.2,
    dressTips: 0.1,
    band: { least: 0.4, most: 1.2 },
    films: { plate: 0.5, tips: 0.5 },
    mismatch: 0,
    noFit: null,
  });
  expect(result.tolerance).toMatchObject(tolerances);
  expect(result.tolerance.worstCase).toBeCloseTo(0.07, 12);
  expect(result.tolerance.rootSumSquare).toBeCloseTo(0.05, 12);
  expect(result.levers).toHaveLength(9);
  expect(result.byVane).toHaveLength(5);
  expect(result.overlap.from).toBeLessThan(result.byRadius[0].radius);
});

test('the map is kept to thousandths, so that a file of it stays readable', () => {
  const { map } = made({ onPlate: [patch([80, 120], [0, 90], [0.5, 2])] });
  const figures = map.asFound.flat().filter((gap): gap is number => gap !== null);
  expect(figures.every((gap) => String(gap).length <= 5)).toBe(true);
  expect(new Set(figures).size).toBeGreaterThan(5);
  expect(map.asFound).toHaveLength(map.radii.length);
});
