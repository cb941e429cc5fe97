/** One pair of hands, every order of the work: the earliest end there is. For a handful of tasks only. */
import type { Minute } from '../../../geometry/units.ts';

export interface Task {
  readonly id: string;
  readonly minutes: Minute;
  /** Starts at least and at most so long after the start of another; `most` null = any time later. */
  readonly after: { readonly id: string; readonly least: Minute; readonly most: Minute | null } | null;
}

/** The least end over all orders; infinite when no order keeps all waits. */
export function shortestEnd(tasks: readonly Task[]): Minute {
  let best = Number.POSITIVE_INFINITY;
  const order: Task[] = [];
  const extend = () => {
    if (order.length === tasks.length) {
      best = Math.min(best, endOf(order));
      return;
    }
    for (const task of tasks) {
      const { after } = task;
      if (order.includes(task) || (after && !order.some(({ id }) => id === after.id))) continue;
      order.push(task);
      extend();
      order.pop();
    }
  };
  extend();
  return best;
}

/** Earliest starts in one order: every start is pushed up until all its least and most are kept (longest paths). */
function endOf(order: readonly Task[]): Minute {
  const starts = order.map(() => 0);
  const placeOf = new Map(order.map(({ id }, i) => [id, i]));
  for (let round = 0; round <= order.length; round++) {
    let isSettled = true;
    const push = (i: number, least: Minute) => {
      if (starts[i] >= least) return;
      starts[i] = least;
      isSettled = false;
    };
    order.forEach(({ after }, i) => {
      if (i > 0) push(i, starts[i - 1] + order[i - 1].minutes);
      const other = after === null ? undefined : placeOf.get(after.id);
      if (after === null || other === undefined) return;
      push(i, starts[other] + after.least);
      if (after.most !== null) push(other, starts[i] - after.most);
    });
    if (isSettled) return starts[order.length - 1] + order[order.length - 1].minutes;
  }
  return Number.POSITIVE_INFINITY;
}
