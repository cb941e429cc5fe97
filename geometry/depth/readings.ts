import type { Readings } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { blended } from './blend.ts';
import { nearestSample } from './chart.ts';
import { cellAt } from './depth-at.ts';
import { type DepthMap, settleCell, splitCell } from './depth-map.ts';
import { heldBy, outlinePicture } from './outline-picture.ts';
import { pressImprint } from './press.ts';
import { type ReadSurface, surfaceDepth } from './read-surface.ts';
import { walkOutline } from './walk-outline.ts';

/**
 * Presses the surface that gauge readings speak for into a depth map, nowhere below 0 and only within their outline. Writes into `map`.
 * @returns false when it touches no cell of the face
 * Accuracy: the surface within 0.001 mm; at the readings themselves exact to the map's 32 bits.
 * Source: job format, "Mark"; tests/geometry/depth/readings.test.ts
 */
export function applyReadings(map: DepthMap, face: Face, mark: Readings, surface: ReadSurface): boolean {
  const { grid } = map;
  const outline = mark.within && outlineOn(face, mark.within);
  const holds = outline?.holds ?? (() => true);
  const spots = surface.spots
    .filter(({ u, v }) => holds(u, v))
    .flatMap((spot) => {
      const cell = cellAt(face, spot.u, spot.v);
      if (cell < 0 || face.cover?.[cell] === 0) return [];
      const row = Math.floor(cell / grid.columns);
      const first = splitCell(map, cell);
      const sample = first + nearestSample(face, row, cell - row * grid.columns, spot.u, spot.v);
      return [{ cell, sample, before: map.samples[sample], depth: Math.max(0, spot.depth), u: spot.u }];
    });
  let touches = false;
  pressImprint(map, face, {
    blend: mark.blend,
    peak: null,
    block: { row0: 0, row1: grid.rows - 1, column0: 0, columns: grid.columns },
    depthAt(u, v) {
      if (!holds(u, v)) return -1;
      touches = true;
      return Math.max(0, surfaceDepth(surface, grid, u, v));
    },
    reaches: (row, column) => (outline === null ? 'all' : outline.reaches(row, column)),
  });
  for (const { cell, sample, before, depth, u } of spots) {
    map.samples[sample] = blended(before, depth, mark.blend, face.wall(u));
    settleCell(map, cell);
  }
  return touches;
}

interface OutlineReach {
  holds(u: number, v: number): boolean;
  reaches(row: number, column: number): 'all' | 'none' | 'cut';
}

function outlineOn(face: Face, within: NonNullable<Readings['within']>): OutlineReach {
  const { grid } = face;
  const cut = new Set(walkOutline(face, outlinePicture(face, within)).cells);
  const holds = heldBy(face, within);
  return {
    holds,
    reaches(row, column) {
      if (cut.has(row * grid.columns + column)) return 'cut';
      return holds(grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv) ? 'all' : 'none';
    },
  };
}
