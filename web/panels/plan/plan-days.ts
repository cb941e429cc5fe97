import { dateOf, dayOf, later } from '../../../geometry/job/shop-clock.ts';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import type { LocalTime } from '../../../geometry/units.ts';

export interface PlanDay {
  /** `Tue 1 Dec`; null when the start is not known, and all steps then stand in one row of hours. */
  readonly day: string | null;
  readonly steps: readonly PlanStepResult[];
}

/** The steps by the day each begins on, in their order. */
export function planDays(steps: readonly PlanStepResult[], start: LocalTime | null): PlanDay[] {
  if (start === null) return steps.length === 0 ? [] : [{ day: null, steps }];
  const days: { readonly day: string; readonly steps: PlanStepResult[] }[] = [];
  let date = '';
  for (const step of steps) {
    const time = later(start, step.start);
    if (dateOf(time) !== date) days.push({ day: dayOf(time), steps: [] });
    days.at(-1)?.steps.push(step);
    date = dateOf(time);
  }
  return days;
}
