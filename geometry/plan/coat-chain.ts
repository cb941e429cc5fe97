import type { Minute } from '../units.ts';
import { LOOK_AHEAD } from './fill-and-dress.ts';
import { earliestFree, type Hands, lastEnd, take } from './hands.ts';
import { dustAt, ROUND_THE_CLOCK, type ShopHours } from './shop-hours.ts';

/** All coats, one on the other. */
export interface CoatChain {
  /** Minutes of each mix of each coat. */
  readonly coats: readonly (readonly Minute[])[];
  readonly touchTest: Minute;
  /** The next coat: not before `opens` from the end of the last mix, done by `closes` from the end of the first one; null = no end known. */
  readonly opens: Minute;
  readonly closes: Minute | null;
}

export interface CoatPlace {
  /** Start of the touch test of the coat below; null for the first coat. */
  readonly touchTest: Minute | null;
  readonly mixes: readonly Minute[];
}

/** One coat as placed, the touch test before it included. */
interface Run {
  readonly starts: readonly Minute[];
  /** Of its first mix and of its last. */
  readonly firstEnd: Minute;
  readonly end: Minute;
}

/**
 * Places all coats at the earliest start at which each finds free hands inside the window that the coat below it leaves. Writes into `hands`.
 * The mixes of a coat follow on each other without a pause, unless no stretch of the shop's hours is long enough for that.
 * Where the hours never allow the whole chain, each coat goes on as soon as its window lets it, outside the hours if it must.
 * @param from  ground ready
 */
export function placeCoats(hands: Hands, hours: ShopHours, from: Minute, chain: CoatChain): CoatPlace[] {
  const runs = insideHours(hands, hours, from, chain) ?? asTheyCome(hands, hours, from, chain);
  return runs.map(({ starts }, c) => {
    const minutes = piecesOf(chain, c);
    starts.forEach((start, i) => {
      take(hands, start, minutes[i]);
    });
    return c === 0 ? { touchTest: null, mixes: starts } : { touchTest: starts[0], mixes: starts.slice(1) };
  });
}

/** Pushes a coat later whenever the next one misses its window, until all agree; null when they never do. */
function insideHours(hands: Hands, hours: ShopHours, from: Minute, chain: CoatChain): Run[] | null {
  const { coats } = chain;
  const latest = Math.max(from, lastEnd(hands)) + LOOK_AHEAD;
  const notBefore = coats.map((_, c) => (c === 0 ? from : 0));
  const runs: Run[] = [];
  for (let c = 0; c < coats.length; ) {
    const below = c > 0 ? runs[c - 1] : null;
    const ready = below ? below.end + chain.opens : from;
    const run = unbroken(hands, hours, Math.max(notBefore[c], ready), piecesOf(chain, c), c > 0);
    if (c === 0 && run.starts[0] > latest) return null;
    runs[c] = run;
    const late = below ? run.end - below.firstEnd - closesAfter(chain, c) : 0;
    if (late <= dustAt(run.end)) {
      c += 1;
    } else {
      c -= 1;
      notBefore[c] = runs[c].starts[0] + late;
    }
  }
  return runs;
}

function asTheyCome(hands: Hands, hours: ShopHours, from: Minute, chain: CoatChain): Run[] {
  const runs: Run[] = [];
  for (let c = 0; c < chain.coats.length; c++) {
    const pieces = piecesOf(chain, c);
    const below = c > 0 ? runs[c - 1] : null;
    const ready = below ? below.end + chain.opens : from;
    const open = oneRun(hands, hours, ready, pieces, c > 0);
    const late = below ? open.end - below.firstEnd - closesAfter(chain, c) : 0;
    runs.push(late <= dustAt(open.end) ? open : oneRun(hands, ROUND_THE_CLOCK, ready, pieces, true));
  }
  return runs;
}

/** In one go where any stretch is long enough, otherwise piece by piece with the breaks between. */
function unbroken(
  hands: Hands,
  hours: ShopHours,
  from: Minute,
  pieces: readonly Minute[],
  tested: boolean,
): Run {
  if (total(pieces) <= hours.longest) return oneRun(hands, hours, from, pieces, tested);
  let next = from;
  const starts = pieces.map((minutes) => {
    const start = earliestFree(hands, hours, next, minutes);
    next = start + minutes;
    return start;
  });
  return runOf(starts, pieces, tested);
}

function oneRun(
  hands: Hands,
  hours: ShopHours,
  from: Minute,
  pieces: readonly Minute[],
  tested: boolean,
): Run {
  let next = earliestFree(hands, hours, from, total(pieces));
  const starts = pieces.map((minutes) => {
    const start = next;
    next += minutes;
    return start;
  });
  return runOf(starts, pieces, tested);
}

function runOf(starts: readonly Minute[], pieces: readonly Minute[], tested: boolean): Run {
  const first = tested ? 1 : 0;
  const last = starts.length - 1;
  return { starts, firstEnd: starts[first] + pieces[first], end: starts[last] + pieces[last] };
}

/** A window too narrow for the work is taken as just wide enough: that it is missed is said of the step. */
function closesAfter({ coats, touchTest, opens, closes }: CoatChain, c: number): Minute {
  if (closes === null) return Number.POSITIVE_INFINITY;
  return Math.max(closes, total(coats[c - 1].slice(1)) + opens + touchTest + total(coats[c]));
}

function piecesOf({ coats, touchTest }: CoatChain, c: number): readonly Minute[] {
  return c === 0 ? coats[0] : [touchTest, ...coats[c]];
}

function total(pieces: readonly Minute[]): Minute {
  return pieces.reduce((sum, minutes) => sum + minutes, 0);
}
