/**
 * A depth map as the texels of a half-float texture: 16 bits a depth, which every graphics chip can filter and which hold 0.002 mm at
 * 4 mm. Each is smoothed over a cell or two, so that a hard edge is not drawn with the corners of the cells it runs through; figures
 * and numbers come from the map itself. Without the 3D library, so that it can be tested without a browser.
 */
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Face, Grid } from '../../geometry/part/face.ts';

export interface DepthTexels {
  readonly face: Face;
  readonly width: number;
  readonly height: number;
  /** Half floats, width x height, row-major, mm. */
  readonly data: Uint16Array<ArrayBuffer>;
  /** Depth of every cell, mm, with those that are no face filled from the cell of the face nearest to them. */
  readonly filled: Float32Array;
  /** Cells that are no face, each followed by the cell of the face nearest to it. */
  readonly borrowed: Int32Array;
}

/** Wider than this some tablets cannot hold. */
const MOST_TEXELS = 4096;
/** Cells next to an edge or in a hole borrow a depth up to this many cells off, so that nothing slopes up towards them. */
const BORROW = 16;

/** @param like  a face with the same cells and the same cover, whose borrowed cells are taken over */
export function depthTexels(face: Face, like?: DepthTexels): DepthTexels {
  const { rows, columns } = face.grid;
  const width = Math.min(columns, MOST_TEXELS);
  const height = Math.min(rows, MOST_TEXELS);
  return {
    face,
    width,
    height,
    data: new Uint16Array(width * height),
    filled: new Float32Array(rows * columns),
    borrowed: like?.borrowed ?? borrowedCells(face),
  };
}

/** All cells of a map. */
export function wholeBlock({ grid }: DepthMap): CellBlock {
  return { row0: 0, row1: grid.rows - 1, column0: 0, columns: grid.columns };
}

/** Takes over a block of cells. Writes into `texels`. */
export function writeBlock(texels: DepthTexels, map: DepthMap, block: CellBlock): void {
  const { width, height, filled, borrowed } = texels;
  const { cover } = texels.face;
  const { rows, columns } = map.grid;
  for (let row = block.row0; row <= block.row1; row++) {
    for (let k = 0; k < block.columns; k++) {
      const cell = row * columns + ((block.column0 + k) % columns);
      if (cover === null || cover[cell] > 0) filled[cell] = map.depth[cell];
    }
  }
  let lends = false;
  for (let i = 0; i < borrowed.length; i += 2) {
    const lender = borrowed[i + 1];
    if (lender < block.row0 * columns || lender >= (block.row1 + 1) * columns) continue;
    if ((((lender - block.column0) % columns) + columns) % columns >= block.columns) continue;
    filled[borrowed[i]] = map.depth[lender];
    lends = true;
  }
  if (width === columns && height === rows) smoothInto(texels, block, lends ? SPREAD + BORROW : SPREAD);
  else shrinkInto(texels);
}

/** Weights of the cells about one, 16 in all: the binomial closest to a bell one cell wide. */
const BELL = [1, 4, 6, 4, 1] as const;
/** Cells to each side that the bell reaches. */
const SPREAD = 2;

/** Writes the smoothed depths of a block, and of the cells up to `reach` about it, into `data`. */
function smoothInto({ face, filled, data }: DepthTexels, block: CellBlock, reach: number): void {
  const { rows, columns, wraps } = face.grid;
  const row0 = Math.max(0, block.row0 - reach);
  const row1 = Math.min(rows - 1, block.row1 + reach);
  const first = wraps ? block.column0 - reach : Math.max(0, block.column0 - reach);
  const last = block.column0 + block.columns - 1 + reach;
  const wide = Math.min(columns, (wraps ? last : Math.min(columns - 1, last)) - first + 1);
  const columnAt = (k: number) => {
    if (wraps) return (((first + k) % columns) + columns) % columns;
    return Math.min(columns - 1, Math.max(0, first + k));
  };
  const across = new Float32Array((row1 - row0 + 5) * wide);
  for (let r = 0; r < row1 - row0 + 5; r++) {
    const start = Math.min(rows - 1, Math.max(0, row0 + r - 2)) * columns;
    for (let k = 0; k < wide; k++) {
      let sum = 0;
      for (let i = 0; i < 5; i++) sum += BELL[i] * filled[start + columnAt(k + i - 2)];
      across[r * wide + k] = sum / 16;
    }
  }
  for (let row = row0; row <= row1; row++) {
    for (let k = 0; k < wide; k++) {
      let sum = 0;
      for (let i = 0; i < 5; i++) sum += BELL[i] * across[(row - row0 + i) * wide + k];
      data[row * columns + columnAt(k)] = toHalf(sum / 16);
    }
  }
}

