/**
 * How near each cell lies to a path that is still being drawn: what a stroke and a smoothing have in common.
 * Every new piece of path only brings cells nearer, so a path taken whole and a path taken pointer move by pointer move leave the
 * same distances, bit for bit.
 */

import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { blockNear, type CellBlock, chartAt, halfDiagonal, squareToSegment, stepAlong } from './chart.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from './depth-map.ts';

export interface BrushPath {
  readonly map: DepthMap;
  readonly face: Face;
  readonly radius: Mm;
  /** Squared distance of each cell's centre from the path, mm2; Infinity where it has not come near. */
  readonly nearest: Float32Array;
  /** Depth of each touched cell when the path began. */
  readonly before: Float32Array;
  /** Cells touched so far, in the order they were met; the first `touchedCount`. */
  touched: Int32Array;
  touchedCount: number;
  /** Where a cell's samples begin in the two arrays below, in units of SAMPLES; -1 = judged by its centre. */
  readonly slot: Int32Array;
  slots: number;
  sampleNearest: Float32Array;
  sampleBefore: Float32Array;
  /** Last point of the path, (u, v). */
  last: readonly [number, number] | null;
  readonly edge: 'hard' | 'soft' | 'whole-cells';
  readonly diagonal: Mm;
}

/** Arrays of a path for one map, kept for the next path: clearing the touched cells costs less than new arrays. */
const spare = new WeakMap<DepthMap, BrushPath>();

/** Starts a path on a map. `whole-cells` never judges samples (smoothing); `hard` and `soft` split the cells they must. */
export function beginPath(map: DepthMap, face: Face, radius: Mm, edge: BrushPath['edge']): BrushPath {
  const old = spare.get(map);
  spare.delete(map);
  const cells = map.grid.rows * map.grid.columns;
  return {
    map,
    face,
    radius,
    edge,
    nearest: old?.nearest ?? new Float32Array(cells).fill(Infinity),
    before: old?.before ?? new Float32Array(cells),
    touched: old?.touched ?? new Int32Array(1024),
    touchedCount: 0,
    slot: old?.slot ?? new Int32Array(cells).fill(-1),
    slots: 0,
    sampleNearest: old?.sampleNearest ?? new Float32Array(64 * SAMPLES),
    sampleBefore: old?.sampleBefore ?? new Float32Array(64 * SAMPLES),
    last: null,
    diagonal: halfDiagonal(face, map.grid.rows - 1),
  };
}

/** Ends a path: hands its arrays, wiped, to the next path on the same map. */
export function endPath(path: BrushPath): void {
  for (let i = 0; i < path.touchedCount; i++) {
    path.nearest[path.touched[i]] = Infinity;
    path.slot[path.touched[i]] = -1;
  }
  spare.set(path.map, path);
}

/**
 * Draws the path on to (u, v) and calls `settle` for every cell it came nearer to, after its distances are in. Writes into `path`.
 * @param coarse  judge every cell by its samples: the brush is only a few cells wide
 * @returns the block it looked at, or null when it misses the face
 */
export function drawTo(
  path: BrushPath,
  u: number,
  v: number,
  coarse: boolean,
  settle: (cell: number, row: number, column: number) => void,
): CellBlock | null {
  const { face, map, nearest, radius, diagonal } = path;
  const { grid } = map;
  const starts = path.last === null;
  const covered = Math.max(0, radius - diagonal) ** 2;
  const [ua, va] = path.last ?? [u, v];
  const step = stepAlong(face, va, v);
  path.last = [u, v];
  const reach = radius + diagonal;
  const block = blockNear(face, ua, va, u, va + step, reach);
  if (block === null) return null;
  const chart = chartAt(face, va);
  const [ax, ay] = chart.place(ua, va);
  const [bx, by] = chart.place(u, va + step);
  const { across, up, along, side } = axes(face, block, va);
  const bySamples = path.edge !== 'whole-cells';
  for (let row = block.row0; row <= block.row1; row++) {
    const a = across[row - block.row0];
    const b = up[row - block.row0];
    for (let k = 0; k < block.columns; k++) {
      const square = squareToSegment(a * along[k], b * side[k], ax, ay, bx, by);
      if (square >= reach * reach) continue;
      const column: number = (block.column0 + k) % grid.columns;
      const cell = row * grid.columns + column;
      if (face.cover !== null && face.cover[cell] === 0) continue;
      touch(path, cell);
      const distance = Math.sqrt(square);
      // A cell the path has covered whole stays whole; one it cuts, and the one it starts in, are judged by their samples.
      const cut = path.edge === 'hard' && Math.abs(distance - radius) < diagonal && nearest[cell] >= covered;
      const fine =
        bySamples &&
        (path.slot[cell] >= 0 || map.slot[cell] >= 0 || coarse || cut || (starts && distance < diagonal));
      let nearer = false;
      if (fine) nearer = bringSamplesNearer(path, cell, a, b, along[k], side[k], ax, ay, bx, by);
      if (square < nearest[cell]) {
        nearest[cell] = square;
        nearer = true;
      }
      if (nearer) settle(cell, row, column);
    }
  }
  return block;
}

