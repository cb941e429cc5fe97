import type { Minute } from '../units.ts';
import { type CoatPlace, placeCoats } from './coat-chain.ts';
import type { DayTask } from './day-task.ts';
import { type FillPlace, placeFill } from './fill-and-dress.ts';
import { placeFillFirst } from './fill-first.ts';
import type { Hands } from './hands.ts';
import { type Preparation, prepare, prepareFresh } from './preparation.ts';

/** One way to go about the day. */
export interface Way {
  /** Places in the list of mixes, each layer after the one it lies on. */
  readonly order: readonly number[];
  /** All parts that are filled are blasted before the first of them is; otherwise each when its turn comes. */
  readonly isBlastedFirst: boolean;
  /** Dressing waits, inside its window, where the next mix can be put in place before it. */
  readonly isFilledFirst: boolean;
}

/** Mix after mix in the order of the way, each at the earliest start it finds. Writes into `hands` and `preparations`. */
export function layFills(
  task: DayTask,
  { order, isBlastedFirst, isFilledFirst }: Way,
  hands: Hands,
  preparations: Map<string, Preparation>,
): FillPlace[] {
  const { hours, times, mixes, dressing } = task;
  const fills: FillPlace[] = [];
  if (isBlastedFirst) {
    for (const id of new Set(order.flatMap((i) => mixes[i].parts)))
      preparations.set(id, prepare(hands, hours, times));
  }
  // Where mixes were placed, by when their ground was ready. Mixes are equally long and the hands only fill up: one that is ready no sooner than
  // another before it finds no earlier place.
  const found = new Map<Minute, Minute>();
  const notBefore = (ready: Minute) =>
    lastOf([ready, ...[...found].map(([sooner, fill]) => (sooner <= ready ? fill : 0))]);
  const movable = new Set<number>();
  for (const i of order) {
    const { minutes, parts, on } = mixes[i];
    const bare = parts.filter((id) => !preparations.has(id));
    const ground = lastOf([
      ...parts.map((id) => preparations.get(id)?.ready ?? 0),
      ...on.map((below) => fills[below].dress + dressing.minutes),
    ]);
    // The layer beneath stays dressed when this one is counted on to follow.
    for (const below of on) movable.delete(below);
    const lay = (ready: Minute) => {
      const from = notBefore(ready);
      if (!isFilledFirst) return { place: placeFill(hands, hours, from, minutes, dressing), moved: [] };
      const pending = [...movable].map((mix) => ({
        mix,
        filled: fills[mix].fill + mixes[mix].minutes,
        dress: fills[mix].dress,
      }));
      return placeFillFirst(hands, hours, from, minutes, dressing, pending);
    };
    const { place, moved } =
      bare.length === 0
        ? lay(ground)
        : prepareFresh(hands, hours, times, bare, preparations, (ready) => {
            const placed = lay(Math.max(ground, ready));
            return { start: placed.place.fill, placed };
          });
    fills[i] = place;
    for (const { mix, dress } of moved) fills[mix] = { fill: fills[mix].fill, dress };
    if (hours.hold(place.dress, dressing.minutes)) movable.add(i);
    found.set(bare.length === 0 ? ground : place.fill, place.fill);
  }
  return fills;
}

/** The first coat waits for all dressing; parts without filler are blasted for it. Writes into `hands` and `preparations`. */
export function layCoats(
  { hours, times, parts, coats }: DayTask,
  hands: Hands,
  preparations: Map<string, Preparation>,
  fills: readonly FillPlace[],
): readonly CoatPlace[] {
  if (coats === null) return [];
  const dressed = lastOf(fills.map(({ dress }) => dress + times.dress));
  const bare = parts.filter(({ filled }) => !filled).map(({ id }) => id);
  return prepareFresh(hands, hours, times, bare, preparations, (ready) => {
    const placed = placeCoats(hands, hours, Math.max(dressed, ready), coats);
    return { start: placed[0].mixes[0], placed };
  });
}

/** Without spreading: two thousand mixes are no argument list. */
export function lastOf(times: readonly Minute[]): Minute {
  return times.reduce((latest, time) => Math.max(latest, time), 0);
}
