import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import { durationText, momentText, windowText } from '../../../geometry/sheet/duration.ts';
import type { LocalTime } from '../../../geometry/units.ts';

/** `12 min, hands` or `45 min, wait`. */
export function lengthWords({ minutes, hands }: PlanStepResult): string {
  return `${durationText(minutes)}, ${hands ? 'hands' : 'wait'}`;
}

/** What could not be had, in a sentence; empty when nothing is wrong. */
export function troubleWords({ trouble }: PlanStepResult): string {
  switch (trouble) {
    case null:
      return '';
    case 'outside-shift':
      return 'No shift holds it: it falls outside working hours.';
    case 'window-missed':
      return 'Its window closes before it can be done.';
  }
}

/** A step in one line, for the picture: `10:40 Mix and fill 3, plate: 12 min, hands; opens 10:40, closes 13:40.` */
export function stepLine(step: PlanStepResult, start: LocalTime | null): string {
  const parts = step.parts.length === 0 ? '' : `, ${step.parts.join(' and ')}`;
  const window = step.window === null ? '' : `; ${windowText(start, step.window, step.start)}`;
  const trouble = troubleWords(step);
  return `${momentText(start, step.start, 0)} ${step.step}${parts}: ${lengthWords(step)}${window}.${trouble === '' ? '' : ` ${trouble}`}`;
}
