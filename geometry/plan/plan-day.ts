import type { PlanChoices } from '../job/job.ts';
import type { CoatNeed } from '../material/coat.ts';
import type { FillerNeed } from '../material/filler.ts';
import type { Minute } from '../units.ts';
import type { DayPlan } from './day-plan.ts';

/** What the day has to hold. */
export interface DayWork {
  /** In the job's order. `tips`: it has vanes whose tips are squared when they are dressed. */
  readonly parts: readonly { readonly id: string; readonly tips: boolean }[];
  readonly filler: FillerNeed;
  /** Of the filler and of the coat, min; null when the data sheet names none. */
  readonly mixTime: Minute | null;
  readonly coatMixTime: Minute | null;
  readonly coat: CoatNeed;
}

export function planDay(_work: DayWork, choices: PlanChoices): DayPlan {
  return { steps: [], start: choices.start, end: 0, handsOn: 0 };
}