/** Notes a cell's depth the first time a path touches it. */
function touch(path: BrushPath, cell: number): void {
  if (path.nearest[cell] !== Infinity || path.slot[cell] >= 0) return;
  if (path.touchedCount === path.touched.length) {
    const grown = new Int32Array(path.touched.length * 2);
    grown.set(path.touched);
    path.touched = grown;
  }
  path.touched[path.touchedCount++] = cell;
  path.before[cell] = path.map.depth[cell];
}

/** Chart places of a block's rows and columns: x = across[row] along[column], y = up[row] side[column]. */
function axes(face: Face, block: CellBlock, v0: number) {
  const { grid, picture } = face;
  const rows = block.row1 - block.row0 + 1;
  const across = new Float64Array(rows);
  const up = new Float64Array(rows);
  const along = new Float64Array(block.columns);
  const side = new Float64Array(block.columns);
  const polar = picture.kind === 'polar';
  for (let i = 0; i < rows; i++) {
    const u = grid.u0 + (block.row0 + i + 0.5) * grid.du;
    across[i] = polar ? u / picture.slant : 1;
    up[i] = polar ? u / picture.slant : u;
  }
  for (let k = 0; k < block.columns; k++) {
    const step = stepAlong(face, v0, grid.v0 + (((block.column0 + k) % grid.columns) + 0.5) * grid.dv);
    along[k] = polar ? Math.cos(step * picture.slant) : step * picture.columnScale;
    side[k] = polar ? Math.sin(step * picture.slant) : 1;
  }
  return { across, up, along, side };
}

/** Brings the samples of one cell nearer to a segment; true when any came nearer. Samples lie about the centre at (a c, b s). */
function bringSamplesNearer(
  path: BrushPath,
  cell: number,
  a: number,
  b: number,
  c: number,
  s: number,
  ax: Mm,
  ay: Mm,
  bx: Mm,
  by: Mm,
): boolean {
  const first = sampleSlot(path, cell);
  const { offsets } = offsetsOf(path.face);
  const polar = path.face.picture.kind === 'polar';
  let nearer = false;
  for (let i = 0; i < SAMPLES; i++) {
    const du = offsets[3 * i];
    const p = offsets[3 * i + 1];
    const q = offsets[3 * i + 2];
    const x = polar ? (a + du) * (c * p - s * q) : c + p;
    const y = polar ? (b + du) * (s * p + c * q) : b + du;
    const square = squareToSegment(x, y, ax, ay, bx, by);
    if (square < path.sampleNearest[first + i]) {
      path.sampleNearest[first + i] = square;
      nearer = true;
    }
  }
  return nearer;
}

/** First sample of a cell in the path's own arrays; made on first use from the map's samples or its one depth. Writes into `path`. */
export function sampleSlot(path: BrushPath, cell: number): number {
  if (path.slot[cell] >= 0) return path.slot[cell] * SAMPLES;
  const first = path.slots * SAMPLES;
  if (first + SAMPLES > path.sampleNearest.length) {
    const nearest = new Float32Array(path.sampleNearest.length * 2);
    nearest.set(path.sampleNearest);
    path.sampleNearest = nearest;
    const before = new Float32Array(path.sampleBefore.length * 2);
    before.set(path.sampleBefore);
    path.sampleBefore = before;
  }
  path.sampleNearest.fill(Infinity, first, first + SAMPLES);
  const there = path.map.slot[cell] * SAMPLES;
  if (there >= 0) path.sampleBefore.set(path.map.samples.subarray(there, there + SAMPLES), first);
  else path.sampleBefore.fill(path.before[cell], first, first + SAMPLES);
  path.slot[cell] = path.slots;
  path.slots += 1;
  return first;
}

const offsetsByFace = new WeakMap<Face, { offsets: Float64Array }>();

/** Per sample: step along u in mm, then cos and sin of its step along v (polar) or that step in mm and 0. */
function offsetsOf(face: Face): { offsets: Float64Array } {
  const known = offsetsByFace.get(face);
  if (known) return known;
  const { grid, picture } = face;
  const offsets = new Float64Array(3 * SAMPLES);
  for (let i = 0; i < SAMPLES; i++) {
    const du = (SAMPLE_U[i] - 0.5) * grid.du;
    const dv = (SAMPLE_V[i] - 0.5) * grid.dv;
    offsets[3 * i] = picture.kind === 'polar' ? du / picture.slant : du;
    offsets[3 * i + 1] = picture.kind === 'polar' ? Math.cos(dv * picture.slant) : dv * picture.columnScale;
    offsets[3 * i + 2] = picture.kind === 'polar' ? Math.sin(dv * picture.slant) : 0;
  }
  const made = { offsets };
  offsetsByFace.set(face, made);
  return made;
}
