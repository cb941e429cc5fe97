import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { serviceLife } from '../../../geometry/clearance/service-life.ts';
import { studentT95 } from '../../../geometry/clearance/student-t.ts';
import { addedRates, wearRate, wearRates } from '../../../geometry/clearance/wear-rate.ts';
import { type RepairedPart, whenDue } from '../../../geometry/clearance/when-due.ts';
import type { EarlierRepair } from '../../../geometry/job/job.ts';

describe('quantiles of Student, two sides, 95 %', () => {
  // Printed in every table of the distribution (e.g. NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, from memory).
  test.each([
    [1, 12.706],
    [2, 4.303],
    [3, 3.182],
    [4, 2.776],
    [5, 2.571],
    [10, 2.228],
    [30, 2.042],
    [100_000, 1.96],
  ])('%d degrees of freedom: %d', (freedom, quantile) => {
    expect(studentT95(freedom)).toBeCloseTo(quantile, 3);
  });
  test('one degree is the Cauchy distribution: tan(0.475 pi)', () => {
    expect(studentT95(1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 8);
  });
  test('two degrees: p sqrt(2 / (1 - p^2)), p = 0.95', () => {
    expect(studentT95(2)).toBeCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)), 8);
  });
  test('refuses what is no count', () => {
    expect(() => studentT95(0)).toThrow(RangeError);
    expect(() => studentT95(1.5)).toThrow(RangeError);
  });
});

describe('the rate', () => {
  test('is the total lost over the total hours', () => {
    const rate = wearRate([
      { hours: 1000, amount: 2 },
      { hours: 3000, amount: 4 },
    ]);
    expect(rate?.perHour).toBeCloseTo(6 / 4000, 12);
    expect(rate).toMatchObject({ intervals: 2, hours: 4000 });
  });
  test('scatters by the standard error of a ratio', () => {
    // r = 1.5 a 1000 h; off by 0.5 and -0.5: sqrt(2/1 x 0.5) / 4000 = 1 / 4000; t with one degree 12.7062.
    const rate = wearRate([
      { hours: 1000, amount: 2 },
      { hours: 3000, amount: 4 },
    ]);
    expect(rate?.standardError).toBeCloseTo(1 / 4000, 12);
    expect(rate?.range?.high).toBeCloseTo(6 / 4000 + 12.7062 / 4000, 7);
    expect(rate?.range?.low).toBeCloseTo(6 / 4000 - 12.7062 / 4000, 7);
  });
  test('three equal intervals give mean and standard error of a mean: 1.2, 1.5, 1.8 in 1000 h each', () => {
    // s = 0.3, s / sqrt 3 = 0.173205, t 4.30265: 1.5 +- 0.745241.
    const rate = wearRate([1.2, 1.5, 1.8].map((amount) => ({ hours: 1000, amount })));
    expect((rate?.range?.low ?? 0) * 1000).toBeCloseTo(1.5 - 0.745241, 5);
    expect((rate?.range?.high ?? 0) * 1000).toBeCloseTo(1.5 + 0.745241, 5);
  });
  test('of one interval has no range, of no hours is none', () => {
    expect(wearRate([{ hours: 2000, amount: 3 }])).toMatchObject({
      perHour: 0.0015,
      range: null,
      intervals: 1,
    });
    expect(wearRate([{ hours: 0, amount: 3 }])).toBeNull();
    expect(wearRate([])).toBeNull();
  });
  test('does not depend on the order, nor on the unit of time', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            hours: fc.double({ min: 100, max: 9000, noNaN: true }),
            amount: fc.double({ min: 0, max: 9, noNaN: true }),
          }),
          { minLength: 2, maxLength: 8 },
        ),
        (intervals) => {
          const [a, b] = [wearRate(intervals), wearRate(intervals.toReversed())];
          const days = wearRate(intervals.map(({ hours, amount }) => ({ hours: hours / 24, amount })));
          expect(b?.perHour).toBeCloseTo(a?.perHour ?? Number.NaN, 12);
          expect(b?.range?.high).toBeCloseTo(a?.range?.high ?? Number.NaN, 9);
          expect((days?.range?.high ?? 0) / 24).toBeCloseTo(a?.range?.high ?? Number.NaN, 9);
        },
      ),
    );
  });
  test('two that add up: 3-4-5 of their errors, with the fewer intervals', () => {
    const rate = (perHour: number, standardError: number, intervals: number) => ({
      perHour,
      standardError,
      range: null,
      intervals,
      hours: 1,
    });
    const sum = addedRates(rate(10, 3, 3), rate(20, 4, 9));
    expect(sum).toMatchObject({ perHour: 30, standardError: 5, intervals: 3 });
    expect(sum.range?.high).toBeCloseTo(30 + 4.302653 * 5, 5);
  });
});

