import type { ServiceLife } from '../clearance/service-life.ts';
import type { WearMeasure } from '../clearance/wear-rate.ts';
import type { Due } from '../clearance/when-due.ts';

/** How fast the parts wear and when they are due, in the file's units. */
export interface HistoryResult {
  readonly rates: readonly RateResult[];
  readonly due: readonly Due[];
}

/** In 1000 h: mm for deepest and mean, cm3 for the volume. */
export interface RateResult {
  readonly part: string;
  readonly of: WearMeasure;
  readonly per1000: number;
  /** 95 of 100, from how the intervals scatter; null with one interval. A rate under 0 only says that the scatter is wide. */
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly intervals: number;
  readonly hours: number;
}

const HOURS = 1000;
const MM3_PER_CM3 = 1000;

export function historyResult({ rates, due }: ServiceLife): HistoryResult {
  return {
    rates: rates.map(({ part, of, perHour, range, intervals, hours }) => {
      const scaled = (rate: number): number => (rate * HOURS) / (of === 'volume' ? MM3_PER_CM3 : 1);
      return {
        part,
        of,
        per1000: scaled(perHour),
        range: range && { low: scaled(range.low), high: scaled(range.high) },
        intervals,
        hours,
      };
    }),
    due,
  };
}
