import { dateOf, dayOf, later, minuteOfDay } from '../../../geometry/job/shop-clock.ts';
import { momentText } from '../../../geometry/sheet/duration.ts';
import type { LocalTime, Minute } from '../../../geometry/units.ts';
import type { TimeScale } from './time-scale.ts';

/** A line across the picture with its time, px. */
export interface Tick {
  readonly x: number;
  readonly text: string;
}

export interface Ticks {
  readonly hours: readonly Tick[];
  /** Where each day begins, or is first seen; none when the start is not known. */
  readonly days: readonly Tick[];
}

/** px that a clock time needs. */
const ROOM = 52;

/** Full hours by the clock, or from the start when that is not known; none inside a fold, and the end by itself. */
export function ticksOf(scale: TimeScale, start: LocalTime | null, end: Minute): Ticks {
  const offset = start === null ? 0 : minuteOfDay(start) % 60;
  const hours: Tick[] = [];
  const last = scale.x(end);
  for (let i = 1; i < scale.stops.length; i++) {
    const [from, to] = [scale.stops[i - 1], scale.stops[i]];
    if (scale.folds.some((fold) => fold.from === from)) continue;
    for (let minute = Math.ceil((from + offset) / 60) * 60 - offset; minute <= to; minute += 60) {
      const x = scale.x(minute);
      const isFree = x - (hours.at(-1)?.x ?? -ROOM) >= ROOM && last - x >= ROOM;
      if (isFree) hours.push({ x, text: momentText(start, minute) });
    }
  }
  hours.push({ x: last, text: momentText(start, end) });
  return { hours, days: start === null ? [] : daysOf(scale, start) };
}

/** A day that passes inside a fold is not named. */
function daysOf(scale: TimeScale, start: LocalTime): Tick[] {
  const days: Tick[] = [];
  let date = '';
  for (const stop of scale.stops) {
    const time = later(start, stop);
    if (dateOf(time) === date) continue;
    date = dateOf(time);
    const midnight = Math.max(0, stop - minuteOfDay(time));
    const fold = scale.folds.find(({ from, to }) => midnight > from && midnight < to);
    days.push({ x: fold === undefined ? scale.x(midnight) : fold.x + fold.width, text: dayOf(time) });
  }
  return days;
}
