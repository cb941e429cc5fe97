import type { DepthMap } from '../depth/depth-map.ts';
import type { Face, Grid } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { FlatBox, FlatFrame, FlatPoint } from './flat-frame.ts';

/** An even raster over the drawn picture of a face; the value of sample (column, row) stands at x0 + column dx, y0 + row dy. */
export interface FlatRaster {
  readonly columns: number;
  readonly rows: number;
  readonly x0: Mm;
  readonly y0: Mm;
  readonly dx: Mm;
  readonly dy: Mm;
  /** Row-major; NaN well beyond the face. */
  readonly values: number[];
}

/** Samples along the longer and at least along the shorter side. */
const LONG_SIDE = 320;
const SHORT_SIDE = 48;
/** A sample is the mean of up to this many depths each way: where cells are finer than samples, edges would turn out ragged. */
const MOST_WITHIN = 3;
/** The depth is carried on this many samples beyond an edge, so that contours cross it instead of turning along it. */
const BEYOND = 3;

/** An empty raster that reaches BEYOND samples past the box on all sides. */
export function rasterOver(box: FlatBox): Omit<FlatRaster, 'values'> {
  const longest = Math.max(box.width, box.height);
  const along = (side: Mm) => Math.max(SHORT_SIDE, Math.round((LONG_SIDE * side) / longest));
  const dx = box.width / along(box.width);
  const dy = box.height / along(box.height);
  return {
    columns: along(box.width) + 1 + 2 * BEYOND,
    rows: along(box.height) + 1 + 2 * BEYOND,
    x0: box.x - BEYOND * dx,
    y0: box.y - BEYOND * dy,
    dx,
    dy,
  };
}

/** Where sample (column, row) of a raster is drawn; fractions lie between samples. */
export function samplePlace(raster: Omit<FlatRaster, 'values'>, column: number, row: number): FlatPoint {
  return [raster.x0 + column * raster.dx, raster.y0 + row * raster.dy];
}

/**
 * The depths of a face, mm, resampled to its drawn picture.
 * Accuracy: linear between cell centres, evened out over a sample (the longer side / 320): the picture may round off what is
 * narrower, the figures never do.
 */
export function flatRaster(face: Face, map: DepthMap, frame: FlatFrame): FlatRaster {
  const shape = rasterOver(frame.box);
  const values: number[] = new Array(shape.columns * shape.rows);
  const past = (BEYOND + 1) * Math.max(shape.dx, shape.dy);
  const within = Math.min(
    MOST_WITHIN,
    Math.max(1, Math.round(Math.max(shape.dx, shape.dy) / cellSize(face))),
  );
  for (let row = 0; row < shape.rows; row++) {
    for (let column = 0; column < shape.columns; column++) {
      let sum = 0;
      let count = 0;
      for (let part = 0; part < within * within; part++) {
        const x = column + ((part % within) + 0.5) / within - 0.5;
        const y = row + (Math.floor(part / within) + 0.5) / within - 0.5;
        const [u, v] = frame.toGrid(shape.x0 + x * shape.dx, shape.y0 + y * shape.dy);
        const depth = depthNear(face, map, u, v, past);
        if (Number.isNaN(depth)) continue;
        sum += depth;
        count += 1;
      }
      values[row * shape.columns + column] = count > 0 ? sum / count : Number.NaN;
    }
  }
  carryOn(values, shape.columns, shape.rows);
  return { ...shape, values };
}

/** How fast the depth changes across the samples round a place, mm a mm. */
export function slopeAt({ values, columns, rows, x0, y0, dx, dy }: FlatRaster, x: Mm, y: Mm): number {
  const column = Math.max(1, clamped(Math.round((x - x0) / dx), columns - 2));
  const row = Math.max(1, clamped(Math.round((y - y0) / dy), rows - 2));
  const at = row * columns + column;
  const across = (values[at + 1] - values[at - 1]) / (2 * dx);
  const down = (values[at + columns] - values[at - columns]) / (2 * dy);
  return Math.hypot(across, down);
}

/** Depth at a grid point, linear between the four cells around it that are face at all; NaN where none is. */
function depthNear({ cover }: Face, { grid, depth }: DepthMap, u: number, v: number, past: Mm): number {
  const beyond = Math.max(grid.u0 - u, u - (grid.u0 + grid.rows * grid.du));
  if (beyond > past) return Number.NaN;
  const row = clamped((u - grid.u0) / grid.du - 0.5, grid.rows - 1);
  const free = (v - grid.v0) / grid.dv - 0.5;
  const column = grid.wraps ? free : clamped(free, grid.columns - 1);
  const [top, left] = [Math.floor(row), Math.floor(column)];
  let sum = 0;
  let weight = 0;
  for (let corner = 0; corner < 4; corner++) {
    const [down, right] = [corner >> 1, corner & 1];
    const share = Math.abs(1 - down - (row - top)) * Math.abs(1 - right - (column - left));
    if (share === 0) continue;
    const cell = cellOf(grid, top + down, left + right);
    if (cover !== null && cover[cell] === 0) continue;
    sum += share * depth[cell];
    weight += share;
  }
  return weight > 0 ? sum / weight : Number.NaN;
}

function cellOf(grid: Grid, row: number, column: number): number {
  const wrapped = grid.wraps ? ((column % grid.columns) + grid.columns) % grid.columns : column;
  return Math.min(row, grid.rows - 1) * grid.columns + Math.min(wrapped, grid.columns - 1);
}

const clamped = (value: number, most: number): number => Math.min(most, Math.max(0, value));

/** Side of a cell in the picture, mm; of a round face at its outer edge. */
function cellSize({ grid, picture }: Face): Mm {
  const scale = picture.kind === 'plane' ? picture.columnScale : grid.u0 + grid.rows * grid.du;
  return Math.max(grid.du, grid.dv * scale);
}

/** Gives samples without a depth the mean of their neighbours, BEYOND samples deep. Writes into `values`. */
function carryOn(values: number[], columns: number, rows: number): void {
  let missing: number[] = [];
  for (let index = 0; index < values.length; index++) if (Number.isNaN(values[index])) missing.push(index);
  for (let pass = 0; pass < BEYOND; pass++) {
    const found: [index: number, value: number][] = [];
    for (const index of missing) {
      const column = index % columns;
      let sum = 0;
      let count = 0;
      const add = (value: number): void => {
        if (Number.isNaN(value)) return;
        sum += value;
        count += 1;
      };
      if (column > 0) add(values[index - 1]);
      if (column < columns - 1) add(values[index + 1]);
      if (index >= columns) add(values[index - columns]);
      if (index < (rows - 1) * columns) add(values[index + columns]);
      if (count > 0) found.push([index, sum / count]);
    }
    for (const [index, value] of found) values[index] = value;
    missing = missing.filter((index) => Number.isNaN(values[index]));
  }
}
