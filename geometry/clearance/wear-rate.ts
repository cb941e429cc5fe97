import type { History } from '../job/job.ts';
import type { Mm, Mm3 } from '../units.ts';
import { studentT95 } from './student-t.ts';

/** What a part lost between two repairs. */
export interface Interval {
  readonly hours: number;
  readonly amount: number;
}

/** What the present job found on a part. */
export interface PresentWear {
  readonly part: string;
  readonly deepest: Mm;
  /** Over the worn area. */
  readonly mean: Mm;
  readonly volume: Mm3;
}

export type WearMeasure = 'deepest' | 'mean' | 'volume';

/** How fast something wears, per hour. */
export interface WearRate {
  readonly perHour: number;
  /** One standard error, from how the intervals scatter; null with a single interval. */
  readonly standardError: number | null;
  /** 95 of 100; null with a single interval. */
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly intervals: number;
  readonly hours: number;
}

export interface PartWearRate extends WearRate {
  readonly part: string;
  readonly of: WearMeasure;
}

const MEASURES: readonly WearMeasure[] = ['deepest', 'mean', 'volume'];

/** How fast each part wears: deepest, mean and volume (mm/h, mm/h, mm3/h), from earlier repairs and from this one. Parts without hours have none. */
export function wearRates(history: History, present: readonly PresentWear[]): PartWearRate[] {
  return present.flatMap((now) =>
    MEASURES.flatMap((of): PartWearRate[] => {
      const earlier = history.repairs
        .filter(({ part }) => part === now.part)
        .flatMap((repair): Interval[] => {
          const amount = repair[of];
          return amount === null ? [] : [{ hours: repair.hours, amount }];
        });
      const rate = wearRate([
        ...earlier,
        ...(history.hours === null ? [] : [{ hours: history.hours, amount: now[of] }]),
      ]);
      return rate === null ? [] : [{ part: now.part, of, ...rate }];
    }),
  );
}

/**
 * Total lost over total hours: long intervals weigh more, as they should where wear grows with time. Its standard error is that of a
 * ratio, sqrt(n / (n - 1) x sum (amount - rate x hours)^2) / total hours; the interval is Student's with n - 1.
 * @returns null when no interval has run any hours
 * Source: Cochran, Sampling Techniques, 3rd ed. 1977, sections 2.11 and 6.4, from memory; tests/geometry/clearance/wear-rate.test.ts
 */
export function wearRate(intervals: readonly Interval[]): WearRate | null {
  const run = intervals.filter(({ hours }) => hours > 0);
  const hours = run.reduce((sum, interval) => sum + interval.hours, 0);
  if (hours === 0) return null;
  const perHour = run.reduce((sum, { amount }) => sum + amount, 0) / hours;
  const n = run.length;
  if (n < 2) return { perHour, standardError: null, range: null, intervals: n, hours };
  const squares = run.reduce((sum, one) => sum + (one.amount - perHour * one.hours) ** 2, 0);
  const standardError = Math.sqrt((n / (n - 1)) * squares) / hours;
  return { perHour, standardError, range: rangeAround(perHour, standardError, n - 1), intervals: n, hours };
}

/** Two rates that add up, as if one knew nothing of the other; with the fewer intervals of the two, which is on the safe side. */
export function addedRates(a: WearRate, b: WearRate): WearRate {
  const perHour = a.perHour + b.perHour;
  const intervals = Math.min(a.intervals, b.intervals);
  const hours = Math.min(a.hours, b.hours);
  if (a.standardError === null || b.standardError === null)
    return { perHour, standardError: null, range: null, intervals, hours };
  const standardError = Math.hypot(a.standardError, b.standardError);
  return {
    perHour,
    standardError,
    range: rangeAround(perHour, standardError, intervals - 1),
    intervals,
    hours,
  };
}

function rangeAround(rate: number, standardError: number, freedom: number) {
  const reach = studentT95(freedom) * standardError;
  return { low: rate - reach, high: rate + reach };
}
