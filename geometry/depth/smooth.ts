import type { Smooth } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import type { FacePoint, Fraction, Mm } from '../units.ts';
import { type BrushPath, beginPath, drawTo, endPath, sampleSlot } from './brush-path.ts';
import type { CellBlock } from './chart.ts';
import { type DepthMap, SAMPLES, settleCell } from './depth-map.ts';

/** A smoothing brush on its way. */
export interface SmoothInHand {
  readonly path: BrushPath;
  readonly strength: Fraction;
  /** The whole map when the brush was put down: the surroundings a cell is drawn towards. */
  readonly whole: Float32Array;
  /** Running sums of a row of `whole`, made when the row is first asked for. */
  readonly rowSums: Map<number, RowSums>;
  /** Per touched cell, the mean of its surroundings; NaN until asked for. */
  readonly mean: Map<number, Mm>;
}

/**
 * Evens the surface under a brush. Writes into `map`. Each cell moves towards the mean depth of the square of half width R/2 about it
 * (mm, as it was before the stroke), by strength x (1 - (x/R)^2)^2 of the way: the scale is the brush's and not the cell's.
 * Accuracy: the square is whole cells; holes and what lies off the face do not count. Source: common practice of a blur brush.
 */
export function applySmooth(map: DepthMap, face: Face, smooth: Smooth): void {
  const inHand = beginSmooth(map, face, smooth.radius, smooth.strength);
  for (const point of smooth.path) extendSmooth(inHand, point);
  endSmooth(inHand);
}

export function beginSmooth(map: DepthMap, face: Face, radius: Mm, strength: Fraction): SmoothInHand {
  return {
    path: beginPath(map, face, radius, 'whole-cells'),
    strength,
    whole: map.depth.slice(),
    rowSums: new Map(),
    mean: new Map(),
  };
}

/** Draws on to a point of the face; returns the block it may have changed, null when it misses the face. */
export function extendSmooth(inHand: SmoothInHand, point: FacePoint): CellBlock | null {
  const { path } = inHand;
  const [u, v] = toGridPoint(path.face, point);
  const block = drawTo(path, u, v, false);
  for (let i = 0; i < path.changedCount; i++) settle(inHand, path.changed[i]);
  return block;
}

export function endSmooth(inHand: SmoothInHand): void {
  endPath(inHand.path);
}

function settle(inHand: SmoothInHand, cell: number): void {
  const { path, strength, mean } = inHand;
  const { map } = path;
  const q = path.nearest[cell] / (path.radius * path.radius);
  if (q >= 1) return;
  const weight = strength * (1 - q) * (1 - q);
  let target = mean.get(cell);
  if (target === undefined) {
    target = surroundings(inHand, cell);
    mean.set(cell, target);
    if (map.slot[cell] >= 0) sampleSlot(path, cell);
  }
  const slot = map.slot[cell];
  if (slot < 0) {
    map.depth[cell] = path.before[cell] + weight * (target - path.before[cell]);
    return;
  }
  const from = path.slot[cell] * SAMPLES;
  for (let i = 0; i < SAMPLES; i++) {
    const before = path.sampleBefore[from + i];
    map.samples[slot * SAMPLES + i] = before + weight * (target - before);
  }
  settleCell(map, cell);
}

/** Mean depth over the square about a cell, weighted by how much of each cell is face. */
function surroundings(inHand: SmoothInHand, centre: number): Mm {
  const { path } = inHand;
  const { face } = path;
  const { grid, picture } = face;
  const row = Math.floor(centre / grid.columns);
  const column = centre - row * grid.columns;
  const half = path.radius / 2;
  const reach = Math.max(1, Math.round(half / grid.du - 0.5));
  let sum = 0;
  let weight = 0;
  for (let i = Math.max(0, row - reach); i <= Math.min(grid.rows - 1, row + reach); i++) {
    const width = grid.dv * (picture.kind === 'polar' ? grid.u0 + (i + 0.5) * grid.du : picture.columnScale);
    const most = Math.floor((grid.columns - 1) / 2);
    const aside = Math.min(Math.max(1, Math.round(half / width - 0.5)), most);
    const sums = rowSums(inHand, i);
    sum += width * windowSum(sums.depth, column, aside, grid.wraps);
    weight += width * windowSum(sums.share, column, aside, grid.wraps);
  }
  return weight > 0 ? sum / weight : 0;
}

interface RowSums {
  /** Sums from the first column up to each, of share x depth and of share; one more than there are columns. */
  readonly depth: Float64Array;
  readonly share: Float64Array;
}

function rowSums(inHand: SmoothInHand, row: number): RowSums {
  const known = inHand.rowSums.get(row);
  if (known) return known;
  const { cover, grid } = inHand.path.face;
  const { columns } = grid;
  const depth = new Float64Array(columns + 1);
  const share = new Float64Array(columns + 1);
  for (let column = 0; column < columns; column++) {
    const cell = row * columns + column;
    const held = cover === null ? 1 : cover[cell];
    depth[column + 1] = depth[column] + held * inHand.whole[cell];
    share[column + 1] = share[column] + held;
  }
  const made = { depth, share };
  inHand.rowSums.set(row, made);
  return made;
}

/** Sum of a row over the columns within `aside` of one, round the seam where the grid wraps. */
function windowSum(sums: Float64Array, column: number, aside: number, wraps: boolean): number {
  const columns = sums.length - 1;
  const from = column - aside;
  const to = column + aside + 1;
  const inside = sums[Math.min(columns, to)] - sums[Math.max(0, from)];
  if (!wraps) return inside;
  const before = from < 0 ? sums[columns] - sums[columns + from] : 0;
  const after = to > columns ? sums[to - columns] : 0;
  return inside + before + after;
}
