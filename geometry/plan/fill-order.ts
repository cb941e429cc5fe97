import type { TaskMix } from './day-task.ts';

/** Places in the list of mixes, in the order they are tried: by their numbers. */
export function byNumber(mixes: readonly TaskMix[]): number[] {
  return mixes.map((_, i) => i);
}

/** Part after part in turns, so that one firms up while another is filled; never before the layer beneath. */
export function inTurns(mixes: readonly TaskMix[]): number[] {
  const waiting = new Map<string, number[]>();
  mixes.forEach(({ parts }, i) => {
    const queue = waiting.get(parts[0]);
    if (queue === undefined) waiting.set(parts[0], [i]);
    else queue.push(i);
  });
  const order: number[] = [];
  const isPicked = mixes.map(() => false);
  while (order.length < mixes.length) {
    for (const queue of waiting.values()) {
      const next = queue.at(0);
      if (next === undefined || !mixes[next].on.every((below) => isPicked[below])) continue;
      queue.shift();
      isPicked[next] = true;
      order.push(next);
    }
  }
  return order;
}
