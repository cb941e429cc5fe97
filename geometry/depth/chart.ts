/**
 * Distances on a face. A chart flattens the face about one column direction, so that a straight ruler laid there measures true:
 * a cone is developed, a bore unrolled, a flat face is itself. Used wherever a mark asks "how far is this cell from here".
 */

import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { SAMPLE_U, SAMPLE_V, SAMPLES } from './depth-map.ts';

/** A flattening of a face about one direction. */
export interface Chart {
  /** v of the column direction the chart is laid along. */
  readonly v0: number;
  place(u: number, v: number): readonly [x: Mm, y: Mm];
}

/** The signed step from `from` to `to` along v, the short way round where the face wraps. */
export function stepAlong(face: Face, from: number, to: number): number {
  const step = to - from;
  if (!face.grid.wraps) return step;
  const turn = face.grid.columns * face.grid.dv;
  return step - turn * Math.round(step / turn);
}

/** A flat chart of the face about the direction v0; places are in mm. Exact on every face that flattens (all that Fettle has). */
export function chartAt(face: Face, v0: number): Chart {
  const { picture } = face;
  if (picture.kind === 'polar') {
    const { slant } = picture;
    return {
      v0,
      place: (u, v) => {
        const angle = stepAlong(face, v0, v) * slant;
        const length = u / slant;
        return [length * Math.cos(angle), length * Math.sin(angle)];
      },
    };
  }
  const scale = picture.columnScale;
  return { v0, place: (u, v) => [stepAlong(face, v0, v) * scale, u] };
}

/** Half the diagonal of a cell of a row, mm: a boundary nearer to a cell's centre than this may cut the cell. */
export function halfDiagonal(face: Face, row: number): Mm {
  const { grid, picture } = face;
  const u = grid.u0 + (row + 1) * grid.du;
  const height = picture.kind === 'polar' ? grid.du / picture.slant : grid.du;
  const width = grid.dv * (picture.kind === 'polar' ? u : picture.columnScale);
  return Math.hypot(height, width) / 2;
}

/** A whole number of cells, rows row0..row1 and columns column0 on for `columns`, wrapping where the grid does. */
export interface CellBlock {
  readonly row0: number;
  /** Last row, included. */
  readonly row1: number;
  readonly column0: number;
  readonly columns: number;
}

/** The block of cells that u0..u1, v0..v1 touches, clipped to the grid; null when it misses. v1 may pass a whole turn. */
export function blockWithin(face: Face, u0: number, u1: number, v0: number, v1: number): CellBlock | null {
  const { grid } = face;
  const row0 = Math.max(0, Math.floor((u0 - grid.u0) / grid.du));
  const row1 = Math.min(grid.rows - 1, Math.floor((u1 - grid.u0) / grid.du));
  if (row1 < row0) return null;
  const first = Math.floor((v0 - grid.v0) / grid.dv);
  const last = Math.floor((v1 - grid.v0) / grid.dv);
  if (grid.wraps) {
    const columns = Math.min(grid.columns, last - first + 1);
    return { row0, row1, column0: ((first % grid.columns) + grid.columns) % grid.columns, columns };
  }
  const column0 = Math.max(0, first);
  const columns = Math.min(grid.columns - 1, last) - column0 + 1;
  return columns > 0 ? { row0, row1, column0, columns } : null;
}

/** The block of cells within `reach` mm of the segment from (ua, va) to (ub, vb); null when it misses the face. */
export function blockNear(
  face: Face,
  ua: number,
  va: number,
  ub: number,
  vb: number,
  reach: Mm,
): CellBlock | null {
  const { grid, picture } = face;
  const step = stepAlong(face, va, vb);
  const [v0, v1] = step < 0 ? [va + step, va] : [va, va + step];
  if (picture.kind === 'plane') {
    const wide = reach / picture.columnScale;
    return blockWithin(face, Math.min(ua, ub) - reach, Math.max(ua, ub) + reach, v0 - wide, v1 + wide);
  }
  const chart = chartAt(face, va);
  const [ax, ay] = chart.place(ua, va);
  const [bx, by] = chart.place(ub, vb);
  const nearest = Math.sqrt(squareToSegment(0, 0, ax, ay, bx, by));
  const furthest = Math.max(Math.hypot(ax, ay), Math.hypot(bx, by));
  const wide = nearest > reach ? Math.asin(reach / nearest) / picture.slant : grid.columns * grid.dv;
  return blockWithin(
    face,
    (nearest - reach) * picture.slant,
    (furthest + reach) * picture.slant,
    v0 - wide,
    v1 + wide,
  );
}

/** Squared distance from (x, y) to the segment a-b, mm2. */
function squareToSegment(x: Mm, y: Mm, ax: Mm, ay: Mm, bx: Mm, by: Mm): number {
  const dx = bx - ax;
  const dy = by - ay;
  const length2 = dx * dx + dy * dy;
  const along = length2 > 0 ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length2)) : 0;
  const px = ax + along * dx - x;
  const py = ay + along * dy - y;
  return px * px + py * py;
}

/** The sample of cell (row, column) that lies nearest to (u, v), 0..SAMPLES-1. */
export function nearestSample(face: Face, row: number, column: number, u: number, v: number): number {
  const { grid } = face;
  const su = (u - grid.u0) / grid.du - row;
  const sv = stepAlong(face, grid.v0 + (column + 0.5) * grid.dv, v) / grid.dv + 0.5;
  let best = 0;
  let least = Infinity;
  for (let i = 0; i < SAMPLES; i++) {
    const d = (SAMPLE_U[i] - su) ** 2 + (SAMPLE_V[i] - sv) ** 2;
    if (d < least) {
      least = d;
      best = i;
    }
  }
  return best;
}
