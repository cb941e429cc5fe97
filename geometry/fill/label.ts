/**
 * Finds the damage regions of a face: patches of cells with metal gone that touch along a side, across the 0/360 line too.
 */
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import { type Face, isOnFace } from '../part/face.ts';
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
  const { rows, columns, wraps } = map.grid;
  const cells = rows * columns;
  const damaged = damagedCells(map, face);
  const label = new Int32Array(cells);
  let queue: Int32Array = new Int32Array(0);
  let count = 0;
  let end = 0;
  const meet = (cell: number): void => {
    if (damaged[cell] === 0 || label[cell] !== 0) return;
    label[cell] = count;
    queue[end++] = cell;
  };
  for (let start = 0; start < cells; start++) {
    if (damaged[start] === 0 || label[start] !== 0) continue;
    if (queue.length === 0) queue = new Int32Array(cells);
    count += 1;
    end = 0;
    meet(start);
    for (let at = 0; at < end; at++) {
      const cell = queue[at];
      const column = cell % columns;
      if (column > 0) meet(cell - 1);
      else if (wraps) meet(cell + columns - 1);
      if (column < columns - 1) meet(cell + 1);
      else if (wraps) meet(cell - columns + 1);
      if (cell >= columns) meet(cell - columns);
      if (cell < cells - columns) meet(cell + columns);
    }
  }
  return { label, count };
}

/** 1 where any of a cell is damaged. */
function damagedCells(map: DepthMap, face: Face): Uint8Array {
  const damaged = new Uint8Array(map.depth.length);
  for (let cell = 0; cell < damaged.length; cell++) {
    if (map.depth[cell] > 0 && isDamaged(map, face, cell)) damaged[cell] = 1;
  }
  return damaged;
}

function isDamaged(map: DepthMap, face: Face, cell: number): boolean {
  if (face.cover !== null && face.cover[cell] === 0) return false;
  const slot = map.slot[cell];
  if (slot < 0) return map.depth[cell] > DAMAGE;
  const row = Math.floor(cell / map.grid.columns);
  const column = cell - row * map.grid.columns;
  for (let i = 0; i < SAMPLES; i++) {
    if (map.samples[slot * SAMPLES + i] <= DAMAGE) continue;
    if (isOnFace(face, cell, row + SAMPLE_U[i], column + SAMPLE_V[i])) return true;
  }
  return false;
}
