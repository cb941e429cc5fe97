import type { Minute } from '../units.ts';
import { earliestFree, type Hands, lastEnd, take } from './hands.ts';
import { dustAt, ROUND_THE_CLOCK, type ShopHours } from './shop-hours.ts';

/** When a mix can be dressed, from its end on. */
export interface Dressing {
  readonly opens: Minute;
  /** null: no end to it is known. */
  readonly closes: Minute | null;
  readonly minutes: Minute;
}

export interface FillPlace {
  readonly fill: Minute;
  readonly dress: Minute;
}

/** Every day is like the next: what is not to be had within two days after all that is planned is never to be had. */
export const LOOK_AHEAD: Minute = 2 * 1440;

/**
 * Places a mix and its dressing together, at the earliest start at which both find free hands and the dressing lies inside its window.
 * Where the shop's hours never allow that, the mix goes on as soon as it can and is dressed outside the hours. Writes into `hands`.
 * @param from  ground ready
 * Dressing that takes longer than the window is wide begins when the window opens.
 */
export function placeFill(
  hands: Hands,
  hours: ShopHours,
  from: Minute,
  fillMinutes: Minute,
  dressing: Dressing,
): FillPlace {
  const place =
    earliestPair(hands, hours, hours, from, fillMinutes, dressing) ??
    earliestPair(hands, hours, ROUND_THE_CLOCK, from, fillMinutes, dressing);
  if (place === null) throw new Error(`placeFill: needs a finite window, got ${JSON.stringify(dressing)}`);
  take(hands, place.fill, fillMinutes);
  take(hands, place.dress, dressing.minutes);
  return place;
}

function earliestPair(
  hands: Hands,
  hours: ShopHours,
  dressHours: ShopHours,
  from: Minute,
  fillMinutes: Minute,
  { opens, closes, minutes }: Dressing,
): FillPlace | null {
  const latest = Math.max(from, lastEnd(hands)) + LOOK_AHEAD;
  const within = Math.max(closes ?? Number.POSITIVE_INFINITY, opens + minutes);
  let fill = earliestFree(hands, hours, from, fillMinutes);
  while (fill <= latest) {
    const filled = fill + fillMinutes;
    const dress = earliestFree(hands, dressHours, filled + opens, minutes);
    const late = dress + minutes - (filled + within);
    if (late <= dustAt(dress)) return { fill, dress };
    // No earlier fill can do: it would have to be dressed no earlier than this.
    fill = earliestFree(hands, hours, fill + late, fillMinutes);
  }
  return null;
}
