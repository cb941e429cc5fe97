import type { Instant } from '../../geometry/units.ts';
import { MINUTE, type Ms, SECOND } from './bench-clock.ts';

/**
 * A moment as the job keeps it, `2026-12-01T07:12:30+01:00`; whole seconds, the last full one.
 * @param east  how far the shop's clock is ahead of UTC, min
 */
export function instantOf(moment: Ms, east: number): Instant {
  const local = new Date(Math.floor(moment / SECOND) * SECOND + east * MINUTE).toISOString();
  const size = Math.abs(east);
  const zone = `${east < 0 ? '-' : '+'}${twoDigits(Math.floor(size / 60))}:${twoDigits(size % 60)}`;
  return `${local.slice(0, '2026-12-01T07:12:30'.length)}${zone}`;
}

/** How far this device's clock is ahead of UTC at that moment, min. */
export function eastOfUtc(moment: Ms): number {
  // Zones of long ago had odd seconds.
  return -Math.round(new Date(moment).getTimezoneOffset());
}

/** `14:02` by the clock of this device; with its day when that is another one than `today`. */
export function clockText(moment: Ms, today: Ms): string {
  const time = new Date(moment);
  const clock = `${twoDigits(time.getHours())}:${twoDigits(time.getMinutes())}`;
  if (time.toDateString() === new Date(today).toDateString()) return clock;
  return `${new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' }).format(time)} ${clock}`;
}

/** A length of time as it is said: `30 s`, `12 min`, `1 h 5 min`, `2 d 3 h`. Whole minutes are those that are full. */
export function timeText(span: Ms): string {
  const seconds = Math.floor(Math.abs(span) / SECOND);
  if (seconds < 60) return `${seconds} s`;
  const minutes = Math.floor(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  const hours = Math.floor(minutes / 60);
  if (hours < 24) return minutes % 60 === 0 ? `${hours} h` : `${hours} h ${minutes % 60} min`;
  return hours % 24 === 0 ? `${Math.floor(hours / 24)} d` : `${Math.floor(hours / 24)} d ${hours % 24} h`;
}

/** A length of time as a countdown shows it: `9:05`, `1:02:30`. What is begun of a second is not counted. */
export function countdownText(span: Ms): string {
  const seconds = Math.floor(Math.abs(span) / SECOND);
  const hours = Math.floor(seconds / 3600);
  const minutes = Math.floor(seconds / 60) % 60;
  const tail = twoDigits(seconds % 60);
  return hours > 0 ? `${hours}:${twoDigits(minutes)}:${tail}` : `${minutes}:${tail}`;
}

const twoDigits = (count: number): string => String(count).padStart(2, '0');
