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

export interface Imprint {
  readonly block: CellBlock;
  readonly blend: Blend;
  /** Whether the mark holds the whole cell, none of it, or may cut it. */
  reaches(row: number, column: number): 'all' | 'none' | 'cut';
  /** Depth of the mark at a place, mm; negative outside it. */
  depthAt(u: number, v: number): Mm;
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

function pressSamples(
  map: DepthMap,
  cell: number,
  row: number,
  column: number,
  imprint: Imprint,
  wall: Mm,
): void {
  const { grid } = map;
  const first = splitCell(map, cell);
  for (let i = 0; i < SAMPLES; i++) {
    const u = grid.u0 + (row + SAMPLE_U[i]) * grid.du;
    const v = grid.v0 + (column + SAMPLE_V[i]) * grid.dv;
    const depth = imprint.depthAt(u, v);
    if (depth >= 0) map.samples[first + i] = blended(map.samples[first + i], depth, imprint.blend, wall);
  }
  settleCell(map, cell);
}

/** A pointed mark is deepest between samples; the nearest one is raised to the true depth, so "deepest" is not a shade short. */
function pressPeak(
  map: DepthMap,
  face: Face,
  imprint: Imprint,
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
  const short = Math.max(0, peak.depth - Math.max(0, imprint.depthAt(u, v)));
  const wall = face.wall(u);
  const there = map.samples[sample];
  map.samples[sample] =
    imprint.blend === 'deepest' ? Math.min(wall, Math.max(there, peak.depth)) : Math.min(wall, there + short);
  settleCell(map, cell);
}
