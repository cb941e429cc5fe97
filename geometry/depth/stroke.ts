import type { Stroke } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import type { FacePoint, Fraction, Mm } from '../units.ts';
import { blended } from './blend.ts';
import { type BrushPath, beginPath, drawTo, endPath } from './brush-path.ts';
import type { CellBlock } from './chart.ts';
import { type DepthMap, mergeCell, SAMPLES, settleCell, splitCell } from './depth-map.ts';

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
  const { depth, grid } = map;
  const { blend, clear, depth: mark } = stroke;
  const hard = stroke.edge === 'hard';
  const deepest = blend === 'deepest';
  const inverse = 1 / (stroke.radius * stroke.radius);
  let rowEnd = 0;
  let wall = 0;
  for (let i = 0; i < path.changedCount; i++) {
    const cell = changed[i];
    // Cells come row by row, and the wall is even along a row.
    if (i === 0 || cell >= rowEnd) {
      const row = Math.floor(cell / grid.columns);
      rowEnd = (row + 1) * grid.columns;
      wall = face.wall(grid.u0 + (row + 0.5) * grid.du);
    }
    if (slot[cell] >= 0) {
      settleSplit(inHand, cell, wall);
      continue;
    }
    const rest = 1 - nearest[cell] * inverse;
    if (rest < 0) continue;
    const weight = hard ? 1 : rest * rest;
    const was = before[cell];
    const now = clear
      ? was * (1 - weight)
      : deepest
        ? Math.max(was, weight * mark)
        : blended(was, weight * mark, blend, wall);
    depth[cell] = Math.min(now, wall);
  }
}

function settleSplit(inHand: StrokeInHand, cell: number, wall: Mm): void {
  const { path, stroke } = inHand;
  const { map, sampleNearest, sampleBefore } = path;
  const r2 = stroke.radius * stroke.radius;
  const hard = stroke.edge === 'hard';
  const whole = hard && path.nearest[cell] < path.covered;
  const slot = path.slot[cell];
  if (whole && path.wasSplit[slot] === 0) {
    if (map.slot[cell] >= 0) mergeCell(map, cell);
    map.depth[cell] = pressed(path.before[cell], 1, stroke, wall);
    return;
  }
  const first = splitCell(map, cell);
  const from = slot * SAMPLES;
  let closest = from;
  for (let i = from; i < from + SAMPLES; i++) {
    if (sampleNearest[i] < sampleNearest[closest]) closest = i;
    const rest = whole ? 1 : 1 - sampleNearest[i] / r2;
    const before = sampleBefore[i];
    map.samples[first + i - from] =
      rest >= 0 ? pressed(before, hard ? 1 : rest * rest, stroke, wall) : before;
  }
  // The brush's centre line passes within the half diagonal: take it as met, so the deepest point is the depth that was set.
  if (!hard && !stroke.clear && path.nearest[cell] < path.diagonal * path.diagonal) {
    map.samples[first + closest - from] = pressed(sampleBefore[closest], 1, stroke, wall);
  }
  settleCell(map, cell);
}

/** Depth under the brush where it weighs 0..1. */
function pressed(before: Mm, weight: Fraction, stroke: StrokeInHand['stroke'], wall: Mm): Mm {
  return stroke.clear ? before * (1 - weight) : blended(before, stroke.depth * weight, stroke.blend, wall);
}
