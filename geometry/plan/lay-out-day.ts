import type { Minute } from '../units.ts';
import type { CoatPlace } from './coat-chain.ts';
import type { DayTask, TaskPart } from './day-task.ts';
import type { FillPlace } from './fill-and-dress.ts';
import { type Hands, takeEarliest } from './hands.ts';
import { lastOf, layCoats, layFills, type Way } from './lay-materials.ts';
import { isStale, type Preparation } from './preparation.ts';

/** When everything starts. */
export interface LaidDay {
  readonly preparations: ReadonlyMap<string, Preparation>;
  /** By their place in the list of mixes. */
  readonly fills: readonly FillPlace[];
  readonly coats: readonly CoatPlace[];
  readonly harden: Minute;
  /** When both filler and coat are hard. */
  readonly isHard: Minute;
  readonly dressHard: readonly Minute[];
  readonly check: Minute;
  readonly assemble: Minute;
  readonly test: Minute;
  /** ids of parts whose blasting is too old when the first filler or coat goes on. */
  readonly stale: readonly string[];
}

/** Gives every piece of the day its place, the earliest its hands, hours and windows allow, in the order of one way. */
export function layOutDay(task: DayTask, way: Way): LaidDay {
  const { hours, times, parts } = task;
  const hands: Hands = { starts: [], ends: [] };
  const preparations = new Map<string, Preparation>();
  const fills = layFills(task, way, hands, preparations);
  const coats = layCoats(task, hands, preparations, fills);

  const harden = hardensFrom(task, fills, coats);
  const isHard = Math.max(harden + (task.hard ?? 0), lastFilled(task, fills) + task.fillerHard);
  const dressHard = parts.map(({ id }) => {
    const own = task.mixes.map((mix, i) => (mix.parts.includes(id) ? fills[i].dress + times.dress : 0));
    return takeEarliest(hands, hours, lastOf([isHard, ...own]), times.dressHard);
  });
  const check = takeEarliest(hands, hours, lastOf(dressHard) + times.dressHard, times.check);
  const assemble = takeEarliest(hands, hours, check + times.check, times.assemble);
  const test = takeEarliest(hands, hours, assemble + times.assemble, times.test);
  return {
    preparations,
    fills,
    coats,
    harden,
    isHard,
    dressHard,
    check,
    assemble,
    test,
    stale: staleParts(task, preparations, fills, coats),
  };
}

function hardensFrom(task: DayTask, fills: readonly FillPlace[], places: readonly CoatPlace[]): Minute {
  const { coats } = task;
  if (coats === null) return lastFilled(task, fills);
  return lastOf(places[places.length - 1].mixes) + lastOf(coats.coats[coats.coats.length - 1].slice(-1));
}

function lastFilled({ mixes }: DayTask, fills: readonly FillPlace[]): Minute {
  return lastOf(fills.map(({ fill }, i) => fill + mixes[i].minutes));
}

function staleParts(
  { times, parts, mixes }: DayTask,
  preparations: ReadonlyMap<string, Preparation>,
  fills: readonly FillPlace[],
  coats: readonly CoatPlace[],
): string[] {
  const goesOn = ({ id, filled }: TaskPart): Minute =>
    filled
      ? mixes.reduce(
          (first, mix, i) => (mix.parts.includes(id) ? Math.min(first, fills[i].fill) : first),
          Number.POSITIVE_INFINITY,
        )
      : coats[0].mixes[0];
  return parts
    .filter((part) => {
      const preparation = preparations.get(part.id);
      return preparation !== undefined && isStale(preparation, times, goesOn(part));
    })
    .map(({ id }) => id);
}
