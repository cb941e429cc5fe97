import type { Minute } from '../units.ts';
import type { ShopHours } from './shop-hours.ts';

/** One person's time: what it is taken up with, in the order of the day. Never two things at once. */
export interface Hands {
  starts: Minute[];
  ends: Minute[];
}

/** Earliest start, `from` or later, at which the hands are free for so long and the shop is open. */
export function earliestFree(hands: Hands, hours: ShopHours, from: Minute, minutes: Minute): Minute {
  let start = hours.earliest(from, minutes);
  let i = firstEndingAfter(hands, start);
  while (i < hands.starts.length && hands.starts[i] < start + minutes) {
    start = hours.earliest(hands.ends[i], minutes);
    while (i < hands.ends.length && hands.ends[i] <= start) i += 1;
  }
  return start;
}

/** Takes up the hands for a while. Writes into `hands`. */
export function take(hands: Hands, start: Minute, minutes: Minute): void {
  const i = firstEndingAfter(hands, start);
  hands.starts.splice(i, 0, start);
  hands.ends.splice(i, 0, start + minutes);
}

/** Frees the hands of work taken up before. Writes into `hands`. */
export function giveBack(hands: Hands, start: Minute, minutes: Minute): void {
  const i = hands.starts.findIndex((each, k) => each === start && hands.ends[k] === start + minutes);
  if (i < 0) throw new Error(`giveBack: needs work taken up before, got ${minutes} min at ${start}`);
  hands.starts.splice(i, 1);
  hands.ends.splice(i, 1);
}

/** Places work at the earliest start there is and takes it up. Writes into `hands`. */
export function takeEarliest(hands: Hands, hours: ShopHours, from: Minute, minutes: Minute): Minute {
  const start = earliestFree(hands, hours, from, minutes);
  take(hands, start, minutes);
  return start;
}

/** When the last of what is taken up so far ends. */
export function lastEnd(hands: Hands): Minute {
  return hands.ends.at(-1) ?? 0;
}

export function copyOf({ starts, ends }: Hands): Hands {
  return { starts: [...starts], ends: [...ends] };
}

/** Goes back to a copy taken before. Writes into `hands`. */
export function goBack(hands: Hands, { starts, ends }: Hands): void {
  hands.starts = [...starts];
  hands.ends = [...ends];
}

function firstEndingAfter({ ends }: Hands, time: Minute): number {
  let low = 0;
  let high = ends.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ends[middle] <= time) low = middle + 1;
    else high = middle;
  }
  return low;
}
