import type { StepTimes } from '../job/job.ts';
import type { Minute } from '../units.ts';
import { LOOK_AHEAD } from './fill-and-dress.ts';
import { copyOf, goBack, type Hands, takeEarliest } from './hands.ts';
import type { ShopHours } from './shop-hours.ts';

/** When a part is made ready: starts of the work, and when the solvent has flashed off. */
export interface Preparation {
  readonly wash: Minute;
  readonly blast: Minute;
  readonly blowDown: Minute;
  readonly wipe: Minute;
  readonly ready: Minute;
}

/** Bare blasted metal rusts: from its end on, what goes on goes on within four hours (common practice). */
const FRESH: Minute = 240;

/** True when what goes on at `start` goes on metal blasted too long before. */
export function isStale({ blast }: Preparation, times: StepTimes, start: Minute): boolean {
  return start - (blast + times.blast) > FRESH + 1e-6;
}

/**
 * Washes, blasts, blows down and wipes one part, each as soon as the hands are free. Writes into `hands`.
 * @param blastFrom  not blasted before, so that it does not rust
 */
export function prepare(
  hands: Hands,
  hours: ShopHours,
  times: StepTimes,
  blastFrom: Minute = 0,
): Preparation {
  const wash = takeEarliest(hands, hours, 0, times.wash);
  const blast = takeEarliest(hands, hours, Math.max(blastFrom, wash + times.wash), times.blast);
  const blowDown = takeEarliest(hands, hours, blast + times.blast, times.blowDown);
  const wipe = takeEarliest(hands, hours, blowDown + times.blowDown, times.wipe);
  return { wash, blast, blowDown, wipe, ready: wipe + times.wipe + times.flashOff };
}

/**
 * Prepares parts and places what goes on them, blasting later when that would go on metal blasted too long before: on the morning of the day, not
 * the evening before. Where it cannot be had, the fewest parts are left to rust. Writes into `hands` and `preparations`.
 * @param place  takes up the hands from `ready` on; returns what it placed and when that starts
 */
export function prepareFresh<T>(
  hands: Hands,
  hours: ShopHours,
  times: StepTimes,
  ids: readonly string[],
  preparations: Map<string, Preparation>,
  place: (ready: Minute) => { readonly start: Minute; readonly placed: T },
): T {
  const before = copyOf(hands);
  const attempt = (blastFrom: Minute) => {
    goBack(hands, before);
    const each = ids.map(() => prepare(hands, hours, times, blastFrom));
    const { start, placed } = place(Math.max(0, ...each.map(({ ready }) => ready)));
    const stale = each.filter((preparation) => isStale(preparation, times, start)).length;
    return { each, placed, start, stale, hands: copyOf(hands) };
  };
  let best = attempt(0);
  const latest = best.start + LOOK_AHEAD;
  let blastFrom: Minute = 0;
  let { start } = best;
  while (best.stale > 0 && start - FRESH - times.blast > blastFrom && start <= latest) {
    blastFrom = start - FRESH - times.blast;
    const next = attempt(blastFrom);
    if (next.stale < best.stale) best = next;
    start = next.start;
  }
  goBack(hands, best.hands);
  ids.forEach((id, k) => {
    preparations.set(id, best.each[k]);
  });
  return best.placed;
}
