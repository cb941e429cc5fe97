import { type DepthMap, SAMPLES } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { DAMAGE } from '../fill/label.ts';
import type { Face, Polynomial } from '../part/face.ts';
import type { Mm, Mm3 } from '../units.ts';
import { between } from './row-sums.ts';

/** Volumes of a face shared out two ways: by damage region, and by column for filling in order. */
export interface Tally {
  /** Per region, mm3: lost within it, and filled (0 where it is left). */
  readonly lost: Float64Array;
  readonly fill: Float64Array;
  /** Per column, mm3 of filler, and the rows it spans: first, last + 1; equal where there is none. */
  readonly columnFill: Float64Array;
  readonly rowFrom: Int32Array;
  readonly rowTo: Int32Array;
  /** Deepest filler anywhere on the face, mm. */
  readonly deepestFill: Mm;
}

export function tallyFace(face: Face, map: DepthMap, fill: FillMap): Tally {
  const { grid } = map;
  const lost = new Float64Array(fill.regions.length);
  const filled = new Float64Array(fill.regions.length);
  const columnFill = new Float64Array(grid.columns);
  const rowFrom = new Int32Array(grid.columns).fill(grid.rows);
  const rowTo = new Int32Array(grid.columns);
  let deepestFill = 0;
  for (let row = 0; row < grid.rows; row++) {
    const { volume } = face.metal(row);
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      const label = fill.label[cell];
      if (label === 0) continue;
      const region = fill.regions[label - 1];
      const share = face.cover === null ? 1 : face.cover[cell];
      lost[label - 1] += share * metalBetween(map, cell, volume, 0);
      if (region.action !== 'fill') continue;
      const amount = share * metalBetween(map, cell, volume, fill.allowance);
      if (amount === 0) continue;
      filled[label - 1] += amount;
      columnFill[column] += amount;
      if (row < rowFrom[column]) rowFrom[column] = row;
      rowTo[column] = row + 1;
    }
  }
  for (const region of fill.regions) {
    if (region.action === 'fill') deepestFill = Math.max(deepestFill, region.deepest - fill.allowance);
  }
  return { lost, fill: filled, columnFill, rowFrom, rowTo, deepestFill };
}

/** Metal of one whole cell between depth `from` and its depth, where that is damage, mm3. */
function metalBetween(map: DepthMap, cell: number, volume: Polynomial, from: Mm): Mm3 {
  const slot = map.slot[cell];
  if (slot < 0) return between(volume, from, map.depth[cell]);
  let sum = 0;
  for (let i = slot * SAMPLES; i < (slot + 1) * SAMPLES; i++) {
    if (map.samples[i] > DAMAGE) sum += between(volume, from, map.samples[i]);
  }
  return sum / SAMPLES;
}
