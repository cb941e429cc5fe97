import { clockOf, dateOf, dayOf, later, weekdayOf } from '../job/shop-clock.ts';
import type { LocalTime, Minute } from '../units.ts';

/** `45 min`, `1 h 05 min`, `31 h`. What takes any time at all takes a minute. */
export function durationText(minutes: Minute): string {
  const whole = minutes > 0 ? Math.max(1, Math.round(minutes)) : 0;
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${String(rest).padStart(2, '0')} min`;
}

/** A span of time; the unit stands once where both ends have the same: `30 to 45 min`. */
export function spanText({ from, to }: { readonly from: Minute; readonly to: Minute }): string {
  const [first, last] = [durationText(from), durationText(to)];
  return /^\d+ min$/.test(first) && /^\d+ min$/.test(last)
    ? `${first.slice(0, -' min'.length)} to ${last}`
    : `${first} to ${last}`;
}

/**
 * When something is: `10:40` by the clock, or `+3:40` from the start of the work when that is not known. Rounded up to the minute: nobody
 * begins before the time has come.
 * @param beside  another minute the reader is at; a moment of another day says its weekday: `Wed 07:00`
 */
export function momentText(start: LocalTime | null, minute: Minute, beside: Minute = minute): string {
  if (start === null) return offsetText(minute);
  const time = later(start, up(minute));
  return dateOf(time) === dateOf(later(start, beside))
    ? clockOf(time)
    : `${weekdayOf(time)} ${clockOf(time)}`;
}

/** `Tue 1 Dec 14:10`; null when the start is not known. */
export function dayAndClock(start: LocalTime | null, minute: Minute): string | null {
  if (start === null) return null;
  const time = later(start, up(minute));
  return `${dayOf(time)} ${clockOf(time)}`;
}

/** `opens 10:40, closes 13:40`: never earlier than it opens, never later than it closes. */
export function windowText(start: LocalTime | null, { opens, closes }: TimeWindow, beside: Minute): string {
  const [from, to] = ends(start, { opens, closes }, beside);
  return `opens ${from}, closes ${to}`;
}

/** `10:40 to 13:40`, likewise. */
export function betweenText(start: LocalTime | null, window: TimeWindow, beside: Minute): string {
  return ends(start, window, beside).join(' to ');
}

interface TimeWindow {
  readonly opens: Minute;
  readonly closes: Minute;
}

function ends(start: LocalTime | null, { opens, closes }: TimeWindow, beside: Minute): [string, string] {
  return [momentText(start, opens, beside), momentText(start, Math.floor(closes + DUST), beside)];
}

/** What a sum of minutes may be off by, min. */
const DUST = 1e-6;

const up = (minute: Minute): Minute => Math.ceil(minute - DUST);

function offsetText(minute: Minute): string {
  const whole = up(minute);
  return `+${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
