import { describe, expect, test } from 'vitest';
import { judgeGap } from '../../../geometry/clearance/judge-gap.ts';
import { ASK } from './made-gap.ts';

const gap = (least: number, most: number) => ({ least, mean: (least + most) / 2, most });
/** Band 0.4 to 1.2 mm. */
const judged = (least: number, most: number, tolerances: Partial<(typeof ASK)['tolerances']> = {}) =>
  judgeGap(gap(least, most), { ...ASK, tolerances: { ...ASK.tolerances, ...tolerances } });

/** Job format, "Clearance": tight if least - tolerance is under the band, wide if most + tolerance is over it, both when both, else fit. */
describe('the verdict', () => {
  test.each([
    [0.5, 1.1, 'fit'],
    [0.3, 1.1, 'tight'],
    [0.5, 1.3, 'wide'],
    [0.3, 1.3, 'both'],
    [-0.2, 0.9, 'tight'],
  ] as const)('%f to %f mm in a band of 0.4 to 1.2: %s', (least, most, verdict) => {
    expect(judged(least, most).verdict).toBe(verdict);
  });

  test('the tolerance is spent on both sides', () => {
    expect(judged(0.5, 1.1, { setting: 0.1 }).verdict).toBe('fit');
    expect(judged(0.49, 1.1, { setting: 0.1 }).verdict).toBe('tight');
    expect(judged(0.5, 1.11, { setting: 0.1 }).verdict).toBe('wide');
  });

  test('a gap right on its limit keeps it, whatever 32 bits make of the depth', () => {
    expect(judged(0.4, 1.2).verdict).toBe('fit');
    expect(judged(0.1 + Math.fround(0.3) - 1e-8, 0.9 + Math.fround(0.3)).verdict).toBe('fit');
    expect(judged(0.4 - 2e-5, 1.2).verdict).toBe('tight');
  });
});

/** Worst case: all errors one way at once; root sum square: independent errors, 3-4-5. Stacking of tolerances, common practice. */
describe('several tolerances', () => {
  const four = { setting: 0.1, film: 0.1, dressing: 0.1, runOut: 0.1 };

  test('add up in the worst case and as squares else', () => {
    const { tolerance } = judged(0.5, 1.1, { setting: 0.03, film: 0.04 });
    expect(tolerance.worstCase).toBeCloseTo(0.07, 12);
    expect(tolerance.rootSumSquare).toBeCloseTo(0.05, 12);
    expect(judged(0.5, 1.1, four).tolerance.rootSumSquare).toBeCloseTo(0.2, 12);
  });

  test('what fails in the worst case may still be likely to fit', () => {
    expect(judged(0.65, 0.95, four)).toMatchObject({ verdict: 'both', likely: 'fit' });
    expect(judged(0.55, 0.95, four)).toMatchObject({ verdict: 'both', likely: 'tight' });
  });
});
