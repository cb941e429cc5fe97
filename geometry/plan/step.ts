import type { Minute } from '../units.ts';
import type { PlanStep, StepKind } from './day-plan.ts';
import { dustAt, type ShopHours } from './shop-hours.ts';

type Window = NonNullable<PlanStep['window']>;

/** What a step is, before it is known whether the day lets it be so. */
interface StepGiven {
  readonly kind: StepKind;
  /** What comes after the colon of its id: a part, a mix; null where there is one of its kind. */
  readonly of: string | number | null;
  readonly parts: readonly string[];
  readonly start: Minute;
  readonly minutes: Minute;
  readonly after: readonly string[];
  readonly note: string;
  readonly batch?: number;
  readonly coat?: number;
  readonly coatMix?: number;
  /** null or left out: it may be done at any time from now on. */
  readonly window?: Window | null;
}

/** A step of the hands; says itself when it lies outside the hours or its window. A window that closes before it opens is none, and missed. */
export function workStep(hours: ShopHours, given: StepGiven): PlanStep {
  const { start, minutes, window = null } = given;
  const isMissed = window !== null && isOutside(window, start, minutes);
  const missed = isMissed ? 'window-missed' : null;
  const trouble = hours.hold(start, minutes) ? missed : 'outside-shift';
  return stepOf(given, window !== null && window.opens > window.closes ? null : window, true, trouble);
}

/** A step that is waited for: through breaks and nights. */
export function waitStep(given: StepGiven): PlanStep {
  return stepOf(given, null, false, null);
}

/** True when work does not lie inside its window. */
export function isOutside({ opens, closes }: Window, start: Minute, minutes: Minute): boolean {
  const end = start + minutes;
  return start < opens - dustAt(start) || end > closes + dustAt(end);
}

function stepOf(
  given: StepGiven,
  window: Window | null,
  hands: boolean,
  trouble: PlanStep['trouble'],
): PlanStep {
  const { kind, of, parts, start, minutes, after, note } = given;
  const { batch = null, coat = null, coatMix = null } = given;
  const id = of === null ? kind : `${kind}:${of}`;
  return { id, kind, parts, batch, coat, coatMix, start, minutes, hands, window, after, note, trouble };
}
