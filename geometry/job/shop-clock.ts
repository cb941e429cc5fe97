/**
 * The clock on the wall of the shop. It has no zone: a day has 24 hours here whatever the law does with its clocks, so the arithmetic
 * runs in UTC and never meets daylight saving.
 */
import type { LocalTime, Minute } from '../units.ts';

/** So many minutes later by that clock, to the whole minute; no later than the year 9999, where its writing ends. */
export function later(time: LocalTime, minutes: Minute): LocalTime {
  return fromStamp(stampOf(time) + Math.round(minutes) * MS_PER_MINUTE);
}

export function minutesBetween(from: LocalTime, to: LocalTime): Minute {
  return (stampOf(to) - stampOf(from)) / MS_PER_MINUTE;
}

/** What the device's clock shows where it stands. */
export function wallTime(moment: Date): LocalTime {
  return fromStamp(
    Date.UTC(
      moment.getFullYear(),
      moment.getMonth(),
      moment.getDate(),
      moment.getHours(),
      moment.getMinutes(),
    ),
  );
}

/** `07:00`. */
export function clockOf(time: LocalTime): string {
  return time.slice('2026-12-01T'.length);
}

/** Minutes after midnight. */
export function minuteOfDay(time: LocalTime): Minute {
  return afterMidnight(clockOf(time));
}

/** Minutes after midnight of `15:30`. */
export function afterMidnight(clock: string): Minute {
  const [hours, minutes] = clock.split(':').map(Number);
  return hours * 60 + minutes;
}

/** `2026-12-01`. */
export function dateOf(time: LocalTime): string {
  return time.slice(0, '2026-12-01'.length);
}

/** `Tue`. */
export function weekdayOf(time: LocalTime): string {
  return WEEKDAYS[new Date(stampOf(time)).getUTCDay()];
}

/** `Tue 1 Dec`. */
export function dayOf(time: LocalTime): string {
  const day = new Date(stampOf(time));
  return `${weekdayOf(time)} ${day.getUTCDate()} ${MONTHS[day.getUTCMonth()]}`;
}

/** The morning after, at the start of a usual shift. */
export function tomorrowAtSeven(now: LocalTime): LocalTime {
  return `${dateOf(later(now, MINUTES_PER_DAY))}T07:00`;
}

export const MINUTES_PER_DAY: Minute = 24 * 60;
const MS_PER_MINUTE = 60_000;
const LAST_STAMP = Date.UTC(9999, 11, 31, 23, 59);
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

function stampOf(time: LocalTime): number {
  return Date.parse(`${time}:00Z`);
}

function fromStamp(stamp: number): LocalTime {
  return new Date(Math.min(stamp, LAST_STAMP)).toISOString().slice(0, '2026-12-01T07:00'.length);
}
