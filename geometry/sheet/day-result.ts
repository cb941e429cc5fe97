import type { Estimate } from '../estimate.ts';
import type { PlanStep } from '../plan/day-plan.ts';
import type { Celsius, LocalTime, Minute } from '../units.ts';
import { stepCautions } from './step-cautions.ts';
import { stepName } from './step-name.ts';

/** A step of the plan, named. */
export interface PlanStepResult extends PlanStep {
  /** In words: "Fill mix 3". */
  readonly step: string;
  /** Codes of the cautions that belong to it. */
  readonly cautions: readonly string[];
}

export interface DayResult {
  /** When minute 0 is by the shop clock; null when the job does not say. */
  readonly start: LocalTime | null;
  readonly end: Minute;
  readonly handsOn: Minute;
  readonly elsewhere: readonly {
    readonly surface: Celsius;
    readonly mixes: number;
    readonly end: Minute;
    readonly handsOn: Minute;
  }[];
}

export function planResult({ day }: Estimate): PlanStepResult[] {
  return day.steps.map((planned) => ({
    ...planned,
    step: stepName(planned, day.steps),
    cautions: stepCautions(planned.kind),
  }));
}

export function dayResult({ day, elsewhere }: Estimate): DayResult {
  return {
    start: day.start,
    end: day.end,
    handsOn: day.handsOn,
    elsewhere: elsewhere.map(({ surface, mixes, day: { end, handsOn } }) => ({
      surface,
      mixes,
      end,
      handsOn,
    })),
  };
}
