import type { Mm } from '../units.ts';
import type { Grid } from './face.ts';

/** About this many cells a face: replaying a job takes tens of milliseconds and volumes hold to 0.02 %. */
const CELLS = 400_000;
/** Finer cells than this say nothing a depth gauge could. */
const FINEST_CELL: Mm = 0.25;
/** More cells than this would not fit a tablet's memory. */
const MOST_CELLS = 16_000_000;

export interface GridExtent {
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
  /** mm along v for one unit of v, at the longest row: the outer radius for an angle, 1 for a length. */
  readonly vScale: Mm;
  readonly wraps: boolean;
}

/**
 * The grid of a face: square cells of about `cell` mm (along the longest row), an exact number of them each way.
 * @param cell  mm; null chooses it from the size of the face, 0.25 mm or more
 * Throws RangeError when the face would take more than 16 million cells.
 */
export function faceGrid(extent: GridExtent, cell: Mm | null): Grid {
  const { u0, u1, v0, v1, vScale, wraps } = extent;
  const height = u1 - u0;
  const length = (v1 - v0) * vScale;
  const size = cell ?? Math.max(FINEST_CELL, Math.sqrt((height * length) / CELLS));
  const rows = Math.max(1, Math.round(height / size));
  const columns = Math.max(wraps ? 8 : 1, Math.round(length / size));
  if (rows * columns > MOST_CELLS) {
    const least = Math.sqrt((height * length) / MOST_CELLS);
    throw new RangeError(
      `cell: ${size} mm makes ${rows} x ${columns} cells on one face; the most is ${MOST_CELLS}, so use ${least.toFixed(3)} mm or more`,
    );
  }
  return { rows, columns, u0, du: height / rows, v0, dv: (v1 - v0) / columns, wraps };
}
