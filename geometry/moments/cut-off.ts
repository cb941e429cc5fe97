import { cellAt } from '../depth/depth-at.ts';
import { heldBy } from '../depth/outline-picture.ts';
import type { ReadSurface } from '../depth/read-surface.ts';
import type { Readings } from '../job/job.ts';
import type { Mm3, Mm4 } from '../units.ts';
import type { ReadFace } from './read-weights.ts';

/** What lies between sound metal and a surface that swings below it, and its first moments about the shaft. */
export interface CutOff {
  readonly volume: Mm3;
  readonly x: Mm4;
  readonly y: Mm4;
}

/**
 * The metal that a surface of readings would have to stand proud where it is cut off at 0. Where it swings below sound metal it swings
 * above it as well, and only the one half is kept: by about this much a volume may be too great.
 * Accuracy: midpoints of the surface's nodes, which stand close beside the length over which depths are alike.
 */
export function cutOff(faces: readonly ReadFace[], mark: Readings, surface: ReadSurface): CutOff {
  const { step, rows, columns, depth } = surface;
  const sum = { volume: 0, x: 0, y: 0 };
  for (const { face, map } of faces) {
    const { grid } = face;
    const isWithin = mark.within === null ? () => true : heldBy(face, mark.within);
    for (let i = 1; i < rows; i++) {
      const u = grid.u0 + (i - 1) * step * grid.du;
      for (let j = 1; j < columns; j++) {
        const below = -depth[i * columns + j];
        // The nodes past the end of a turn are those of its start.
        if (below <= 0 || (j - 1) * step >= grid.columns) continue;
        const v = grid.v0 + (j - 1) * step * grid.dv;
        const cell = cellAt(face, u, v);
        if (cell < 0 || map.depth[cell] > 0 || !face.holds(u, v) || !isWithin(u, v)) continue;
        const row = Math.floor(cell / grid.columns);
        const volume = below * step * step * face.cellArea(row, cell - row * grid.columns);
        const [x, y] = face.position(u, v, 0);
        sum.volume += volume;
        sum.x += volume * x;
        sum.y += volume * y;
      }
    }
  }
  return sum;
}
