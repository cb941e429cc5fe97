import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ClearanceEstimate } from '../../../geometry/clearance/clearance.ts';
import type { LeverKind } from '../../../geometry/clearance/levers.ts';
import { evenly, patch } from '../made.ts';
import { anyPair } from './any-pair.ts';
import { leverOnJob } from './lever-on-job.ts';
import { estimateOf, type MadePair, pairJob } from './made-gap.ts';

/** Sums of depths in another order. */
const FLOAT = 1e-6;

function made(pair: MadePair): ClearanceEstimate {
  return estimateOf(pairJob(pair), 2) ?? expect.fail('the two share their radii');
}
const lever = ({ levers }: ClearanceEstimate, wanted: LeverKind) =>
  levers.find(({ kind }) => kind === wanted) ?? expect.fail(`a lever ${wanted}`);
const even = (depth: number) => patch([60, 160], [0, 360], depth);

/** What a lever says it does must be what the job then gives: all of them, on any job. */
test('each lever pulled on the job gives the gap it promised', () => {
  fc.assert(
    fc.property(anyPair, (pair) => {
      const asks = pairJob(pair);
      const before = estimateOf(asks, 4) ?? expect.fail('shared');
      for (const promised of before.levers) {
        const after = estimateOf(leverOnJob(asks, promised, before), 4) ?? expect.fail('shared');
        for (const end of ['least', 'mean', 'most'] as const)
          expect(
            Math.abs(after.gap.coated[end] - promised.coated[end]),
            `${promised.kind} ${end}`,
          ).toBeLessThan(FLOAT);
        expect([after.verdict, after.likely], promised.kind).toEqual([promised.verdict, promised.likely]);
        expect(after.gap.coated.mean - before.gap.coated.mean).toBeCloseTo(promised.change, 6);
        if (promised.isNow) expect(Math.abs(promised.change), promised.kind).toBeLessThan(FLOAT);
      }
    }),
    { numRuns: 12, seed: 20_261_128 },
  );
}, 120_000);

/** Worn 2 mm on the plate, filled flush, 2 x 0.25 mm of coat on both faces: 0.8 - 1.0 mm. Closed forms. */
describe('on the trap of two coat systems', () => {
  const trap = made({ onPlate: [even(2)], onTips: [evenly('vane-*/tip', 1.5)] });

  test.each([
    ['flush', -0.2],
    ['stop-short', 0.8],
    ['bare-tips', 0.3],
    ['bare-plate', 0.3],
    ['bare-both', 0.8],
    ['one-coat-less', 0.3],
    ['shim', 0.4],
    ['dress-tips', 0.4],
    ['fill-left', -0.2],
  ] as const)('%s gives %f mm', (kind, gap) => {
    expect(lever(trap, kind).coated.mean).toBeCloseTo(gap, 6);
    expect(lever(trap, kind).change).toBeCloseTo(gap + 0.2, 6);
  });

  test('what the job has already is said', () => {
    const now = trap.levers.filter(({ isNow }) => isNow).map(({ kind }) => kind);
    expect(now).toEqual(['flush', 'fill-left']);
  });

  test('amounts are those that bring it in with the least change', () => {
    expect(lever(trap, 'shim').amount).toBe(0.6);
    expect(lever(trap, 'dress-tips').amount).toBe(0.6);
    expect(lever(trap, 'stop-short').amount).toBe(0.5);
    expect(lever(trap, 'flush').amount).toBeNull();
  });
});

describe('amounts', () => {
  test('shims come in 0.05 mm and may come out', () => {
    const wide = made({ ask: { asNew: 2.53, most: 1.2 }, repair: { coatedFaces: [] } });
    expect(lever(wide, 'shim')).toMatchObject({
      amount: -1.35,
      words: 'Bring the parts 1.35 mm closer with the shims',
    });
  });

  test('tips can be dressed less, down to not at all', () => {
    const wide = made({ ask: { asNew: 1.1, dressTips: 0.3 }, repair: { coatedFaces: [] } });
    expect(lever(wide, 'dress-tips').amount).toBe(-0.2);
    const wider = made({ ask: { asNew: 2, dressTips: 0.3 }, repair: { coatedFaces: [] } });
    expect(lever(wider, 'dress-tips').amount).toBe(-0.3);
    expect(lever(wider, 'dress-tips').verdict).toBe('wide');
  });

  test('what cannot be brought in is centred in the band: 0.8 and 2.0 mm in 0.4 to 1.2', () => {
    const uneven = made({
      onPlate: [patch([80, 140], [0, 90], 0.9)],
      onTips: [evenly('vane-1/tip', 0.3)],
      repair: { coatedFaces: [] },
    });
    expect(lever(uneven, 'shim')).toMatchObject({ amount: -0.6, verdict: 'both' });
  });

  test('a gap that fits needs none', () => {
    const fits = made({ repair: { coatedFaces: [] } });
    expect(lever(fits, 'shim')).toMatchObject({ amount: 0, isNow: true, caution: null });
  });
});

test('one coat less is no lever where there is one coat', () => {
  const one = made({ coat: { coats: 1 } });
  expect(one.levers.map(({ kind }) => kind)).not.toContain('one-coat-less');
});

test('what is left to the coat is listed for the lever that fills it', () => {
  const left = made({ onPlate: [patch([80, 100], [0, 90], 0.6)], onTips: [evenly('vane-3/tip', 0.4)] });
  expect(left.left.map(({ part, face }) => `${part}:${face}`)).toEqual(['plate:face', 'impeller:vane-3/tip']);
  expect(lever(left, 'fill-left')).toMatchObject({ isNow: false });
  expect(lever(left, 'fill-left').coated.most).toBeCloseTo(-0.2, 6);
});
