/**
 * How near each cell lies to a path that is still being drawn: what a stroke and a smoothing have in common.
 * Every new piece of path only brings cells nearer, so a path taken whole and a path taken pointer move by pointer move leave the
 * same distances, bit for bit.
 */

import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { blockNear, type CellBlock, halfDiagonal, stepAlong } from './chart.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES, spreadSamples } from './depth-map.ts';

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
  /** Cells that came nearer in the last piece of path; the first `changedCount`. */
  changed: Int32Array;
  changedCount: number;
  /** Where a cell's samples begin in the two arrays below, in units of SAMPLES; -1 = judged by its centre. */
  readonly slot: Int32Array;
  slots: number;
  sampleNearest: Float32Array;
  sampleBefore: Float32Array;
  /** Per slot: 1 when the map's cell was split before the path came. */
  wasSplit: Uint8Array;
  /** Last point of the path, (u, v). */
  last: readonly [number, number] | null;
  readonly edge: 'hard' | 'soft' | 'whole-cells';
  readonly diagonal: Mm;
  /** A cell whose centre is nearer than this lies whole under a hard edge, mm2. */
  readonly covered: number;
}

/** Arrays of a path for one map, kept for the next path: clearing the touched cells costs less than new arrays. */
const spare = new WeakMap<DepthMap, BrushPath>();

