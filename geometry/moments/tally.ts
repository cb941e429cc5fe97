import { type DepthMap, isEven, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { DAMAGE } from '../fill/label.ts';
import type { Face } from '../part/face.ts';
import type { Mm, Mm3 } from '../units.ts';
import { volumeBetween } from './row-sums.ts';

/** A fill as deep as a whole number of layers takes that many, float dust aside. */
const DUST = 1e-9;

/** Volumes of a face shared out two ways: by damage region, and by bin for filling in order (a bin is a column, or a row where the face is worked by row). */
export interface Tally {
  /** Per region, mm3: lost within it, and filled (0 where it is left). */
  readonly lost: Float64Array;
  readonly fill: Float64Array;
  /** Layers of filler, the one to lay first in front: one, or as many as the deepest fill of the face takes. */
  readonly layers: readonly Layer[];
  /** Deepest filler anywhere on the face, mm. */
  readonly deepestFill: Mm;
}

/** Per bin, mm3 of filler, and the cells it spans across: first, last + 1; first not before last where there is none. */
export interface Layer {
  readonly fill: Float64Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
}

/** A face is not filled in more layers than this; what is deeper goes with the first. */
const MOST_LAYERS = 50;

/**
 * @param thickest  the most that is built in one layer, mm. The last layer is the uppermost everywhere, so that what is laid first
 *                  is only what lies deeper: the hollows come up level before the whole is closed.
 */
export function tallyFace(face: Face, map: DepthMap, fill: FillMap, thickest: Mm): Tally {
  const { grid } = map;
  const lost = new Float64Array(fill.regions.length);
  const filled = new Float64Array(fill.regions.length);
  const byRow = face.worked === 'by-row';
  const bins = byRow ? grid.rows : grid.columns;
  const deepestFill = fill.regions.reduce(
    (most, { action, deepest }) => (action === 'fill' ? Math.max(most, deepest - fill.allowance) : most),
    0,
  );
  const layers = Array.from(
    { length: Math.min(MOST_LAYERS, Math.max(1, Math.ceil((deepestFill / thickest) * (1 - DUST)))) },
    (): Layer => ({
      fill: new Float64Array(bins),
      from: new Int32Array(bins).fill(byRow ? grid.columns : grid.rows),
      to: new Int32Array(bins),
    }),
  );
  for (let row = 0; row < grid.rows && fill.regions.length > 0; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      const label = fill.label[cell];
      if (label === 0) continue;
      const region = fill.regions[label - 1];
      const share = face.cover === null ? 1 : face.cover[cell];
      const all = share * cellVolume(face, map, row, column, 0);
      lost[label - 1] += all;
      if (region.action !== 'fill') continue;
      const amount = fill.allowance === 0 ? all : share * cellVolume(face, map, row, column, fill.allowance);
      if (amount === 0) continue;
      filled[label - 1] += amount;
      const [bin, across] = byRow ? [row, column] : [column, row];
      // From the uppermost layer down: what lies deeper than all above it.
      for (let above = 0, rest = amount; above < layers.length && rest > 0; above++) {
        const top = fill.allowance + (above + 1) * thickest;
        const isLast = above === layers.length - 1;
        const deeper = isLast ? 0 : share * cellVolume(face, map, row, column, top);
        addTo(layers[layers.length - 1 - above], bin, across, rest - deeper);
        rest = deeper;
      }
    }
  }
  return { lost, fill: filled, layers, deepestFill };
}

/** Writes into `layer`. */
function addTo(layer: Layer, bin: number, across: number, amount: Mm3): void {
  if (!(amount > 0)) return;
  layer.fill[bin] += amount;
  layer.from[bin] = Math.min(layer.from[bin], across);
  layer.to[bin] = Math.max(layer.to[bin], across + 1);
}

/** Metal of one whole cell between depth `from` and its depth, where that is damage, mm3. */
function cellVolume(face: Face, map: DepthMap, row: number, column: number, from: Mm): Mm3 {
  const { grid } = face;
  const cell = row * grid.columns + column;
  const slot = face.metal(row) === null && isEven(map, cell) ? -1 : map.slot[cell];
  if (slot < 0) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    return volumeBetween(face, row, column, u, grid.v0 + (column + 0.5) * grid.dv, from, map.depth[cell]);
  }
  let sum = 0;
  for (let i = 0; i < SAMPLES; i++) {
    const depth = map.samples[slot * SAMPLES + i];
    if (depth <= DAMAGE) continue;
    const u = grid.u0 + (row + SAMPLE_U[i]) * grid.du;
    sum += volumeBetween(face, row, column, u, grid.v0 + (column + SAMPLE_V[i]) * grid.dv, from, depth);
  }
  return sum / SAMPLES;
}
