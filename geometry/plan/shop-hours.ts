import type { PlanChoices } from '../job/job.ts';
import { minuteOfDay } from '../job/shop-clock.ts';
import type { Minute } from '../units.ts';

/** When hands may be at work. All times in minutes from the start of the work. */
export interface ShopHours {
  /** The longest stretch of any day without a break. */
  readonly longest: Minute;
  /** Earliest start, `from` or later, at which so much is done in one stretch; where none is long enough, the next moment of work. */
  readonly earliest: (from: Minute, minutes: Minute) => Minute;
  /** Whether all of it lies inside one stretch. */
  readonly hold: (start: Minute, minutes: Minute) => boolean;
}

/** Minutes after midnight of the day they begin on; `to` may lie past the next midnight. */
interface Stretch {
  readonly from: Minute;
  readonly to: Minute;
}

const DAY: Minute = 1440;
/** Running over by less is float dust, far below what a shop clock shows. */
const DUST: Minute = 1e-6;
/** The same as a share of the time itself, for a part so cold that a window opens after years. */
const DUST_SHARE = 1e-12;
/** Two thousand years: nobody keeps hours then, and a day is no longer a whole number of minutes in a float. */
const FAR: Minute = 1e9;
/** Work too long for any stretch begins where at least so much of one is left. */
const A_START: Minute = 1;

/** What two times near this one may differ by and still be the same. */
export function dustAt(time: Minute): Minute {
  return Math.max(DUST, DUST_SHARE * Math.abs(time));
}

/** No shift and no break: work starts at any time. */
export const ROUND_THE_CLOCK: ShopHours = {
  longest: Number.POSITIVE_INFINITY,
  earliest: (from) => from,
  hold: () => true,
};

/**
 * The working hours of a job: on the first day from the start of the work to the end of the shift, on later days the whole shift, less the breaks.
 * Without a start nobody knows which hour it is: then all of it counts.
 * Source: tests/geometry/plan/shop-hours.test.ts
 */
export function shopHours({
  start,
  shift,
  breaks,
}: Pick<PlanChoices, 'start' | 'shift' | 'breaks'>): ShopHours {
  if (start === null || (shift === null && breaks.length === 0)) return ROUND_THE_CLOCK;
  const begins = minuteOfDay(start);
  const everyDay =
    shift === null
      ? overMidnight(between({ from: 0, to: DAY }, breaks))
      : between({ from: shift.from, to: shift.to }, breaks);
  const firstDay = shift === null ? everyDay : between({ from: begins, to: shift.to }, breaks);
  const dayBefore = shift === null ? everyDay : [];
  const longest = Math.max(0, ...everyDay.map(({ from, to }) => to - from));

  function stretchesOf(day: number): readonly Stretch[] {
    if (day > 0) return everyDay;
    return day === 0 ? firstDay : dayBefore;
  }

  function within(from: Minute, minutes: Minute): Minute | null {
    if (from > FAR) return from;
    const clock = from + begins;
    const today = Math.floor(clock / DAY);
    for (let day = today - 1; day <= today + 2; day++) {
      for (const stretch of stretchesOf(day)) {
        const at = Math.max(clock, day * DAY + stretch.from);
        if (at + minutes <= day * DAY + stretch.to + DUST) return at === clock ? from : at - begins;
      }
    }
    return null;
  }

  return {
    longest,
    earliest: (from, minutes) => within(from, minutes) ?? within(from, Math.min(A_START, longest)) ?? from,
    hold: (start, minutes) => within(start, minutes) === start,
  };
}

/** What the breaks leave of a stretch; a break may run past midnight into it. */
function between(whole: Stretch, breaks: PlanChoices['breaks']): Stretch[] {
  const away = breaks
    .flatMap(({ at, minutes }) => [at - DAY, at, at + DAY].map((from) => ({ from, to: from + minutes })))
    .sort((a, b) => a.from - b.from);
  const stretches: Stretch[] = [];
  let { from } = whole;
  for (const pause of away) {
    if (pause.from > from && from < whole.to) stretches.push({ from, to: Math.min(pause.from, whole.to) });
    from = Math.max(from, pause.to);
  }
  if (from < whole.to) stretches.push({ from, to: whole.to });
  return stretches;
}

/** Round the clock the last stretch of a day runs on into the first of the next. */
function overMidnight(stretches: readonly Stretch[]): Stretch[] {
  const first = stretches.at(0);
  const last = stretches.at(-1);
  if (!first || !last || first === last || first.from > 0 || last.to < DAY) return [...stretches];
  return [...stretches.slice(1, -1), { from: last.from, to: last.to + first.to }];
}