/** Starts a path on a map. `whole-cells` never judges samples (smoothing); `hard` and `soft` split the cells they must. */
export function beginPath(map: DepthMap, face: Face, radius: Mm, edge: BrushPath['edge']): BrushPath {
  const old = spare.get(map);
  spare.delete(map);
  const cells = map.grid.rows * map.grid.columns;
  const diagonal = halfDiagonal(face, map.grid.rows - 1);
  return {
    map,
    face,
    radius,
    edge,
    nearest: old?.nearest ?? new Float32Array(cells).fill(Infinity),
    before: old?.before ?? new Float32Array(cells),
    touched: old?.touched ?? new Int32Array(1024),
    touchedCount: 0,
    changed: old?.changed ?? new Int32Array(1024),
    changedCount: 0,
    slot: old?.slot ?? new Int32Array(cells).fill(-1),
    slots: 0,
    sampleNearest: old?.sampleNearest ?? new Float32Array(64 * SAMPLES),
    sampleBefore: old?.sampleBefore ?? new Float32Array(64 * SAMPLES),
    wasSplit: old?.wasSplit ?? new Uint8Array(64),
    last: null,
    diagonal,
    covered: Math.max(0, radius - diagonal) ** 2,
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
 * Draws the path on to (u, v) and lists in `changed` the cells it came nearer to. Writes into `path`.
 * @param coarse  judge every cell by its samples: the brush is only a few cells wide
 * @returns the block it looked at, or null when it misses the face
 */
export function drawTo(path: BrushPath, u: number, v: number, coarse: boolean): CellBlock | null {
  const { face, map, nearest, radius, diagonal, covered } = path;
  const { columns } = map.grid;
  const { cover } = face;
  const starts = path.last === null;
  const [ua, va] = path.last ?? [u, v];
  path.last = [u, v];
  path.changedCount = 0;
  const reach = radius + diagonal;
  const found = blockNear(face, ua, va, u, v, reach);
  if (found === null) return null;
  const block = cutOpposite(face, found, va);
  if (path.changed.length < (block.row1 - block.row0 + 1) * block.columns) {
    path.changed = new Int32Array(2 * (block.row1 - block.row0 + 1) * block.columns);
  }
  const { across, up, along, side, ax, ay, dx, dy, inverse } = laidOut(face, block, ua, va, u, v);
  const reach2 = reach * reach;
  // What lies behind the point the path had come to is nearer to the path already.
  const behind = starts ? -Infinity : -diagonal * Math.hypot(dx, dy);
  const bySamples = path.edge !== 'whole-cells';
  const hard = path.edge === 'hard';
  const mapSlot = map.slot;
  // (sqrt(known) + 2 diagonals)^2 is at most this line, since sqrt(k) <= k / 2r + r / 2.
  const further = 1 + (2 * diagonal) / radius;
  const beyond = 2 * diagonal * radius + 4 * diagonal * diagonal;
  for (let row = block.row0; row <= block.row1; row++) {
    const a = across[row - block.row0];
    const b = up[row - block.row0];
    const start = row * columns;
    for (let k = 0; k < block.columns; k++) {
      const x = a * along[k] - ax;
      const y = b * side[k] - ay;
      const onward = x * dx + y * dy;
      if (onward <= behind) continue;
      let share = onward * inverse;
      share = share < 0 ? 0 : Math.min(share, 1);
      const ex = share * dx - x;
      const ey = share * dy - y;
      const square = ex * ex + ey * ey;
      if (square >= reach2) continue;
      const column = block.column0 + k;
      const cell = start + (column < columns ? column : column - columns);
      const known = nearest[cell];
      // Further off than the path has been by a whole cell (or, here, surely so): not even a sample can come nearer.
      if (square >= known * further + beyond) continue;
      // Whole under a hard edge: there is nothing left to press.
      if (hard && known < covered) continue;
      const held = cover === null ? 1 : cover[cell];
      if (held === 0) continue;
      // A cell the path has covered whole stays whole; one it cuts, and the one it starts in, are judged by their samples.
      const fine =
        bySamples &&
        (coarse ||
          mapSlot[cell] >= 0 ||
          held < 1 ||
          (hard && square >= covered) ||
          (starts && square < diagonal * diagonal));
      if (fine) {
        touch(path, cell);
        if (hard && square < covered) sampleSlot(path, cell);
        else if (
          !bringSamplesNearer(path, cell, a, b, along[k], side[k], ax, ay, dx, dy, inverse) &&
          square >= known
        )
          continue;
      } else {
        if (square >= known) continue;
        if (known === Infinity) touch(path, cell);
      }
      if (square < known) nearest[cell] = square;
      path.changed[path.changedCount++] = cell;
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

/** A block that runs the whole turn, begun opposite the segment, so that every cell is measured the short way round. */
function cutOpposite(face: Face, block: CellBlock, v: number): CellBlock {
  const { grid } = face;
  if (!grid.wraps || block.columns < grid.columns) return block;
  const opposite = Math.floor((v - grid.v0) / grid.dv) + Math.ceil(grid.columns / 2);
  return { ...block, column0: ((opposite % grid.columns) + grid.columns) % grid.columns };
}

interface LaidOut {
  /** Places of the block's cells: x = across[row] along[column], y = up[row] side[column]. */
  readonly across: Float64Array;
  readonly up: Float64Array;
  readonly along: Float64Array;
  readonly side: Float64Array;
  /** Where the segment begins, how far it goes, and 1 / its length squared (0 for a point). */
  readonly ax: Mm;
  readonly ay: Mm;
  readonly dx: Mm;
  readonly dy: Mm;
  readonly inverse: number;
}

/**
 * Lays a block and a segment out in one chart, along the block's first column, where the tables of the columns begin.
 * A block lies round its segment, so a cone or a bore is cut open opposite the segment and distances run the short way.
 */
function laidOut(face: Face, block: CellBlock, ua: number, va: number, ub: number, vb: number): LaidOut {
  const { grid, picture } = face;
  const rows = block.row1 - block.row0 + 1;
  const polar = picture.kind === 'polar';
  const slant = polar ? picture.slant : 1;
  const across = new Float64Array(rows);
  const up = new Float64Array(rows);
  for (let i = 0; i < rows; i++) {
    const u = grid.u0 + (block.row0 + i + 0.5) * grid.du;
    across[i] = polar ? u / slant : 1;
    up[i] = polar ? u / slant : u;
  }
  const turn = grid.columns * grid.dv;
  const v0 = grid.v0 + (block.column0 + 0.5) * grid.dv;
  // Up to half a cell left of the first column's middle, and less than a turn to the right of that.
  const start = grid.wraps ? va - v0 - turn * Math.floor((va - v0) / turn + 0.5 / grid.columns) : va - v0;
  const end = start + stepAlong(face, va, vb);
  const scale = polar ? slant : picture.columnScale;
  const place = (u: number, step: number): readonly [Mm, Mm] =>
    polar ? [(u / slant) * Math.cos(step * scale), (u / slant) * Math.sin(step * scale)] : [step * scale, u];
  const [ax, ay] = place(ua, start);
  const [bx, by] = place(ub, end);
  const { along, side } = tablesOf(face);
  const dx = bx - ax;
  const dy = by - ay;
  const square = dx * dx + dy * dy;
  return { across, up, along, side, ax, ay, dx, dy, inverse: square > 0 ? 1 / square : 0 };
}

/** Brings the samples of one cell nearer to a segment; true when any came nearer. They lie about the cell's centre (a c, b s). */
function bringSamplesNearer(
  path: BrushPath,
  cell: number,
  a: number,
  b: number,
  c: number,
  s: number,
  ax: Mm,
  ay: Mm,
  dx: Mm,
  dy: Mm,
  inverse: number,
): boolean {
  const first = sampleSlot(path, cell);
  const { sampleNearest } = path;
  const { offsets } = tablesOf(path.face);
  const polar = path.face.picture.kind === 'polar';
  let nearer = false;
  for (let i = 0; i < SAMPLES; i++) {
    const du = offsets[3 * i];
    const p = offsets[3 * i + 1];
    const q = offsets[3 * i + 2];
    const x = (polar ? (a + du) * (c * p - s * q) : c + p) - ax;
    const y = (polar ? (b + du) * (s * p + c * q) : b + du) - ay;
    let share = (x * dx + y * dy) * inverse;
    share = share < 0 ? 0 : Math.min(share, 1);
    const ex = share * dx - x;
    const ey = share * dy - y;
    const square = ex * ex + ey * ey;
    if (square < sampleNearest[first + i]) {
      sampleNearest[first + i] = square;
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
    const wasSplit = new Uint8Array(path.wasSplit.length * 2);
    wasSplit.set(path.wasSplit);
    path.wasSplit = wasSplit;
  }
  path.sampleNearest.fill(Infinity, first, first + SAMPLES);
  const there = path.map.slot[cell] * SAMPLES;
  if (there >= 0) path.sampleBefore.set(path.map.samples.subarray(there, there + SAMPLES), first);
  else spreadSamples(path.sampleBefore, first, path.map.grid, cell, (beside) => depthBefore(path, beside));
  path.wasSplit[path.slots] = there >= 0 ? 1 : 0;
  path.slot[cell] = path.slots;
  path.slots += 1;
  return first;
}

/** Depth of a cell when the path began. */
function depthBefore(path: BrushPath, cell: number): Mm {
  const isTouched = path.nearest[cell] !== Infinity || path.slot[cell] >= 0;
  return isTouched ? path.before[cell] : path.map.depth[cell];
}

interface Tables {
  /** Per column, how far it lies from the first: cosine and sine of the angle (polar), or mm and 1. */
  readonly along: Float64Array;
  readonly side: Float64Array;
  /** Per sample: step along u in mm, then cosine and sine of its step along v (polar), or that step in mm and 0. */
  readonly offsets: Float64Array;
}

const tablesByFace = new WeakMap<Face, Tables>();

function tablesOf(face: Face): Tables {
  const known = tablesByFace.get(face);
  if (known) return known;
  const { grid, picture } = face;
  const polar = picture.kind === 'polar';
  const scale = polar ? picture.slant : picture.columnScale;
  const along = new Float64Array(grid.columns);
  const side = new Float64Array(grid.columns);
  for (let k = 0; k < grid.columns; k++) {
    along[k] = polar ? Math.cos(k * grid.dv * scale) : k * grid.dv * scale;
    side[k] = polar ? Math.sin(k * grid.dv * scale) : 1;
  }
  const offsets = new Float64Array(3 * SAMPLES);
  for (let i = 0; i < SAMPLES; i++) {
    const du = (SAMPLE_U[i] - 0.5) * grid.du;
    const dv = (SAMPLE_V[i] - 0.5) * grid.dv * scale;
    offsets[3 * i] = polar ? du / picture.slant : du;
    offsets[3 * i + 1] = polar ? Math.cos(dv) : dv;
    offsets[3 * i + 2] = polar ? Math.sin(dv) : 0;
  }
  const made = { along, side, offsets };
  tablesByFace.set(face, made);
  return made;
}