const repair = (
  part: string,
  hours: number,
  deepest: number,
  more: Partial<EarlierRepair> = {},
): EarlierRepair => ({
  part,
  date: '2025-01-01',
  hours,
  deepest,
  mean: null,
  volume: null,
  note: '',
  ...more,
});
const now = (part: string, deepest: number) => ({ part, deepest, mean: deepest / 2, volume: 1000 * deepest });

describe('a history', () => {
  test('the present wear counts as one more interval where the hours are known, and only what was noted counts', () => {
    const rates = wearRates({ hours: 1000, repairs: [repair('plate', 2000, 3, { mean: 1 })] }, [
      now('plate', 3),
    ]);
    expect(rates.map(({ of, intervals }) => [of, intervals])).toEqual([
      ['deepest', 2],
      ['mean', 2],
      ['volume', 1],
    ]);
    expect(rates[0].perHour).toBeCloseTo(6 / 3000, 12);
    expect(rates[1].perHour).toBeCloseTo(2.5 / 3000, 12);
    expect(rates[2].perHour).toBeCloseTo(3, 12);
  });
  test('each part by itself; one without hours has no rate', () => {
    const rates = wearRates({ hours: null, repairs: [repair('plate', 2000, 3)] }, [
      now('plate', 9),
      now('impeller', 2),
    ]);
    expect(rates.map(({ part, of }) => `${part} ${of}`)).toEqual(['plate deepest']);
    expect(rates[0].perHour).toBeCloseTo(3 / 2000, 12);
  });
  test('of nothing is null', () => {
    expect(serviceLife({ hours: null, repairs: [] }, [], [], null)).toBeNull();
  });
});

const repaired = (standing: number, remaining = standing): RepairedPart => ({
  id: 'plate',
  leastThickness: 10,
  walls: [
    {
      face: 'face',
      behind: null,
      at: [0, 0],
      asNew: 16,
      remaining,
      limit: 10,
      under: 0,
      verdict: remaining < 10 ? 'under' : 'sound',
      places: [],
      standing,
    },
  ],
});

describe('when it is due', () => {
  const rates = (...amounts: number[]) =>
    wearRates(
      {
        hours: null,
        repairs: amounts.flatMap((amount) => [
          repair('plate', 1000, amount),
          repair('impeller', 1000, amount / 2),
        ]),
      },
      [now('plate', 0), now('impeller', 0)],
    );
  test('the wall: what stands over the limit by the rate, the range turned over', () => {
    // 1.2, 1.5, 1.8 mm in 1000 h each: 1.5 (0.754759 to 2.245241); 15 - 10 mm.
    const [due] = whenDue([repaired(15, 13)], rates(1.2, 1.5, 1.8), null);
    expect(due.margin).toBeCloseTo(5, 9);
    expect(due.hours).toBeCloseTo(5000 / 1.5, 6);
    expect(due.from).toBeCloseTo(5000 / 2.245241, 1);
    expect(due.to).toBeCloseTo(5000 / 0.754759, 0);
  });
  test('a rate that may be nothing has no upper end', () => {
    const [due] = whenDue([repaired(15)], rates(1, 2), null);
    expect(due.hours).toBeCloseTo(5000 / 1.5, 6);
    expect(due.from).toBeGreaterThan(0);
    expect(due.to).toBeNull();
  });
  test('one interval gives hours and no range', () => {
    const [due] = whenDue([repaired(15)], rates(2), null);
    expect(due).toMatchObject({ hours: 2500, from: null, to: null, why: null });
  });
  test('metal under its limit, no limit, no rate, no wear: no hours, and why', () => {
    const why = (part: RepairedPart, rate: ReturnType<typeof rates>) => {
      const [due] = whenDue([part], rate, null);
      expect(due.hours).toBeNull();
      return due.why;
    };
    expect(why(repaired(15, 9), rates(2))).toMatch(/under its limit/);
    expect(why({ ...repaired(15), leastThickness: null }, rates(2))).toMatch(/least thickness is not known/);
    expect(why(repaired(15), [])).toMatch(/How fast it wears is not known/);
    expect(why(repaired(15), rates(0))).toMatch(/Nothing has worn/);
  });
  test('the gap opens by both rates together', () => {
    const gap = { most: 0.6, limit: 1.2, plate: 'plate', impeller: 'impeller' };
    const [, due] = whenDue([repaired(15)], rates(1.2, 1.5, 1.8), gap);
    expect(due.what).toBe('gap');
    expect(due.hours).toBeCloseTo(0.6 / 0.00225, 6);
    // Errors 0.173205 and half of it: hypot 0.193649, t 4.302653: 2.25 +- 0.833206.
    expect(due.from).toBeCloseTo(600 / (2.25 + 0.833206), 2);
    expect(due.to).toBeCloseTo(600 / (2.25 - 0.833206), 1);
    expect(whenDue([], rates(1), { ...gap, most: 1.2 })[0].why).toMatch(/as wide as allowed/);
    expect(whenDue([], [], gap)[0].why).toMatch(/How fast plate wears/);
  });
});
