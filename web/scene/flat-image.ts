/**
 * The depth colours of a face as pixels. Where each pixel lies on the face is worked out when the view changes; a brush move only
 * looks up the depths of the pixels it may have changed.
 */
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Face } from '../../geometry/part/face.ts';
import { DEPTH_RAMP } from '../../geometry/sheet/depth-colour.ts';
import { type FlatFrame, flatFrame } from '../../geometry/sheet/flat-frame.ts';
import type { Mm } from '../../geometry/units.ts';
import type { FlatLay } from './flat-view.ts';

export interface FlatImage {
  readonly width: number;
  readonly height: number;
  readonly face: Face;
  readonly frame: FlatFrame;
  readonly lay: FlatLay;
  /** Row and column of each pixel on the face, in cells from the middle of the first; NaN off the face's grid. */
  readonly row: Float32Array;
  readonly column: Float32Array;
  /** Red, green, blue, alpha a pixel; sound metal is transparent. */
  readonly pixels: Uint8ClampedArray<ArrayBuffer>;
}

/** Pixels, edges included. */
export interface PixelBox {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** @param lay  of the flat picture on pixels (not CSS px) */
export function flatImage(face: Face, lay: FlatLay, width: number, height: number): FlatImage {
  const { grid } = face;
  const frame = flatFrame(face);
  const row = new Float32Array(width * height);
  const column = new Float32Array(width * height);
  for (let y = 0, pixel = 0; y < height; y++) {
    const flatY = (y + 0.5 - lay.y) / lay.scale;
    for (let x = 0; x < width; x++, pixel++) {
      const [u, v] = frame.toGrid((x + 0.5 - lay.x) / lay.scale, flatY);
      const r = (u - grid.u0) / grid.du - 0.5;
      const c = (v - grid.v0) / grid.dv - 0.5;
      // A pixel more than the edge needs, for its own smoothing.
      const isNear = r > -2 && r < grid.rows + 1 && c > -2 && c < grid.columns + 1;
      row[pixel] = isNear ? r : Number.NaN;
      column[pixel] = c;
    }
  }
  return { width, height, face, frame, lay, row, column, pixels: new Uint8ClampedArray(width * height * 4) };
}

/** Depths from which metal is shown as worn, mm: fully at the second, which is the least that counts as damage. */
const FROM: Mm = 0.02;
const FULL: Mm = 0.05;

/** Colours the pixels of a box. Writes into `image`. @param to  depth at the deep end of the colours, mm */
export function paint(image: FlatImage, map: DepthMap, to: Mm, box: PixelBox = wholeOf(image)): void {
  const { width, row, column, pixels, face } = image;
  for (let y = box.y0; y <= box.y1; y++) {
    for (let x = box.x0; x <= box.x1; x++) {
      const pixel = y * width + x;
      const r = row[pixel];
      const at = pixel * 4;
      const depth = !Number.isNaN(r) ? depthBetween(face, map, r, column[pixel]) : 0;
      if (depth <= FROM) {
        pixels[at + 3] = 0;
        continue;
      }
      const entry = 3 * Math.round(Math.min(1, depth / to) * 255);
      pixels[at] = DEPTH_RAMP[entry];
      pixels[at + 1] = DEPTH_RAMP[entry + 1];
      pixels[at + 2] = DEPTH_RAMP[entry + 2];
      pixels[at + 3] = depth >= FULL ? 255 : ((depth - FROM) / (FULL - FROM)) * 255;
    }
  }
}

const wholeOf = ({ width, height }: FlatImage): PixelBox => ({
  x0: 0,
  x1: width - 1,
  y0: 0,
  y1: height - 1,
});

/** The pixels a block of cells may show in; null when it lies outside the picture. */
export function pixelsOf(image: FlatImage, block: CellBlock): PixelBox | null {
  const { face, frame, lay, width, height } = image;
  const { grid } = face;
  const pieces = Math.max(8, Math.ceil((block.columns * grid.dv) / 0.1));
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  const reach = (u: number, v: number) => {
    const [x, y] = frame.toFlat(u, v);
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  };
  for (let i = 0; i <= pieces; i++) {
    const v = grid.v0 + (block.column0 + (i / pieces) * block.columns) * grid.dv;
    reach(grid.u0 + block.row0 * grid.du, v);
    reach(grid.u0 + (block.row1 + 1) * grid.du, v);
  }
  if (face.picture.kind === 'plane' && grid.wraps && block.column0 + block.columns > grid.columns) {
    // On an unrolled face a block across the 0/360 line shows at both ends.
    x0 = frame.box.x;
    x1 = frame.box.x + frame.box.width;
  }
  // Smoothing carries a cell into the next, and a chord lies inside its arc.
  const margin = 2 + (grid.du + 0.002 * (x1 - x0)) * lay.scale;
  const box = {
    x0: Math.max(0, Math.floor(x0 * lay.scale + lay.x - margin)),
    x1: Math.min(width - 1, Math.ceil(x1 * lay.scale + lay.x + margin)),
    y0: Math.max(0, Math.floor(y0 * lay.scale + lay.y - margin)),
    y1: Math.min(height - 1, Math.ceil(y1 * lay.scale + lay.y + margin)),
  };
  return box.x0 > box.x1 || box.y0 > box.y1 ? null : box;
}

/** Depth linear between the four cells about a place, of those that are face; mm. */
function depthBetween({ grid, cover }: Face, { depth }: DepthMap, row: number, column: number): Mm {
  const { rows, columns, wraps } = grid;
  const r = Math.min(rows - 1, Math.max(0, row));
  const top = Math.min(Math.floor(r), Math.max(rows - 2, 0));
  const low = Math.min(top + 1, rows - 1);
  let left = Math.floor(column);
  const fc = wraps
    ? column - left
    : Math.min(columns - 1, Math.max(0, column)) - Math.max(0, Math.min(left, columns - 1));
  let right = left + 1;
  if (wraps) {
    left = left < 0 ? left + columns : left >= columns ? left - columns : left;
    right = right < 0 ? right + columns : right >= columns ? right - columns : right;
  } else {
    left = Math.max(0, Math.min(left, columns - 1));
    right = Math.max(0, Math.min(right, columns - 1));
  }
  const fr = r - top;
  const a = top * columns + left;
  const b = top * columns + right;
  const c = low * columns + left;
  const d = low * columns + right;
  const wa = (1 - fr) * (1 - fc);
  const wb = (1 - fr) * fc;
  const wc = fr * (1 - fc);
  const wd = fr * fc;
  if (cover === null || (cover[a] > 0 && cover[b] > 0 && cover[c] > 0 && cover[d] > 0)) {
    return wa * depth[a] + wb * depth[b] + wc * depth[c] + wd * depth[d];
  }
  let sum = 0;
  let weight = 0;
  if (cover[a] > 0) [sum, weight] = [sum + wa * depth[a], weight + wa];
  if (cover[b] > 0) [sum, weight] = [sum + wb * depth[b], weight + wb];
  if (cover[c] > 0) [sum, weight] = [sum + wc * depth[c], weight + wc];
  if (cover[d] > 0) [sum, weight] = [sum + wd * depth[d], weight + wd];
  return weight > 1e-6 ? sum / weight : 0;
}
