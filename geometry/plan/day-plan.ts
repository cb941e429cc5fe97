import type { LocalTime, Minute } from '../units.ts';

/** What is done, or waited for, in the order of the work. */
export type StepKind =
  | 'wash'
  | 'blast'
  | 'blow-down'
  | 'wipe'
  | 'flash-off'
  | 'fill'
  | 'firm-up'
  | 'dress'
  | 'coat'
  | 'overcoat'
  | 'touch-test'
  | 'harden'
  | 'dress-hard'
  | 'check'
  | 'assemble'
  | 'test';

/** One stretch of the day: the hands are at it, or it is waited for. */
export interface PlanStep {
  /** `wash:plate`, `fill:3`, `dress:3`, `coat:1.2` (coat 1, its mix 2): names the step in the log too. */
  readonly id: string;
  readonly kind: StepKind;
  /** ids of the parts it is done on, in the job's order. */
  readonly parts: readonly string[];
  /** Number of the mix of filler. */
  readonly batch: number | null;
  /** Number of the coat, and of the mix within it. */
  readonly coat: number | null;
  readonly coatMix: number | null;
  /** From the start of the work, nights and breaks counted. */
  readonly start: Minute;
  readonly minutes: Minute;
  /** Takes the person's hands; nobody has two of these at once. */
  readonly hands: boolean;
  /** When it may be done: too soft before it opens, too late after it closes. */
  readonly window: { readonly opens: Minute; readonly closes: Minute } | null;
  /** ids of the steps that end before it starts. */
  readonly after: readonly string[];
  readonly note: string;
  /** What could not be had: no working hours fit it, or its window is missed. */
  readonly trouble: 'outside-shift' | 'window-missed' | null;
}

/** The day, or the days, from washing to the test run. */
export interface DayPlan {
  /** By start; of two at the same minute the one that is waited for stands first. */
  readonly steps: readonly PlanStep[];
  /** When minute 0 is by the shop clock; null when the job does not say. */
  readonly start: LocalTime | null;
  /** When the last step ends. */
  readonly end: Minute;
  readonly handsOn: Minute;
}
