/**
 * How far each vertex of a face sinks. Vertices stand further apart than cells: each takes the mean depth of the cells about it, half
 * way to the next vertex, so that the side of a worn place slopes evenly from vertex to vertex wherever they happen to fall.
 */
import type { CellBlock } from '../../geometry/depth/chart.ts';
import { type DepthTexels, toHalf } from './depth-texels.ts';

export interface SinkTexels {
  readonly of: DepthTexels;
  /** Vertices along v, the seam counted once, and along u. */
  readonly width: number;
  readonly height: number;
  /** Half floats, width x height, row-major, mm. */
  readonly data: Uint16Array<ArrayBuffer>;
}

/** @param rows, columns  vertices of the face's mesh */
export function sinkTexels(of: DepthTexels, rows: number, columns: number): SinkTexels {
  const width = of.face.grid.wraps ? columns - 1 : columns;
  return { of, width, height: rows, data: new Uint16Array(width * rows) };
}

/** Takes over the vertices a block of cells reaches, after the block was written into the depth texels. Writes into `sink`. */
export function writeSink(sink: SinkTexels, block: CellBlock): void {
  const { of, width, height, data } = sink;
  const { grid } = of.face;
  const { rows, columns, wraps } = grid;
  const rowsApart = rows / (height - 1);
  const columnsApart = columns / (wraps ? width : width - 1);
  const before = Math.floor(block.column0 / columnsApart - 0.5);
  const first = wraps ? before : Math.max(0, before);
  const last = Math.ceil((block.column0 + block.columns) / columnsApart + 0.5);
  const reached = Math.min(width, last - first + 1);
  const lowest = Math.max(0, Math.floor(block.row0 / rowsApart - 0.5));
  const highest = Math.min(height - 1, Math.ceil((block.row1 + 1) / rowsApart + 0.5));
  for (let y = lowest; y <= highest; y++) {
    const row0 = Math.max(0, (y - 0.5) * rowsApart);
    const row1 = Math.min(rows, (y + 0.5) * rowsApart);
    for (let k = 0; k < reached; k++) {
      const x = wraps ? (first + k + width) % width : first + k;
      if (x < 0 || x >= width) continue;
      const column0 = wraps ? (x - 0.5) * columnsApart : Math.max(0, (x - 0.5) * columnsApart);
      const column1 = wraps ? (x + 0.5) * columnsApart : Math.min(columns, (x + 0.5) * columnsApart);
      data[y * width + x] = toHalf(meanWithin(of, row0, row1, column0, column1));
    }
  }
}

/** Mean over a box in cells, cells it cuts counted by their share; columns wrap where the face does. */
function meanWithin(
  { filled, face }: DepthTexels,
  row0: number,
  row1: number,
  column0: number,
  column1: number,
): number {
  const { columns } = face.grid;
  let sum = 0;
  for (let row = Math.floor(row0); row < row1; row++) {
    const high = Math.min(row1, row + 1) - Math.max(row0, row);
    let across = 0;
    for (let column = Math.floor(column0); column < column1; column++) {
      const wide = Math.min(column1, column + 1) - Math.max(column0, column);
      const cell =
        row * columns + (column < 0 ? column + columns : column >= columns ? column - columns : column);
      across += wide * filled[cell];
    }
    sum += high * across;
  }
  return sum / ((row1 - row0) * (column1 - column0));
}
