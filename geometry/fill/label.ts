/**
 * Finds the damage regions of a face: patches of cells with metal gone that touch along a side, across the 0/360 line too.
 */
import { type DepthMap, SAMPLES } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';

/** No deeper than this is not damage, mm, rounded as a map's depths are. Source: geometry definitions, "What is filled". */
export const DAMAGE: Mm = Math.fround(0.05);

export interface Labels {
  /** 0 = sound, else 1 + the index of the region; rows x columns. */
  readonly label: Int32Array;
  readonly count: number;
}

/** Accuracy: two regions closer than one cell count as one. Cost: one pass and a walk over the damaged cells. */
export function labelRegions(map: DepthMap, face: Face): Labels {
  const { grid } = map;
  const cells = grid.rows * grid.columns;
  const label = new Int32Array(cells);
  const queue = new Int32Array(cells);
  let count = 0;
  for (let start = 0; start < cells; start++) {
    if (label[start] !== 0 || !isDamaged(map, face, start)) continue;
    count += 1;
    label[start] = count;
    queue[0] = start;
    let end = 1;
    for (let at = 0; at < end; at++) {
      const cell = queue[at];
      const column = cell % grid.columns;
      const left = column > 0 ? cell - 1 : grid.wraps ? cell + grid.columns - 1 : -1;
      const right = column < grid.columns - 1 ? cell + 1 : grid.wraps ? cell - grid.columns + 1 : -1;
      for (const beside of [left, right, cell - grid.columns, cell + grid.columns]) {
        if (beside < 0 || beside >= cells || label[beside] !== 0 || !isDamaged(map, face, beside)) continue;
        label[beside] = count;
        queue[end++] = beside;
      }
    }
  }
  return { label, count };
}

function isDamaged(map: DepthMap, face: Face, cell: number): boolean {
  if (face.cover !== null && face.cover[cell] === 0) return false;
  const slot = map.slot[cell];
  if (slot < 0) return map.depth[cell] > DAMAGE;
  for (let i = slot * SAMPLES; i < (slot + 1) * SAMPLES; i++) {
    if (map.samples[i] > DAMAGE) return true;
  }
  return false;
}
