import type { PlanStepResult } from '../../geometry/sheet/day-result.ts';
import type { LocalTime } from '../../geometry/units.ts';
import { MINUTE, type Ms } from './bench-clock.ts';
import type { BenchTimer } from './timers.ts';

/** How late a step is, ms; the window weighs more than the plan, because the putty does not wait. */
export interface Lateness {
  readonly against: 'plan' | 'window';
  readonly by: Ms;
}

/** A plan is kept to the minute. */
const ON_TIME: Ms = MINUTE;

/** When the plan has the step begin, by this device's calendar; null when the job does not say when the day starts. */
export function plannedStart(start: LocalTime | null, step: PlanStepResult): Ms | null {
  return start === null ? null : new Date(start).getTime() + step.start * MINUTE;
}

/**
 * null when the step is in time.
 * @param planned  by the calendar; null when there is no plan, or when the step has begun already
 * @param wall     the calendar now
 */
export function lateness(
  step: PlanStepResult,
  planned: Ms | null,
  wall: Ms,
  timers: readonly BenchTimer[],
): Lateness | null {
  const closed = timers.find((timer) => timer.step === step.id && timer.phase === 'closed');
  if (closed !== undefined) return { against: 'window', by: closed.span };
  if (planned === null || wall - planned <= ON_TIME) return null;
  return { against: 'plan', by: wall - planned };
}
