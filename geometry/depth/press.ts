/**
 * Presses a mark that is a plain function of place into a depth map. Cells the mark's edge cuts are split, so the edge lies where
 * it was drawn, and so are cells the face's own edge cuts; all others take the depth at their centre.
 */

import type { Blend } from '../job/job.ts';
import { type Face, isCutCell } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { blended } from './blend.ts';
import { type CellBlock, nearestSample } from './chart.ts';
import { cellAt } from './depth-at.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES, settleCell, splitCell } from './depth-map.ts';

/** What a mark does at a place. */
export interface Press {
  readonly blend: Blend;
  /** Depth of the mark at a place, mm; negative outside it. */
  depthAt(u: number, v: number): Mm;
}

export interface Imprint extends Press {
  readonly block: CellBlock;
  /** Whether the mark holds the whole cell, none of it, or may cut it. */
  reaches(row: number, column: number): 'all' | 'none' | 'cut';
  /** The mark's deepest place, when it is a single point: the sample nearest to it takes this depth exactly. */
  readonly peak: { readonly u: number; readonly v: number; readonly depth: Mm } | null;
}

/** Writes into `map`. Depths are clamped to the wall. Accuracy: exact at centres and samples; an edge lies true to 1/32 cell. */
export function pressImprint(map: DepthMap, face: Face, imprint: Imprint): void {
  const { grid } = map;
  const { block, blend, peak } = imprint;
  for (let row = block.row0; row <= block.row1; row++) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    for (let k = 0; k < block.columns; k++) {
      const column = (block.column0 + k) % grid.columns;
      const cell = row * grid.columns + column;
      if (face.cover !== null && face.cover[cell] === 0) continue;
      const reach = imprint.reaches(row, column);
      if (reach === 'none') continue;
      const v = grid.v0 + (column + 0.5) * grid.dv;
      const wall = face.wall(u);
      if (reach === 'cut' || map.slot[cell] >= 0 || isCutCell(face, cell)) {
        pressSamples(map, cell, row, column, imprint, wall);
      } else {
        const depth = imprint.depthAt(u, v);
        if (depth >= 0) map.depth[cell] = blended(map.depth[cell], depth, blend, wall);
      }
    }
  }
  if (peak !== null) pressPeak(map, face, imprint, peak);
}

/** Cells of one row beside each other; they may run on past the seam of a grid that wraps. */
export interface Run {
  readonly row: number;
  readonly column: number;
  readonly count: number;
}

/**
 * Presses a mark into cells it holds whole, as `pressImprint` does cell by cell: the loop a large mark spends its time in. Writes into `map`.
 * @param depth   of the mark at the centres of all of them, mm
 * @param isEven  it has that depth at every one of their samples too
 */
export function pressWhole(
  map: DepthMap,
  face: Face,
  run: Run,
  mark: Press,
  wall: Mm,
  depth: Mm,
  isEven: boolean,
): void {
  const { columns } = map.grid;
  const { slot, depth: there } = map;
  const { cover } = face;
  const { blend } = mark;
  const { row, column, count } = run;
  const first = row * columns;
  const end = first + Math.min(columns, column + count);
  for (let cell = first + column; cell < end; cell++) {
    cell = pressPlain(there, slot, cover, cell, end, depth, blend, wall);
    if (cell === end || cover?.[cell] === 0) continue;
    if (isEven) pressEvenly(map, cell, depth, blend, wall);
    else pressSamples(map, cell, row, cell - first, mark, wall);
  }
  const past = column + count - columns;
  if (past > 0) pressWhole(map, face, { row, column: 0, count: past }, mark, wall, depth, isEven);
}

/** Presses one depth into cells up to the first that is split or cut by the face's edge; returns that one. Writes into `there`. */
function pressPlain(
  there: Float32Array,
  slot: Int32Array,
  cover: Float32Array | null,
  from: number,
  end: number,
  depth: Mm,
  blend: Blend,
  wall: Mm,
): number {
  const isAdded = blend === 'add';
  const least = blend === 'deepest' ? Math.fround(Math.min(depth, wall)) : -1;
  for (let cell = from; cell < end; cell++) {
    if (slot[cell] >= 0 || (cover !== null && cover[cell] < 1)) return cell;
    if (least >= 0) {
      if (there[cell] < least) there[cell] = least;
    } else {
      const sum = isAdded ? there[cell] + depth : depth;
      there[cell] = sum < wall ? sum : wall;
    }
  }
  return end;
}

