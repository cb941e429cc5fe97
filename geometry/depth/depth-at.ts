import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { nearestSample } from './chart.ts';
import { type DepthMap, SAMPLES } from './depth-map.ts';

/** The cell a place lies in, row-major index; -1 off the grid. */
export function cellAt(face: Face, u: number, v: number): number {
  const { grid } = face;
  const row = Math.floor((u - grid.u0) / grid.du);
  let column = Math.floor((v - grid.v0) / grid.dv);
  if (grid.wraps) column = ((column % grid.columns) + grid.columns) % grid.columns;
  return row >= 0 && row < grid.rows && column >= 0 && column < grid.columns
    ? row * grid.columns + column
    : -1;
}

/** Depth at a place: that of the nearest sample in a split cell, linear in u between whole cells. 0 off the face. mm. */
export function depthAt(map: DepthMap, face: Face, u: number, v: number): Mm {
  const cell = cellAt(face, u, v);
  if (cell < 0) return 0;
  const { grid } = map;
  const row = Math.floor(cell / grid.columns);
  const column = cell - row * grid.columns;
  if (map.slot[cell] >= 0)
    return map.samples[map.slot[cell] * SAMPLES + nearestSample(face, row, column, u, v)];
  const off = (u - grid.u0) / grid.du - row - 0.5;
  const beside = cell + (off < 0 ? -grid.columns : grid.columns);
  const outside = beside < 0 || beside >= map.depth.length;
  // What lies off the face is not worn, and no slope runs down to it.
  if (outside || map.slot[beside] >= 0 || (face.cover !== null && face.cover[beside] === 0))
    return map.depth[cell];
  return map.depth[cell] + Math.abs(off) * (map.depth[beside] - map.depth[cell]);
}
