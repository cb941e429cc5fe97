import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClearanceEstimate } from '../../../geometry/clearance/clearance.ts';
import type { GapSpread } from '../../../geometry/clearance/gap.ts';
import { judgeGap } from '../../../geometry/clearance/judge-gap.ts';
import type { Lever, LeverKind } from '../../../geometry/clearance/levers.ts';
import type { Job } from '../../../geometry/job/job.ts';
import { evenly, patch } from '../made.ts';
import { anyPair } from './any-pair.ts';
import { leverOnJob } from './lever-on-job.ts';
import { ASK, estimateOf, gapIn, type MadePair, pairJob } from './made-gap.ts';

const estimated = (asks: Job, cell: number): ClearanceEstimate =>
  estimateOf(asks, cell) ?? expect.fail('the two share their radii');

/** Coats first: what a fill stops short by is the film there is in the end. */
const ORDER: readonly LeverKind[] = [
  'one-coat-less',
  'flush',
  'stop-short',
  'bare-tips',
  'bare-plate',
  'bare-both',
  'fill-left',
  'shim',
  'dress-tips',
];
const pulled = (asks: Job, levers: readonly Lever[], before: ClearanceEstimate): Job =>
  levers
    .toSorted((a, b) => ORDER.indexOf(a.kind) - ORDER.indexOf(b.kind))
    .reduce(
      (job, lever) =>
        leverOnJob(
          job,
          lever.kind === 'stop-short' ? { ...lever, amount: job.coat.coats * job.coat.dryFilm } : lever,
          before,
        ),
      asks,
    );

interface Way {
  readonly count: number;
  readonly change: number;
}

const EITHER: readonly (readonly LeverKind[])[] = [
  ['flush', 'stop-short'],
  ['bare-tips', 'bare-plate', 'bare-both'],
  ['one-coat-less'],
  ['fill-left'],
];

/** Every set of up to three levers applied to the job itself, with every amount of shim from -4 to 4 mm and of dressing: nothing clever. */
function everyWay(asks: Job, before: ClearanceEstimate): Way[] {
  const sets = EITHER.reduce<LeverKind[][]>(
    (ways, kinds) => ways.flatMap((way) => [way, ...kinds.map((kind) => [...way, kind])]),
    [[]],
  ).filter((kinds) => kinds.length <= 3 && (asks.coat.coats > 1 || !kinds.includes('one-coat-less')));
  const ask = asks.clearance ?? ASK;
  const dressings = Array.from({ length: 61 }, (_, i) => i / 10 - 2).filter(
    (by) => by >= -ask.dressTips - 1e-9,
  );
  const shims = Array.from({ length: 161 }, (_, i) => i / 20 - 4);
  return sets.flatMap((kinds) => {
    const gap = gapIn(
      pulled(
        asks,
        kinds.map((kind) => ({ kind, amount: null })),
        before,
      ),
      6,
    ).coated;
    const shifts = kinds.length < 3 ? [...shims, ...dressings] : [];
    return [0, ...shifts].flatMap((by, i): Way[] => {
      const moved: GapSpread = { least: gap.least + by, mean: gap.mean + by, most: gap.most + by };
      if (judgeGap(moved, ask).verdict !== 'fit') return [];
      return [
        { count: kinds.length + (i === 0 ? 0 : 1), change: Math.abs(moved.mean - before.gap.coated.mean) },
      ];
    });
  });
}

describe('on any job', () => {
  test('what is proposed gives just what it says, and no other way is smaller', () => {
    let found = 0;
    let none = 0;
    fc.assert(
      fc.property(anyPair, (pair) => {
        const asks = pairJob(pair);
        const before = estimated(asks, 6);
        const ways = everyWay(asks, before);
        const { fit } = before;
        if (fit === null) {
          none += 1;
          expect(ways).toEqual([]);
          expect(before.noFit).toMatch(/^No change fits: /);
          return;
        }
        found += 1;
        const after = estimated(pulled(asks, fit.levers, before), 6);
        expect(after.verdict).toBe('fit');
        expect(fit.verdict).toBe('fit');
        for (const end of ['least', 'mean', 'most'] as const)
          expect(Math.abs(after.gap.coated[end] - fit.coated[end]), end).toBeLessThan(1e-6);
        const count = Math.min(...ways.map((way) => way.count));
        expect(fit.levers.length).toBe(count);
        const change = Math.min(...ways.filter((way) => way.count === count).map((way) => way.change));
        expect(Math.abs(fit.change)).toBeLessThan(change + 2e-6);
        expect(before.noFit).toBeNull();
      }),
      { numRuns: 12, seed: 7 },
    );
    // Both ends of it were met, or the test says nothing.
    expect(found).toBeGreaterThan(5);
    expect(none).toBeGreaterThan(1);
  }, 180_000);
});

