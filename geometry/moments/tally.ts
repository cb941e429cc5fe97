import { type DepthMap, isEven, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { DAMAGE } from '../fill/label.ts';
import type { Face } from '../part/face.ts';
import type { Mm, Mm3 } from '../units.ts';
import { volumeBetween } from './row-sums.ts';

/** Volumes of a face shared out two ways: by damage region, and by bin for filling in order (a bin is a column, or a row where the face is worked by row). */
export interface Tally {
  /** Per region, mm3: lost within it, and filled (0 where it is left). */
  readonly lost: Float64Array;
  readonly fill: Float64Array;
  /** Per bin, mm3 of filler, and the cells it spans across: first, last + 1; first not before last where there is none. */
  readonly binFill: Float64Array;
  readonly binFrom: Int32Array;
  readonly binTo: Int32Array;
  /** Deepest filler anywhere on the face, mm. */
  readonly deepestFill: Mm;
}

export function tallyFace(face: Face, map: DepthMap, fill: FillMap): Tally {
  const { grid } = map;
  const lost = new Float64Array(fill.regions.length);
  const filled = new Float64Array(fill.regions.length);
  const byRow = face.worked === 'by-row';
  const bins = byRow ? grid.rows : grid.columns;
  const binFill = new Float64Array(bins);
  const binFrom = new Int32Array(bins).fill(byRow ? grid.columns : grid.rows);
  const binTo = new Int32Array(bins);
  let deepestFill = 0;
  for (let row = 0; row < grid.rows && fill.regions.length > 0; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      const label = fill.label[cell];
      if (label === 0) continue;
      const region = fill.regions[label - 1];
      const share = face.cover === null ? 1 : face.cover[cell];
      const all = share * cellVolume(face, map, row, column, 0);
      lost[label - 1] += all;
      if (region.action !== 'fill') continue;
      const amount = fill.allowance === 0 ? all : share * cellVolume(face, map, row, column, fill.allowance);
      if (amount === 0) continue;
      filled[label - 1] += amount;
      const [bin, across] = byRow ? [row, column] : [column, row];
      binFill[bin] += amount;
      binFrom[bin] = Math.min(binFrom[bin], across);
      binTo[bin] = Math.max(binTo[bin], across + 1);
    }
  }
  for (const region of fill.regions) {
    if (region.action === 'fill') deepestFill = Math.max(deepestFill, region.deepest - fill.allowance);
  }
  return { lost, fill: filled, binFill, binFrom, binTo, deepestFill };
}

/** Metal of one whole cell between depth `from` and its depth, where that is damage, mm3. */
function cellVolume(face: Face, map: DepthMap, row: number, column: number, from: Mm): Mm3 {
  const { grid } = face;
  const cell = row * grid.columns + column;
  const slot = face.metal(row) === null && isEven(map, cell) ? -1 : map.slot[cell];
  if (slot < 0) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    return volumeBetween(face, row, column, u, grid.v0 + (column + 0.5) * grid.dv, from, map.depth[cell]);
  }
  let sum = 0;
  for (let i = 0; i < SAMPLES; i++) {
    const depth = map.samples[slot * SAMPLES + i];
    if (depth <= DAMAGE) continue;
    const u = grid.u0 + (row + SAMPLE_U[i]) * grid.du;
    sum += volumeBetween(face, row, column, u, grid.v0 + (column + SAMPLE_V[i]) * grid.dv, from, depth);
  }
  return sum / SAMPLES;
}