/** More cells than texels: each takes the mean of its cells. */
function shrinkInto(texels: DepthTexels): void {
  eachTexel(texels, (texel, cells) => {
    texels.data[texel] = toHalf(meanOf(texels.filled, texels.face.grid.columns, cells));
  });
}

/** Share of each texel that is face, 0..255. */
export function coverShares(texels: DepthTexels): Uint8Array<ArrayBuffer> {
  const { width, height, face } = texels;
  const { cover, grid } = face;
  const shares = new Uint8Array(width * height).fill(255);
  if (cover === null) return shares;
  eachTexel(texels, (texel, cells) => {
    shares[texel] = Math.round(255 * meanOf(cover, grid.columns, cells));
  });
  return shares;
}

function eachTexel(
  { width, height, face }: DepthTexels,
  visit: (texel: number, cells: CellRange) => void,
): void {
  const { rows, columns } = face.grid;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      visit(y * width + x, {
        row0: Math.floor((y * rows) / height),
        row1: Math.floor(((y + 1) * rows) / height),
        column0: Math.floor((x * columns) / width),
        column1: Math.floor(((x + 1) * columns) / width),
      });
    }
  }
}

/** Rows and columns up to but without the second of each. */
interface CellRange {
  readonly row0: number;
  readonly row1: number;
  readonly column0: number;
  readonly column1: number;
}

function meanOf(values: Float32Array, columns: number, { row0, row1, column0, column1 }: CellRange): number {
  let sum = 0;
  for (let row = row0; row < row1; row++) {
    for (let column = column0; column < column1; column++) sum += values[row * columns + column];
  }
  return sum / ((row1 - row0) * (column1 - column0));
}

/** Walks out from the face into what is none, ring by ring. */
function borrowedCells({ cover, grid }: Face): Int32Array {
  if (cover === null) return new Int32Array(0);
  const source = new Map<number, number>();
  let front: number[] = [];
  for (let cell = 0; cell < cover.length; cell++) {
    if (cover[cell] !== 0) continue;
    const face = besides(grid, cell).find((beside) => beside >= 0 && cover[beside] > 0);
    if (face === undefined) continue;
    source.set(cell, face);
    front.push(cell);
  }
  for (let ring = 1; ring < BORROW && front.length > 0; ring++) {
    const next: number[] = [];
    for (const cell of front) {
      for (const beside of besides(grid, cell)) {
        if (beside < 0 || cover[beside] > 0 || source.has(beside)) continue;
        source.set(beside, source.get(cell) ?? cell);
        next.push(beside);
      }
    }
    front = next;
  }
  return Int32Array.from([...source].flat());
}

/** The four cells beside a cell; -1 where the grid ends. */
function besides({ rows, columns, wraps }: Grid, cell: number): readonly number[] {
  const column = cell % columns;
  const row = (cell - column) / columns;
  return [
    column > 0 ? cell - 1 : wraps ? cell + columns - 1 : -1,
    column < columns - 1 ? cell + 1 : wraps ? cell - columns + 1 : -1,
    row > 0 ? cell - columns : -1,
    row < rows - 1 ? cell + columns : -1,
  ];
}

const bits = new DataView(new ArrayBuffer(4));

/** A depth of 0 or more as a half float, rounded to nearest; less than 6e-5 is 0. */
export function toHalf(value: number): number {
  if (!(value >= 6.2e-5)) return 0;
  bits.setFloat32(0, value);
  // Rounding may carry into the exponent, which is just what it should do.
  const half = (bits.getUint32(0) - 0x38000000 + 0x1000) >>> 13;
  return Math.min(half, 0x7bff);
}