describe('worked by hand', () => {
  const even = (depth: number) => patch([60, 160], [0, 360], depth);
  const WORN = { onPlate: [even(2)], onTips: [evenly('vane-*/tip', 2)] };
  const fitOf = (pair: MadePair) => estimated(pairJob(pair), 4);

  test('a job that fits needs nothing', () => {
    const { fit } = fitOf({ repair: { coatedFaces: [] } });
    expect(fit).toMatchObject({ levers: [], words: 'Fits as it is', change: 0 });
  });

  /** 0.8 - 2 x 0.5 = -0.2 mm: 0.6 mm are missing to the band. A shim of 0.6 changes the mean the least; stopping short would by 1 mm. */
  test('one lever: the one that changes the gap least', () => {
    const { fit } = fitOf(WORN);
    expect(fit?.levers.map(({ kind, amount }) => [kind, amount])).toEqual([['shim', 0.6]]);
    expect(fit?.words).toBe('Shim the parts 0.60 mm further apart');
    expect(fit?.coated.least).toBeCloseTo(0.4, 6);
  });

  /** Of levers that do the same the lesser work: a shim, a dressing, one coat less and bare tips all come to the 0.5 mm that are missing. */
  test('of equals the least work', () => {
    const { fit } = fitOf({ ask: { asNew: 0.9 } });
    expect(fit?.levers.map(({ kind }) => kind)).toEqual(['bare-tips']);
  });

  /** A shim can do no better than the next 0.05 mm: what brings the gap just to its limit changes it less, and of equals the least work stands first. */
  test.each([
    [
      'one-coat-less',
      'two coats of 0.13 mm on the plate: 0.53 - 0.26 = 0.27, 0.13 short of 0.4',
      { ask: { asNew: 0.53 }, coat: { dryFilm: 0.13 }, repair: { coatedFaces: ['plate:face'] } },
    ],
    [
      'stop-short',
      'one coat of 0.13 mm on both worn faces: 0.4 - 0.26, 0.26 short',
      { ask: { asNew: 0.4 }, coat: { coats: 1, dryFilm: 0.13 }, ...WORN },
    ],
    [
      'flush',
      'bare, filled 0.13 mm short on both: 1.2 + 0.26, 0.26 over 1.2',
      { ask: { asNew: 1.2 }, ...WORN, repair: { coatAllowance: 0.13, coatedFaces: [] } },
    ],
    [
      'bare-plate',
      'a coat of 0.26 mm on the plate alone',
      { ask: { asNew: 0.4 }, coat: { coats: 1, dryFilm: 0.26 }, repair: { coatedFaces: ['plate:face'] } },
    ],
  ] satisfies [LeverKind, string, MadePair][])('%s for %s', (kind, _, pair) => {
    const { fit } = fitOf(pair);
    expect(fit?.levers.map((lever) => lever.kind)).toEqual([kind]);
  });

  /** 0.8 to 1.7 mm differ by 0.9 mm, the band leaves 0.8: what is left has to be filled. Then 0.8 mm stays and fits without coats. */
  test('wear that is left and too wide is filled', () => {
    const { fit } = fitOf({ onPlate: [patch([80, 140], [0, 90], 0.9)], repair: { coatedFaces: [] } });
    expect(fit?.levers.map(({ kind }) => kind)).toEqual(['fill-left']);
  });

  test('no way: the sentence says how much too uneven', () => {
    const { fit, noFit } = fitOf({
      shape: { coneAngle: 0.02, holes: [] },
      ask: { asNewHolds: 'at the closest', tolerances: { ...ASK.tolerances, setting: 0.1 } },
    });
    expect(fit).toBeNull();
    // 92.2 mm x tan(0.02 rad) = 1.84 mm of opening; 1.2 - 0.4 - 2 x 0.1 = 0.6 mm.
    expect(noFit).toBe(
      'No change fits: at best the gap differs by 1.84 mm from place to place, and the band of 0.40 mm to 1.20 mm less twice the tolerance of 0.10 mm leaves 0.60 mm. Fill what is left, dress truer, or widen the band.',
    );
  });

  test('no way: a tolerance that eats the band', () => {
    const { noFit } = fitOf({ ask: { tolerances: { ...ASK.tolerances, setting: 0.4, runOut: 0.1 } } });
    expect(noFit).toMatch(/less twice the tolerance of 0\.50 mm leaves nothing/);
  });
});
