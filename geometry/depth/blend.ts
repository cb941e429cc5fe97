import type { Blend } from '../job/job.ts';
import type { Mm } from '../units.ts';

/** How a mark's depth meets what is there; never deeper than the wall. mm. Source: job format, "Mark". */
export function blended(there: Mm, mark: Mm, blend: Blend, wall: Mm): Mm {
  const depth = blend === 'deepest' ? Math.max(there, mark) : blend === 'add' ? there + mark : mark;
  return depth < wall ? depth : wall;
}
