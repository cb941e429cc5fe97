import type { DayResult, PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import { dayAndClock, durationText } from '../../../geometry/sheet/duration.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import type { Celsius, LocalTime } from '../../../geometry/units.ts';

/** `Done Tue 1 Dec 14:10, 31 h after the start.`, or `Done after 31 h.` */
export function doneText({ start, end }: Pick<DayResult, 'start' | 'end'>): string {
  const at = dayAndClock(start, end);
  return at === null
    ? `Done after ${durationText(end)}.`
    : `Done ${at}, ${durationText(end)} after the start.`;
}

/** What the same work comes to in a colder or a warmer shop. */
export function elsewhereText(
  { surface, mixes, end, handsOn }: DayResult['elsewhere'][number],
  start: LocalTime | null,
): string {
  const at = dayAndClock(start, end) ?? `after ${durationText(end)}`;
  return `${temperature(surface)}: ${counted(mixes, 'mix', 'mixes')}, ${durationText(handsOn)} hands-on, done ${at}.`;
}

/** How many steps could not be fitted in; empty when all could. */
export function troubleText(steps: readonly PlanStepResult[]): string {
  const count = steps.filter(({ trouble }) => trouble !== null).length;
  return count === 0 ? '' : `${counted(count, 'step does', 'steps do')} not fit: see the steps.`;
}

const temperature = (surface: Celsius): string => `With the part at ${surface} °C`;
