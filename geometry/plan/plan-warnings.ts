import type { Warning } from '../job/warning.ts';
import type { DayPlan, PlanStep } from './day-plan.ts';

/** More steps than this are counted, not named. */
const MOST_NAMED = 3;

/** What of the day could not be had: work outside the hours, windows missed. One warning each, with what to change. */
export function planWarnings({ steps }: DayPlan): Warning[] {
  const outside = steps.filter(({ trouble }) => trouble === 'outside-shift');
  const missed = steps.filter(({ trouble }) => trouble === 'window-missed');
  const isDressing = missed.some(({ kind }) => kind === 'dress');
  const isCoating = missed.some(({ kind }) => kind === 'coat');
  return [
    ...(outside.length === 0
      ? []
      : [
          {
            code: 'plan-outside-shift',
            field: 'plan.shiftEnd',
            text:
              `Working hours and breaks leave no place for ${listed(outside)}. ` +
              'Work longer on that day, move a break, or bring the part to a temperature whose windows fall inside the hours.',
          },
        ]),
    ...(missed.length === 0
      ? []
      : [
          {
            code: 'plan-window-missed',
            field: null,
            text: [
              `Too late for ${listed(missed)}: the window closes before the work is done.`,
              isDressing
                ? 'Dress with two, in less time, or keep the part cooler: the filler firms up slower.'
                : null,
              isCoating
                ? 'Coat with two, at a faster rate, or keep the part cooler; else roughen the coat below and wipe it before the next.'
                : null,
            ]
              .filter((part) => part !== null)
              .join(' '),
          },
        ]),
  ];
}

function listed(steps: readonly PlanStep[]): string {
  const named = steps.slice(0, MOST_NAMED).map(({ id }) => id.replace(':', ' ').replaceAll('-', ' '));
  const rest = steps.length - named.length;
  return named.join(', ') + (rest > 0 ? ` and ${rest} more` : '');
}
