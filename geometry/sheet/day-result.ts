import type { Estimate } from '../estimate.ts';
import type { Job, LogEntry } from '../job/job.ts';
import type { PlanStep } from '../plan/day-plan.ts';
import type { Celsius, LocalTime, Minute } from '../units.ts';
import { stepCautions } from './step-cautions.ts';
import { stepName } from './step-name.ts';

/** A step of the plan, named. */
export interface PlanStepResult {
  readonly id: string;
  readonly kind: PlanStep['kind'];
  /** In words: "Fill mix 3". */
  readonly step: string;
  readonly parts: readonly string[];
  readonly batch: number | null;
  readonly coat: number | null;
  readonly coatMix: number | null;
  /** From the start of the work. */
  readonly start: Minute;
  readonly minutes: Minute;
  readonly hands: boolean;
  readonly window: { readonly opens: Minute; readonly closes: Minute } | null;
  /** ids of the steps it waits for. */
  readonly after: readonly string[];
  readonly note: string;
  readonly trouble: PlanStep['trouble'];
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

export type LogResult = LogEntry;

export function planResult({ day }: Estimate): PlanStepResult[] {
  return day.steps.map(
    ({ id, kind, parts, batch, coat, coatMix, start, minutes, hands, window, after, note, trouble }) => ({
      id,
      kind,
      step: stepName({ kind, batch, coat, coatMix }, day.steps),
      parts,
      batch,
      coat,
      coatMix,
      start,
      minutes,
      hands,
      window,
      after,
      note,
      trouble,
      cautions: stepCautions(kind),
    }),
  );
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

export function logResult({ log }: Job): LogResult[] {
  return [...log];
}
