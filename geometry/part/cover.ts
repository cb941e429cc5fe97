import type { Grid } from './face.ts';

/** Shares closer to 0 or 1 than this are rounding of sums in 32 bits. */
const DUST = 1e-5;

/**
 * Adds the signed area of a closed loop, cell by cell, to `cover`. Writes into `cover`.
 * The area inside a loop is summed exactly (each edge adds the trapezoid between itself and the row's end), so a cell that the
 * loop cuts gets just the share inside.
 * @param cover  rows x columns, shares of a cell
 * @param loop   closed polyline in grid coordinates (u, v), last point not repeated
 * @param share  what the inside of the loop is worth: +1 adds metal, -1 takes a hole out
 * Accuracy: exact for the polyline; cells outside the grid are dropped, columns wrap where the grid does.
 */
export function addLoop(
  cover: Float32Array,
  grid: Grid,
  loop: readonly (readonly [number, number])[],
  share: number,
): void {
  const points = loop.map(([u, v]) => [(u - grid.u0) / grid.du, (v - grid.v0) / grid.dv] as const);
  let firstColumn = Infinity;
  let lastColumn = -Infinity;
  for (const [, v] of points) {
    firstColumn = Math.min(firstColumn, Math.floor(v));
    lastColumn = Math.max(lastColumn, Math.floor(v));
  }
  const width = lastColumn - firstColumn + 2;
  // Counter-clockwise loops come down on their left, where the inside begins.
  const turn = -Math.sign(signedArea(points));
  const rows = new Map<number, Float64Array>();
  for (let i = 0; i < points.length; i++) {
    const from = points[i];
    const to = points[(i + 1) % points.length];
    if (from[0] !== to[0]) addEdge(rows, grid.rows, width, firstColumn, from, to);
  }
  for (const [row, change] of rows) {
    let inside = 0;
    for (let k = 0; k < width; k++) {
      inside += change[k];
      const column = columnOf(grid, firstColumn + k);
      if (column < 0 || Math.abs(inside) < 1e-9) continue;
      cover[row * grid.columns + column] += inside * turn * share;
    }
  }
}

/** Spreads one edge over the rows and columns it passes: `change` holds differences along the row, to be summed from the left. */
function addEdge(
  rows: Map<number, Float64Array>,
  rowCount: number,
  width: number,
  firstColumn: number,
  from: readonly [number, number],
  to: readonly [number, number],
): void {
  const sign = from[0] < to[0] ? 1 : -1;
  const [low, high] = sign > 0 ? [from, to] : [to, from];
  const slope = (high[1] - low[1]) / (high[0] - low[0]);
  const lastRow = Math.min(rowCount - 1, Math.ceil(high[0]) - 1);
  for (let row = Math.max(0, Math.floor(low[0])); row <= lastRow; row++) {
    const a = Math.max(low[0], row);
    const b = Math.min(high[0], row + 1);
    if (b <= a) continue;
    let change = rows.get(row);
    if (!change) {
      change = new Float64Array(width + 1);
      rows.set(row, change);
    }
    addPiece(
      change,
      low[1] + (a - low[0]) * slope - firstColumn,
      low[1] + (b - low[0]) * slope - firstColumn,
      (b - a) * sign,
    );
  }
}

/** One edge piece within a row, from v = p to v = q with signed height h: the area right of it, as differences. */
function addPiece(change: Float64Array, p: number, q: number, h: number): void {
  const left = Math.min(p, q);
  const right = Math.max(p, q);
  const first = Math.floor(left);
  const last = Math.floor(right);
  let before = 0;
  for (let k = first; k <= last; k++) {
    const upTo = k === last ? h : (h * (k + 1 - left)) / (right - left);
    // Of the height passed in this column, the area to its right within the column; what is beyond is carried on.
    const a = Math.max(left, k);
    const b = Math.min(right, k + 1);
    const passed = upTo - before;
    const area = passed * (k + 1 - (a + b) / 2);
    change[k] += area;
    change[k + 1] += passed - area;
    before = upTo;
  }
}

function columnOf(grid: Grid, column: number): number {
  if (grid.wraps) return ((column % grid.columns) + grid.columns) % grid.columns;
  return column >= 0 && column < grid.columns ? column : -1;
}

function signedArea(points: readonly (readonly [number, number])[]): number {
  let twice = 0;
  for (let i = 0; i < points.length; i++) {
    const [u0, v0] = points[i];
    const [u1, v1] = points[(i + 1) % points.length];
    twice += v0 * u1 - v1 * u0;
  }
  return twice / 2;
}

/** Rounds float dust off shares, so that whole cells are 1 and empty ones 0. Writes into `cover`. */
export function settleCover(cover: Float32Array): Float32Array {
  for (let i = 0; i < cover.length; i++) {
    const share = cover[i];
    cover[i] = share < DUST ? 0 : share > 1 - DUST ? 1 : share;
  }
  return cover;
}

/** Indices of the cells that are neither whole nor empty. */
export function cutCellsOf(cover: Float32Array | null): Int32Array {
  const cut: number[] = [];
  if (cover !== null) {
    for (let i = 0; i < cover.length; i++) if (cover[i] > 0 && cover[i] < 1) cut.push(i);
  }
  return Int32Array.from(cut);
}
