import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchCount, equalBatches, MOST_BATCHES } from '../../../geometry/material/batch.ts';
import type { FillRun } from '../../../geometry/material/filler.ts';
import { FILLER } from './generic-materials.ts';

const TURN = 2 * Math.PI;

/** A run of bins round a face: volumes per bin, the fill between radius 100 and 120 where there is any. */
function ring(volume: readonly number[], options: Partial<FillRun> = {}): FillRun {
  return {
    part: 'plate',
    face: 'face',
    pass: 1,
    along: 'second',
    closed: true,
    start: 0,
    step: TURN / volume.length,
    volume: Float64Array.from(volume),
    from: Float64Array.from(volume, (v) => (v > 0 ? 100 : Number.NaN)),
    to: Float64Array.from(volume, (v) => (v > 0 ? 120 : Number.NaN)),
    ...options,
  };
}

/** Fill volume of a run between two places along it: the bins' volumes times the covered share of each, going round. */
function volumeBetween(run: FillRun, from: number, to: number): number {
  let sum = 0;
  const bins = run.volume.length;
  for (let step = 0; step < 2 * bins; step++) {
    const begin = run.start + step * run.step;
    const share = (Math.min(to, begin + run.step) - Math.max(from, begin)) / run.step;
    if (share > 0) sum += share * run.volume[step % bins];
  }
  return sum;
}

describe('equalBatches', () => {
  it('makes batches that add up to the need, none larger than the largest', () => {
    const volume = fc.double({ min: 0.001, max: 1e7, noNaN: true });
    fc.assert(
      fc.property(volume, fc.double({ min: 0.002, max: 50, noNaN: true }), (need, share) => {
        const largest = need * share;
        const batches = equalBatches(need, largest, 20, FILLER, []);
        const sum = batches.reduce((total, batch) => total + batch.volume, 0);
        expect(sum / need).toBeCloseTo(1, 9);
        for (const batch of batches) expect(batch.volume).toBeLessThanOrEqual(largest * (1 + 2e-9));
        // One batch fewer would not do.
        const fewer = batches.length - 1;
        if (fewer > 0) expect(need / fewer).toBeGreaterThan(largest);
      }),
    );
  });

  it('gives every batch the same fill volume to cover', () => {
    const bins = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 900, noNaN: true })), {
      minLength: 3,
      maxLength: 40,
    });
    fc.assert(
      fc.property(bins, bins, fc.boolean(), fc.integer({ min: 1, max: 9 }), (a, b, closed, count) => {
        const runs = [ring(a, { closed }), ring(b, { face: 'bore', along: 'first', start: 0.5 })];
        const total = [...a, ...b].reduce((sum, volume) => sum + volume, 0);
        fc.pre(total > 0);
        const batches = equalBatches(count, 1, 20, FILLER, runs);
        expect(batches).toHaveLength(count);
        for (const { covers } of batches) {
          const covered = covers.reduce((sum, { face, first, second }) => {
            const [run, along] = face === 'face' ? [runs[0], second] : [runs[1], first];
            return sum + volumeBetween(run, along[0], along[1]);
          }, 0);
          expect(covered / (total / count)).toBeCloseTo(1, 6);
        }
      }),
    );
  });

  it('walks along the face: four mixes for an even ring take a quarter turn each', () => {
    const batches = equalBatches(4, 1, 20, FILLER, [ring(Array(10).fill(7))]);
    expect(batches.map(({ covers }) => covers)).toEqual(
      [0, 1, 2, 3].map((quarter) => [
        {
          part: 'plate',
          face: 'face',
          pass: 1,
          first: [100, 120],
          second: [expect.closeTo((quarter * TURN) / 4, 9), expect.closeTo(((quarter + 1) * TURN) / 4, 9)],
        },
      ]),
    );
  });

  it('starts after the widest gap, so that a worn wedge across the mark stays in one piece', () => {
    // Worn from 300 to 60 degrees in 12 bins of 30 degrees; the gap ends at 300.
    const volume = [1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 1, 1];
    const [first, second] = equalBatches(2, 1, 20, FILLER, [ring(volume)]);
    expect(first.covers).toHaveLength(1);
    expect(second.covers).toHaveLength(1);
    expect(first.covers[0].second).toEqual([expect.closeTo((10 / 12) * TURN, 9), expect.closeTo(TURN, 9)]);
    expect(second.covers[0].second).toEqual([expect.closeTo(TURN, 9), expect.closeTo((14 / 12) * TURN, 9)]);
  });

  it('lists a cover for each separate stretch, in the order parts, faces, along the face', () => {
    const runs = [
      ring([0, 2, 0, 2, 0, 0]),
      ring([0, 0, 0, 3], { face: 'bore', along: 'first' }),
      ring([1, 0], { part: 'second plate', closed: false }),
    ];
    const [only] = equalBatches(1, 1, 20, FILLER, runs);
    expect(only.covers.map(({ part, face }) => `${part}:${face}`)).toEqual([
      'plate:face',
      'plate:face',
      'plate:bore',
      'second plate:face',
    ]);
    expect(only.covers[2].second).toEqual([100, 120]);
  });

  it('lists none when more than the most would be needed', () => {
    expect(batchCount(MOST_BATCHES + 0.5, 1)).toBe(MOST_BATCHES + 1);
    expect(equalBatches(MOST_BATCHES + 0.5, 1, 20, FILLER, [])).toEqual([]);
    expect(equalBatches(MOST_BATCHES, 1, 20, FILLER, [])).toHaveLength(MOST_BATCHES);
  });
});