/** Presses a mark into cells its edge cuts, sample by sample. Writes into `map`. */
export function pressCut(map: DepthMap, face: Face, run: Run, mark: Press, wall: Mm): void {
  const { columns } = map.grid;
  const { row, column, count } = run;
  for (let at = column; at < column + count; at++) {
    const within = at < columns ? at : at - columns;
    const cell = row * columns + within;
    if (face.cover === null || face.cover[cell] > 0) pressSamples(map, cell, row, within, mark, wall);
  }
}

/** Whether a run has a cell that is face at all. */
export function isOnMetal({ cover, grid }: Face, { row, column, count }: Run): boolean {
  if (cover === null) return count > 0;
  for (let at = column; at < column + count; at++) {
    if (cover[row * grid.columns + (at % grid.columns)] > 0) return true;
  }
  return false;
}

/** Presses one depth into all samples of a cell, splitting it first. Writes into `map`. */
function pressEvenly(map: DepthMap, cell: number, depth: Mm, blend: Blend, wall: Mm): void {
  const isNew = map.slot[cell] < 0;
  const first = splitCell(map, cell);
  const { samples } = map;
  let isChanged = isNew;
  if (blend === 'deepest') {
    const least = Math.fround(Math.min(depth, wall));
    for (let i = first; i < first + SAMPLES; i++) {
      if (samples[i] >= least) continue;
      samples[i] = least;
      isChanged = true;
    }
  } else {
    for (let i = first; i < first + SAMPLES; i++) samples[i] = blended(samples[i], depth, blend, wall);
    isChanged = true;
  }
  // A split cell that keeps its samples keeps their mean.
  if (isChanged) settleCell(map, cell);
}

/** Presses a mark into the samples of one cell, splitting it first. Writes into `map`. */
function pressSamples(map: DepthMap, cell: number, row: number, column: number, mark: Press, wall: Mm): void {
  const { u0, du, v0, dv } = map.grid;
  const { blend } = mark;
  const first = splitCell(map, cell);
  const { samples } = map;
  for (let i = 0; i < SAMPLES; i++) {
    const depth = mark.depthAt(u0 + (row + SAMPLE_U[i]) * du, v0 + (column + SAMPLE_V[i]) * dv);
    if (depth >= 0) samples[first + i] = blended(samples[first + i], depth, blend, wall);
  }
  settleCell(map, cell);
}

/** A pointed mark is deepest between samples; the nearest one is raised to the true depth, so "deepest" is not a shade short. Writes into `map`. */
export function pressPeak(
  map: DepthMap,
  face: Face,
  mark: Press,
  peak: { u: number; v: number; depth: Mm },
): void {
  const { grid } = map;
  const cell = cellAt(face, peak.u, peak.v);
  if (cell < 0 || map.slot[cell] < 0 || (face.cover !== null && face.cover[cell] === 0)) return;
  const row = Math.floor(cell / grid.columns);
  const column = cell - row * grid.columns;
  const sample = map.slot[cell] * SAMPLES + nearestSample(face, row, column, peak.u, peak.v);
  // Only the missing part is added, so that "add" does not count the mark twice here.
  const u = grid.u0 + (row + SAMPLE_U[sample % SAMPLES]) * grid.du;
  const v = grid.v0 + (column + SAMPLE_V[sample % SAMPLES]) * grid.dv;
  const short = Math.max(0, peak.depth - Math.max(0, mark.depthAt(u, v)));
  const wall = face.wall(u);
  const there = map.samples[sample];
  map.samples[sample] =
    mark.blend === 'deepest' ? Math.min(wall, Math.max(there, peak.depth)) : Math.min(wall, there + short);
  settleCell(map, cell);
}
