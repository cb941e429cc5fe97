import { type Face, toFacePoint } from '../../../geometry/part/face.ts';
import type { FacePoint } from '../../../geometry/units.ts';
import type { FaceRegions } from '../../worker/estimate-job.ts';

const TIE = 0.01;

/**
 * The middle of the cell of a region that lies furthest from its edge: a choice that is pinned there holds while the edge is worked on.
 * @returns null where the regions are not those of the face as it is, or have no such one
 * Accuracy: distances along rows and columns alone, to a cell. Cost: two passes over the face.
 */
export function inmostPoint(face: Face, regions: FaceRegions, id: string): FacePoint | null {
  const { grid, picture } = face;
  const { rows, columns, wraps } = grid;
  const number = regions.ids.indexOf(id) + 1;
  if (number === 0 || regions.rows !== rows || regions.columns !== columns) return null;
  const { label } = regions;
  /** mm along the row to the nearest cell that is not the region's. */
  const inside = new Float32Array(label.length);
  const ends = new Float32Array(Math.max(rows, columns));
  for (let row = 0; row < rows; row++) {
    const radius = grid.u0 + (row + 0.5) * grid.du;
    const width = grid.dv * (picture.kind === 'polar' ? radius : picture.columnScale);
    reachAlong(columns, wraps, (column) => label[row * columns + column] === number, width, ends);
    for (let column = 0; column < columns; column++) inside[row * columns + column] = ends[column];
  }
  let [most, inmost] = [0, -1];
  for (let column = 0; column < columns; column++) {
    reachAlong(rows, false, (row) => label[row * columns + column] === number, grid.du, ends);
    for (let row = 0; row < rows; row++) {
      const cell = row * columns + column;
      // The lesser of the two counts; where that is alike, as along a strip, the greater.
      const depth = Math.min(inside[cell], ends[row]) + TIE * Math.max(inside[cell], ends[row]);
      if (depth > most) [most, inmost] = [depth, cell];
    }
  }
  if (inmost < 0) return null;
  const column = inmost % columns;
  const row = (inmost - column) / columns;
  return toFacePoint(face, grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv);
}

/** How far each place of a line is from the nearest one that does not count, either way; 0 where it does not itself. Writes into `ends`. */
function reachAlong(
  length: number,
  wraps: boolean,
  counts: (at: number) => boolean,
  step: number,
  ends: Float32Array,
): void {
  // Round a turn the second time round knows what lies before the first place; a whole ring has no end.
  const turns = wraps ? 2 : 1;
  let run = 0;
  for (let i = 0; i < turns * length; i++) {
    const at = i % length;
    run = counts(at) ? run + step : 0;
    ends[at] = run;
  }
  run = 0;
  for (let i = turns * length - 1; i >= 0; i--) {
    const at = i % length;
    run = counts(at) ? run + step : 0;
    if (i < length) ends[at] = Math.min(ends[at], run);
  }
}
