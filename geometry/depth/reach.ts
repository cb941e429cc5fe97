import type { Mm } from '../units.ts';
import { type DepthMap, SAMPLES } from './depth-map.ts';

/** The greatest depth of each tile of a map: what tells at once that nothing near a place is worn. */
export interface Reach {
  /** No depth within the box of two grid points, give or take a tile, is greater; mm. The box may lie off the map. */
  within(u0: number, v0: number, u1: number, v1: number): Mm;
}

/** Cells a side. */
const TILE = 16;

export function reachOf(map: DepthMap): Reach {
  const { rows, columns, u0: firstU, v0: firstV, du, dv, wraps } = map.grid;
  const down = Math.ceil(rows / TILE);
  const across = Math.ceil(columns / TILE);
  const most = new Float32Array(down * across);
  const note = (cell: number, depth: Mm): void => {
    const row = Math.floor(cell / columns);
    const tile = Math.floor(row / TILE) * across + Math.floor((cell - row * columns) / TILE);
    if (depth > most[tile]) most[tile] = depth;
  };
  for (let cell = 0; cell < map.depth.length; cell++) {
    if (map.depth[cell] > 0) note(cell, map.depth[cell]);
  }
  for (let i = 0; i < map.slots * SAMPLES; i++) note(map.cellOfSlot[Math.floor(i / SAMPLES)], map.samples[i]);
  return {
    within(u0, v0, u1, v1) {
      const from = Math.max(0, Math.floor((Math.min(u0, u1) - firstU) / du / TILE) - 1);
      const to = Math.min(down - 1, Math.floor((Math.max(u0, u1) - firstU) / du / TILE) + 1);
      const left = Math.floor((Math.min(v0, v1) - firstV) / dv / TILE) - 1;
      const right = Math.floor((Math.max(v0, v1) - firstV) / dv / TILE) + 1;
      let depth = 0;
      for (let i = from; i <= to; i++) {
        for (let j = left; j <= Math.min(right, left + across + 1); j++) {
          const tile = wraps ? ((j % across) + across) % across : j;
          if (tile >= 0 && tile < across && most[i * across + tile] > depth) depth = most[i * across + tile];
        }
      }
      return depth;
    },
  };
}
