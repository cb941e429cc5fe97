/**
 * How deep a face is worn, cell by cell. A cell is normally one value. Where the edge of a mark cuts through a cell the cell is
 * split into SAMPLES points that each keep their own depth, so an edge lies where it was drawn and not on a cell border.
 */
import type { Grid } from '../part/face.ts';
import type { Mm } from '../units.ts';

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

/** The greatest depth anywhere on the map, mm; 0 where nothing is worn. */
export function deepestOf({ depth, samples, slots }: DepthMap): Mm {
  let most = 0;
  for (let cell = 0; cell < depth.length; cell++) if (depth[cell] > most) most = depth[cell];
  for (let i = 0; i < slots * SAMPLES; i++) if (samples[i] > most) most = samples[i];
  return most;
}

/** The least and the greatest depth within a cell, mm; both its depth where it is not split. */
export function depthsWithin(
  { depth, slot, samples }: DepthMap,
  cell: number,
): readonly [least: Mm, most: Mm] {
  if (slot[cell] < 0) return [depth[cell], depth[cell]];
  let least = Infinity;
  let most = 0;
  for (let i = slot[cell] * SAMPLES; i < (slot[cell] + 1) * SAMPLES; i++) {
    if (samples[i] < least) least = samples[i];
    if (samples[i] > most) most = samples[i];
  }
  return [least, most];
}

/** Samples that differ by less than this share of the deepest may stand for one depth where the law of depth is nearly straight. */
const EVEN = 0.1;

/** True where a cell is whole, or split into samples of much the same depth. */
export function isEven(map: DepthMap, cell: number): boolean {
  if (map.slot[cell] < 0) return true;
  const [least, most] = depthsWithin(map, cell);
  return most - least <= EVEN * most;
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
  spreadSamples(map.samples, first, map.grid, cell, (beside) => map.depth[beside]);
  map.slot[cell] = map.slots;
  map.cellOfSlot[map.slots] = cell;
  map.slots += 1;
  return first;
}

/**
 * Fills the samples of a cell that was whole: its depth, and the slope of its neighbours where both sides slope alike (the lesser
 * of the two, so no sample lies beyond a neighbour). Writes into `samples`; their mean is the cell's depth.
 */
export function spreadSamples(
  samples: Float32Array,
  first: number,
  { rows, columns, wraps }: Grid,
  cell: number,
  depthOf: (cell: number) => number,
): void {
  const row = Math.floor(cell / columns);
  const column = cell - row * columns;
  const depth = depthOf(cell);
  const left = column > 0 ? cell - 1 : wraps ? cell + columns - 1 : cell;
  const right = column < columns - 1 ? cell + 1 : wraps ? cell - columns + 1 : cell;
  const alongV = lesser(depth - depthOf(left), depthOf(right) - depth);
  const alongU =
    row > 0 && row < rows - 1 ? lesser(depth - depthOf(cell - columns), depthOf(cell + columns) - depth) : 0;
  for (let i = 0; i < SAMPLES; i++) {
    samples[first + i] = depth + alongU * (SAMPLE_U[i] - 0.5) + alongV * (SAMPLE_V[i] - 0.5);
  }
}

/** The one nearer to 0 of two numbers of one sign, else 0. */
function lesser(a: number, b: number): number {
  if (a * b <= 0) return 0;
  return Math.abs(a) < Math.abs(b) ? a : b;
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
