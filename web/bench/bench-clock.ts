/**
 * Time that is never given back to the putty. The bench reads stamps in the job against the device's clock, and that clock may be
 * set back, set on, or stand still while the device sleeps. What it was set back by is added from then on; what it went on by counts.
 */

/** ms since 1970, or ms of a length of time. */
export type Ms = number;

export const SECOND: Ms = 1000;
export const MINUTE: Ms = 60 * SECOND;
const HOUR: Ms = 60 * MINUTE;

/** What the two clocks of the device show at one moment. */
export interface Reading {
  /** By its calendar; anybody may set it. */
  readonly wall: Ms;
  /** Since the page was loaded; nobody sets it, though it may stand still while the device sleeps. */
  readonly mono: Ms;
}

export interface BenchClock {
  /** The last look. */
  readonly seen: Reading;
  /** Where the two clocks were last taken to agree: small differences add up from there. */
  readonly agreed: Reading;
  /** How far the calendar was set back so far. */
  readonly back: Ms;
  /** Bench time when it was set back last; null = never. */
  readonly backAt: Ms | null;
}

/** What is kept on the device. */
export interface KeptClock {
  /** The calendar at the last look. */
  readonly seen: Ms;
  readonly back: Ms;
  readonly backAt: Ms | null;
}

/** `back`: the calendar was set back. `on`: it went on while nobody looked. `away`: the page was not there. */
export interface ClockNews {
  readonly kind: 'back' | 'on' | 'away';
  readonly by: Ms;
}

export interface ClockLook {
  readonly clock: BenchClock;
  readonly news: readonly ClockNews[];
}

/** The two clocks drift apart by less than this between looks; the calendar is also put right by network in small steps. */
const DRIFT: Ms = 2 * SECOND;
/** Less is corrected without a word. */
const WORTH_SAYING_BACK: Ms = 10 * SECOND;
/** A background tab is woken once a minute at least. */
const WORTH_SAYING_ON: Ms = 2 * MINUTE;
/** A clock that was further ahead than this was wrong all along. */
const MOST_BACK: Ms = 48 * HOUR;
/** What was set back so long ago is of no putty any more, */
const LAPSE: Ms = 48 * HOUR;
/** unless something was stamped this shortly ago. */
const FRESH: Ms = 12 * HOUR;

/** The time that stamps are made of and timers count in. */
export function benchTime({ seen, back }: BenchClock): Ms {
  return seen.wall + back;
}

/**
 * The clock when the page has just been loaded: all that is known is when it was last seen.
 * @param kept    null when nothing is kept
 * @param newest  the last stamp of the job; null when it has none
 */
export function openClock(kept: KeptClock | null, reading: Reading, newest: Ms | null): ClockLook {
  const fresh: BenchClock = { seen: reading, agreed: reading, back: 0, backAt: null };
  if (kept === null) return { clock: fresh, news: [] };
  const behind = kept.seen - reading.wall;
  if (behind > MOST_BACK) return { clock: fresh, news: [] };
  const known = { ...fresh, back: kept.back, backAt: kept.backAt };
  if (behind > 0) return setBack(known, behind);
  const now = benchTime(known);
  const isOld = known.backAt !== null && now - known.backAt > LAPSE;
  const isIdle = newest === null || now - newest > FRESH;
  const clock = isOld && isIdle ? fresh : known;
  return { clock, news: -behind > WORTH_SAYING_ON ? [{ kind: 'away', by: -behind }] : [] };
}

/**
 * The clock at the next look.
 * @param isWatched  looks came steadily until now, so a gap between them is news; false when the screen is opened again
 */
export function lookAtClock(before: BenchClock, reading: Reading, isWatched: boolean): ClockLook {
  const passed = Math.max(0, reading.mono - before.agreed.mono);
  const lost = passed - (reading.wall - before.agreed.wall);
  const clock: BenchClock = {
    ...before,
    seen: reading,
    agreed: Math.abs(lost) > DRIFT ? reading : before.agreed,
  };
  const look = lost > DRIFT ? setBack(clock, lost) : { clock, news: [] };
  const gap = isWatched ? benchTime(look.clock) - benchTime(before) : -lost;
  if (gap <= WORTH_SAYING_ON) return look;
  return { ...look, news: [...look.news, { kind: 'on', by: gap }] };
}

/** What to keep of it on the device. */
export function keptOf({ seen, back, backAt }: BenchClock): KeptClock {
  return { seen: seen.wall, back, backAt };
}

function setBack(clock: BenchClock, by: Ms): ClockLook {
  const back = clock.back + by;
  return {
    clock: { ...clock, back, backAt: clock.seen.wall + back },
    news: by >= WORTH_SAYING_BACK ? [{ kind: 'back', by }] : [],
  };
}
