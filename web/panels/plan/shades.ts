import type { PlanFile } from '../../../geometry/job/job-file.ts';
import { measuredPlan } from '../../../geometry/job/measured-plan.ts';
import { MINUTES_PER_DAY, minuteOfDay } from '../../../geometry/job/shop-clock.ts';
import type { LocalTime, Minute } from '../../../geometry/units.ts';

/** A stretch in which the hands rest. */
export interface Shade {
  readonly kind: 'night' | 'break';
  /** From the start of the work. */
  readonly from: Minute;
  readonly to: Minute;
}

/**
 * Nights and breaks between the start and the end of the work; none when the start is not known, as nothing is then tied to the clock.
 * @param stops  where something begins or ends, minutes from the start; days on which nothing does are left out
 */
export function shadesOf(
  plan: PlanFile | undefined,
  start: LocalTime | null,
  stops: readonly Minute[],
): Shade[] {
  if (start === null) return [];
  const { shift, breaks } = measuredPlan(plan);
  const end = Math.max(0, ...stops);
  const begins = minuteOfDay(start);
  const days = stops.map((stop) => Math.floor((stop + begins) / MINUTES_PER_DAY));
  return [...new Set(days.flatMap((day) => [day - 1, day]))]
    .filter((day) => day >= 0)
    .flatMap((day): Shade[] => {
      const midnight = day * MINUTES_PER_DAY - begins;
      const pauses = breaks
        .filter(({ at }) => shift === null || (at < shift.to && (day === 0 || at >= shift.from)))
        .map(({ at, minutes }) => ({
          kind: 'break' as const,
          from: midnight + at,
          to: midnight + at + minutes,
        }));
      if (shift === null) return pauses;
      const night = { from: midnight + shift.to, to: midnight + MINUTES_PER_DAY + shift.from };
      return [...pauses, { kind: 'night', ...night }];
    })
    .map(({ kind, from, to }) => ({ kind, from: Math.max(0, from), to: Math.min(end, to) }))
    .filter(({ from, to }) => to > from)
    .sort((a, b) => a.from - b.from);
}
