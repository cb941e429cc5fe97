import { type Face, isCutCell } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { isTurned } from './row-walk.ts';

/** From the shaft: where a face begins and where it ends. */
export interface Radii {
  readonly from: Mm;
  readonly to: Mm;
}

/** Of a cell. A hair inside its own edge a face holds whatever rounding does. */
const HAIR = 1e-9;

/**
 * The least and the greatest radius of a face, from the corners of its cells; null when no corner is on it.
 * Accuracy: exact where its edges follow the grid, otherwise a cell.
 */
export function faceRadii(face: Face): Radii | null {
  const { grid, cover } = face;
  const { rows, columns } = grid;
  const inside = (line: number, lines: number): number => Math.min(Math.max(line, HAIR), lines - HAIR);
  let [from, to] = [Infinity, -Infinity];
  const [xs, ys] = [new Float64Array(columns + 1), new Float64Array(columns + 1)];
  for (let row = 0; row <= rows; row++) {
    const u = grid.u0 + inside(row, rows) * grid.du;
    const [x0, y0] = face.position(u, grid.v0 + HAIR * grid.dv, 0);
    if (isTurned(face)) {
      const radius = Math.hypot(x0, y0);
      from = Math.min(from, radius);
      to = Math.max(to, radius);
      continue;
    }
    const [x1, y1] = face.position(u, grid.v0 + (columns - HAIR) * grid.dv, 0);
    for (let column = 0; column <= columns; column++) {
      xs[column] = x0 + (column / columns) * (x1 - x0);
      ys[column] = y0 + (column / columns) * (y1 - y0);
    }
    for (let column = 0; column <= columns; column++) {
      const square = xs[column] ** 2 + ys[column] ** 2;
      if (square >= from * from && square <= to * to) continue;
      if (cover !== null && !isCorner(face, row, column, u, inside(column, columns))) continue;
      const radius = Math.sqrt(square);
      from = Math.min(from, radius);
      to = Math.max(to, radius);
    }
  }
  return from <= to ? { from, to } : null;
}

/** True where a whole cell meets the corner, or where the face itself holds it. */
function isCorner(face: Face, row: number, column: number, u: number, line: number): boolean {
  const { grid } = face;
  let isNear = false;
  for (let r = Math.max(0, row - 1); r <= Math.min(row, grid.rows - 1); r++) {
    for (let c = Math.max(0, column - 1); c <= Math.min(column, grid.columns - 1); c++) {
      const cell = r * grid.columns + c;
      if (!isCutCell(face, cell)) return true;
      isNear ||= (face.cover?.[cell] ?? 1) > 0;
    }
  }
  return isNear && face.holds(u, grid.v0 + line * grid.dv);
}
