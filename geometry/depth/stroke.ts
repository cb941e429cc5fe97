import type { Stroke } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import type { FacePoint, Fraction, Mm } from '../units.ts';
import { blended } from './blend.ts';
import { type BrushPath, beginPath, drawTo, endPath } from './brush-path.ts';
import type { CellBlock } from './chart.ts';
import { type DepthMap, SAMPLES, settleCell, splitCell } from './depth-map.ts';

/** Brushes of a radius under this many cells are sampled inside every cell: their profile bends too fast for centres alone. */
const COARSE_BRUSH = 6;

/** A brush on its way: the map as it was, how near each cell has come, and what the stroke does there. */
export interface StrokeInHand {
  readonly stroke: Omit<Stroke, 'path' | 'kind' | 'face'>;
  readonly path: BrushPath;
  readonly coarse: boolean;
}

/**
 * Presses a whole brush stroke into a depth map. Writes into `map`. A stroke counts once however often it passes a place.
 * Distance to the path is taken in the face's flat picture; hard d, soft d (1 - (x/R)^2)^2, both 0 beyond R; clear takes that share away.
 * Accuracy: exact at cell centres and samples; a hard edge lies true to 1/32 cell.
 * Source: job format, "Mark"; tests/geometry/depth/stroke.test.ts
 */
export function applyStroke(map: DepthMap, face: Face, stroke: Stroke): void {
  const inHand = beginStroke(map, face, stroke);
  for (const point of stroke.path) extendStroke(inHand, point);
  endStroke(inHand);
}

/** Puts the brush down. Nothing is written until the first `extendStroke`. */
export function beginStroke(map: DepthMap, face: Face, stroke: StrokeInHand['stroke']): StrokeInHand {
  return {
    stroke,
    path: beginPath(map, face, stroke.radius, stroke.edge),
    coarse: stroke.radius < COARSE_BRUSH * map.grid.du,
  };
}

/** Draws the brush on to a point of the face. Writes into the map; returns the block it may have changed, null when it misses the face. */
export function extendStroke(inHand: StrokeInHand, point: FacePoint): CellBlock | null {
  const { path } = inHand;
  const [u, v] = toGridPoint(path.face, point);
  const block = drawTo(path, u, v, inHand.coarse);
  settle(inHand);
  return block;
}

/** Lifts the brush. The map keeps what was pressed. */
export function endStroke(inHand: StrokeInHand): void {
  endPath(inHand.path);
}

/** Works out the depth of every cell the last piece of path came nearer to. Writes into the map. */
function settle(inHand: StrokeInHand): void {
  const { path, stroke } = inHand;
  const { map, face, changed, slot, nearest, before } = path;
  const { grid } = map;
  const r2 = stroke.radius * stroke.radius;
  for (let i = 0; i < path.changedCount; i++) {
    const cell = changed[i];
    const row = Math.floor(cell / grid.columns);
    const wall = face.wall(
      grid.u0 + (row + 0.5) * grid.du,
      grid.v0 + (cell - row * grid.columns + 0.5) * grid.dv,
    );
    if (slot[cell] >= 0) settleSplit(inHand, cell, wall);
    else if (nearest[cell] <= r2) map.depth[cell] = pressed(before[cell], nearest[cell] / r2, stroke, wall);
  }
}

function settleSplit(inHand: StrokeInHand, cell: number, wall: Mm): void {
  const { path, stroke } = inHand;
  const { map } = path;
  const r2 = stroke.radius * stroke.radius;
  // The brush's centre line passes within the half diagonal: take it as met, so the deepest point is the depth that was set.
  const met = stroke.edge === 'soft' && !stroke.clear && path.nearest[cell] < path.diagonal * path.diagonal;
  const first = splitCell(map, cell);
  const from = path.slot[cell] * SAMPLES;
  let closest = from;
  for (let i = 0; i < SAMPLES; i++) {
    const square = path.sampleNearest[from + i];
    if (square < path.sampleNearest[closest]) closest = from + i;
    map.samples[first + i] =
      square <= r2
        ? pressed(path.sampleBefore[from + i], square / r2, stroke, wall)
        : path.sampleBefore[from + i];
  }
  if (met) map.samples[first + closest - from] = pressed(path.sampleBefore[closest], 0, stroke, wall);
  settleCell(map, cell);
}

/** Depth under the brush at (x/R)^2 = q. */
function pressed(before: Mm, q: Fraction, stroke: StrokeInHand['stroke'], wall: Mm): Mm {
  const weight = stroke.edge === 'hard' ? 1 : (1 - q) * (1 - q);
  if (stroke.clear) return before * (1 - weight);
  return blended(before, stroke.depth * weight, stroke.blend, wall);
}
