import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { flowTestOf } from '../../../geometry/flow-test/flow-test.ts';
import type { FlowTest } from '../../../geometry/job/job.ts';
import { atDuty, run, test90 } from './made-test.ts';

const pair = (before: number, after: number, over: Partial<FlowTest> = {}) =>
  flowTestOf(test90({ runs: [atDuty('before', before), atDuty('after', after)], ...over }));

describe('the gain and its error', () => {
  test('two independent tests of grade 2: 8.7 % of the efficiency, 9.0 % through the motor', () => {
    // 6.124 x sqrt 2 = 8.66; 6.364 x sqrt 2 = 9.00 (ISO 9906:2012, from memory; errors add as squares, JCGM 100:2008, 5.1.2).
    expect((pair(0.62, 0.705).comparison?.relativeError ?? 0) * 100).toBeCloseTo(8.66, 2);
    const through = flowTestOf(
      test90({
        motorEfficiency: 0.9,
        runs: [atDuty('before', 0.6, { powerAt: 'motor' }), atDuty('after', 0.65, { powerAt: 'motor' })],
      }),
    );
    expect((through.comparison?.relativeError ?? 0) * 100).toBeCloseTo(9, 2);
  });

  test('62 to 66 % lies inside it, 62 to 70.5 % beyond: 4.0 and 8.5 points of 5.5 and 5.7', () => {
    const inside = pair(0.62, 0.66).comparison;
    // sqrt((62 x 0.06124)^2 + (66 x 0.06124)^2) = 5.545 points.
    expect((inside?.gainError ?? 0) * 100).toBeCloseTo(5.545, 2);
    expect(inside).toMatchObject({ isProven: false, verdict: 'inside the error', error: 'independent' });
    const beyond = pair(0.62, 0.705).comparison;
    expect((beyond?.gain ?? 0) * 100).toBeCloseTo(8.5, 9);
    expect((beyond?.gainError ?? 0) * 100).toBeCloseTo(5.749, 2);
    expect(beyond).toMatchObject({ isProven: true, verdict: 'gain' });
  });

  test('the same gauges that repeat within 2 %: 62 to 66 % is proven, 62 to 63 % is not', () => {
    const over = { sameGauges: true, repeatability: 0.02 };
    expect(pair(0.62, 0.66, over).comparison).toMatchObject({ isProven: true, error: 'repeatability' });
    expect(pair(0.62, 0.66, over).comparison?.relativeError).toBeCloseTo(0.02, 12);
    expect(pair(0.62, 0.63, over).comparison).toMatchObject({ isProven: false });
  });

  test('the same gauges alone do not help: nobody knows the random part', () => {
    const same = pair(0.62, 0.66, { sameGauges: true }).comparison;
    expect(same).toMatchObject({ error: 'random part not known', isProven: false });
    expect(same?.gainError).toBe(pair(0.62, 0.66).comparison?.gainError);
    // How well other gauges repeat says nothing either.
    expect(pair(0.62, 0.66, { repeatability: 0.02 }).comparison?.error).toBe('independent');
  });

  test('a loss is called one; no loss and no gain is never proven', () => {
    expect(pair(0.7, 0.6).comparison).toMatchObject({ verdict: 'loss', isProven: false });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), (same) => {
        expect(pair(same, same).comparison?.verdict).toBe('inside the error');
      }),
    );
  });

  test('swapping before and after swaps gain and loss', () => {
    const share = fc.double({ min: 0.2, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(share, share, (a, b) => {
        const [there, back] = [pair(a, b).comparison, pair(b, a).comparison];
        expect(there?.gain).toBeCloseTo(-(back?.gain ?? Number.NaN), 12);
        expect(there?.gainError).toBeCloseTo(back?.gainError ?? Number.NaN, 12);
      }),
    );
  });
});

describe('what is not compared says why', () => {
  test.each([
    [[], /^No run as found and none after/],
    [[atDuty('after', 0.7)], /^No run as found/],
    [[atDuty('before', 0.6), atDuty('some day', 0.7)], /^No run after/],
    [[atDuty('before', 0.6), run('after', [[60, 15, 4]])], /after the repair has no efficiency at duty/],
    [[run('before', [[90, 13, 0]]), atDuty('after', 0.7)], /as found has no efficiency at duty/],
    [
      [atDuty('before', 0.6), atDuty('after', 0.7, { powerAt: 'motor' })],
      /shaft in one run and at the motor/,
    ],
  ] as const)('%#', (runs, reason) => {
    const found = flowTestOf(test90({ runs }));
    expect(found.comparison).toBeNull();
    expect(found.notCompared).toMatch(reason);
    expect(found.saving).toBeNull();
    expect(found.noSaving).not.toBeNull();
  });
});

describe('against the pump as new', () => {
  test('72 % new, 60 before, 69 after: 95.8 % of it, and three quarters of the loss came back', () => {
    const found = flowTestOf(
      test90({ runs: [atDuty('new', 0.72), atDuty('before', 0.6), atDuty('after', 0.69)] }),
    );
    expect(found.recovered).toBeCloseTo(69 / 72, 12);
    expect(found.returned).toBeCloseTo(9 / 12, 12);
  });

  test('no new run, or none that was better: no share of a loss', () => {
    expect(pair(0.6, 0.7)).toMatchObject({ recovered: null, returned: null });
    const better = flowTestOf(
      test90({ runs: [atDuty('new', 0.6), atDuty('before', 0.6), atDuty('after', 0.69)] }),
    );
    expect(better.recovered).toBeCloseTo(1.15, 12);
    expect(better.returned).toBeNull();
    // A pump and a set are no measure of each other.
    const unlike = flowTestOf(
      test90({
        runs: [atDuty('new', 0.6, { powerAt: 'motor' }), atDuty('before', 0.6), atDuty('after', 0.69)],
      }),
    );
    expect(unlike.recovered).toBeNull();
  });

  test('of several runs of a kind the last counts, and that is said', () => {
    const found = flowTestOf(
      test90({
        runs: [atDuty('after', 0.65), atDuty('before', 0.6), atDuty('after', 0.7, { label: 'again' })],
      }),
    );
    expect(found.comparison?.after).toBeCloseTo(0.7, 12);
    expect(found.warnings.map(({ text }) => text)).toEqual([
      'Several runs are after repair: the last of them, run 3 "again", is compared.',
    ]);
  });
});
