/**
 * How deep a face is worn, cell by cell. A cell is normally one value. Where the edge of a mark cuts through a cell the cell is
 * split into SAMPLES points that each keep their own depth, so an edge lies where it was drawn and not on a cell border.
 */
import type { Grid } from '../part/face.ts';

/** Points a split cell is made of. 32 points on a lattice place a straight edge within 1/32 of a cell. */
export const SAMPLES = 32;

/** Step of the lattice: of all odd steps the one whose nearest points lie furthest apart. */
const LATTICE_STEP = 7;

/** Sample offsets inside a cell, shares of the cell along u and v, 0..1: a rank-1 lattice, even along both directions at once. */
export const SAMPLE_U: Float64Array = Float64Array.from({ length: SAMPLES }, (_, i) => (i + 0.5) / SAMPLES);
export const SAMPLE_V: Float64Array = Float64Array.from(
  { length: SAMPLES },
  (_, i) => (((i * LATTICE_STEP) % SAMPLES) + 0.5) / SAMPLES,
);

export interface DepthMap {
  readonly grid: Grid;
  /** mm into the metal, 0 = as new; rows x columns, row-major; the mean of its samples where a cell is split. */
  readonly depth: Float32Array;
  /** Where the samples of a split cell begin, in units of SAMPLES; -1 = not split. */
  readonly slot: Int32Array;
  /** SAMPLES depths a slot. Grows; only the first `slots * SAMPLES` count. */
  samples: Float32Array;
  /** The cell of each slot. Grows with the samples. */
  cellOfSlot: Int32Array;
  slots: number;
}

export function createDepthMap(grid: Grid): DepthMap {
  const cells = grid.rows * grid.columns;
  return {
    grid,
    depth: new Float32Array(cells),
    slot: new Int32Array(cells).fill(-1),
    samples: new Float32Array(64 * SAMPLES),
    cellOfSlot: new Int32Array(64),
    slots: 0,
  };
}

/** Splits a cell (no-op when it is split). Writes into `map`; returns the index of its first sample. */
export function splitCell(map: DepthMap, cell: number): number {
  const slot = map.slot[cell];
  if (slot >= 0) return slot * SAMPLES;
  const first = map.slots * SAMPLES;
  if (first + SAMPLES > map.samples.length) {
    const grown = new Float32Array(map.samples.length * 2);
    grown.set(map.samples);
    map.samples = grown;
    const cells = new Int32Array(map.cellOfSlot.length * 2);
    cells.set(map.cellOfSlot);
    map.cellOfSlot = cells;
  }
  map.samples.fill(map.depth[cell], first, first + SAMPLES);
  map.slot[cell] = map.slots;
  map.cellOfSlot[map.slots] = cell;
  map.slots += 1;
  return first;
}

/** Sets a split cell's depth to the mean of its samples. Writes into `map`. */
export function settleCell(map: DepthMap, cell: number): void {
  const first = map.slot[cell] * SAMPLES;
  let sum = 0;
  for (let i = first; i < first + SAMPLES; i++) sum += map.samples[i];
  map.depth[cell] = sum / SAMPLES;
}

/** Makes a split cell whole again, at its mean depth; the last slot takes its place, so slots stay dense. Writes into `map`. */
export function mergeCell(map: DepthMap, cell: number): void {
  const slot = map.slot[cell];
  const last = map.slots - 1;
  if (slot !== last) {
    map.samples.copyWithin(slot * SAMPLES, last * SAMPLES, (last + 1) * SAMPLES);
    map.cellOfSlot[slot] = map.cellOfSlot[last];
    map.slot[map.cellOfSlot[slot]] = slot;
  }
  map.slot[cell] = -1;
  map.slots = last;
}
