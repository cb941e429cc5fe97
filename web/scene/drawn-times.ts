import type { Mm } from '../../geometry/units.ts';

/** Share of the wall that drawn wear may take: what is drawn deeper would come out at the back. */
const MOST_OF_WALL = 0.9;

/** How many times its true depth wear is drawn: as wanted, or as much as the wall has room for; whole steps of a tenth, never less than 1. */
export function drawnTimes(wanted: number, deepest: Mm, wall: Mm): number {
  if (deepest <= 0) return wanted;
  const most = Math.floor(((MOST_OF_WALL * wall) / deepest) * 10) / 10;
  return Math.max(1, Math.min(wanted, most));
}
