import type { PlanChoices } from '../job/job.ts';
import type { Minute } from '../units.ts';
import type { DayPlan, PlanStep } from './day-plan.ts';
import { daySteps } from './day-steps.ts';
import { type DayTask, dayTask } from './day-task.ts';
import type { DayWork } from './day-work.ts';
import { byNumber, inTurns } from './fill-order.ts';
import type { Way } from './lay-materials.ts';
import { type LaidDay, layOutDay } from './lay-out-day.ts';

/** From so many mixes on one way to go about the day is tried, not all. */
const MANY_MIXES = 100;
/** What another order must gain before it is worth leaving the numbers on the mixes. */
const WORTH_REORDERING: Minute = 5;

/**
 * The day of one fitter, or the days, from washing to the test run: who fills while another part firms up, which break a mix must not run into,
 * when the coat can start so that the next one meets its window. A few ways to go about it are laid out; the best one is kept:
 * fewest troubles, then the earliest end, what blasting again would take added.
 * @returns no steps when there is nothing to fill and nothing to coat, or more mixes than are listed
 * Accuracy: with two or three mixes 94 days in 100 are the shortest there is, none ends 20 % later; tests/geometry/plan/shortest-day.test.ts
 */
export function planDay(work: DayWork, choices: PlanChoices): DayPlan {
  const task = dayTask(work, choices);
  if (task === null) return { steps: [], start: choices.start, end: 0, handsOn: 0 };
  const plans = waysFor(task).map((way, i) => {
    const laid = layOutDay(task, way);
    return { way, laid, steps: daySteps(task, laid), rank: i };
  });
  const best = plans.reduce((best, plan) => (isBetter(costOf(task, plan), costOf(task, best)) ? plan : best));
  const { steps } = best;
  return {
    steps,
    start: choices.start,
    end: endOf(steps),
    handsOn: steps.reduce((sum, { hands, minutes }) => sum + (hands ? minutes : 0), 0),
  };
}

/** In the order they are preferred. */
function waysFor({ mixes, parts }: DayTask): Way[] {
  const numbered = byNumber(mixes);
  if (mixes.length > MANY_MIXES) return [{ order: numbered, isBlastedFirst: false, isFilledFirst: false }];
  const isShared = parts.filter(({ filled }) => filled).length > 1;
  const orders = isShared ? [numbered, inTurns(mixes)] : [numbered];
  return orders.flatMap((order) =>
    (isShared ? [true, false] : [false]).flatMap((isBlastedFirst) =>
      (mixes.length > 1 ? [false, true] : [false]).map((isFilledFirst) => ({
        order,
        isBlastedFirst,
        isFilledFirst,
      })),
    ),
  );
}

/** Smaller is better, the first number before the second, and so on. */
function costOf(
  { times }: DayTask,
  { way, laid, steps }: { readonly way: Way; readonly laid: LaidDay; readonly steps: readonly PlanStep[] },
): readonly number[] {
  const isReordered = way.order.some((mix, i) => mix !== i);
  const blastedAgain = laid.stale.length * (times.blast + times.blowDown + times.wipe + times.flashOff);
  return [
    steps.filter(({ trouble }) => trouble !== null).length,
    endOf(steps) + blastedAgain + (isReordered ? WORTH_REORDERING : 0),
    laid.harden,
  ];
}

function isBetter(cost: readonly number[], than: readonly number[]): boolean {
  const i = cost.findIndex((value, k) => value !== than[k]);
  return i >= 0 && cost[i] < than[i];
}

function endOf(steps: readonly PlanStep[]): Minute {
  return steps.reduce((latest, { start, minutes }) => Math.max(latest, start + minutes), 0);
}
