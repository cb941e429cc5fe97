/**
 * The surface that gauge readings speak for, on a grid coarser than the cells of the face: kriging costs readings times places, and
 * what lies between coarse places is smooth. A cubic runs through them.
 */
import type { Face, Grid } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { depthsAt, type Kriging, type Progress } from './kriging/kriging.ts';
import { placesOf } from './reading-places.ts';

/** Nodes stand every `step` cells along both ways, the first one step before the grid's corner. */
export interface ReadSurface {
  readonly step: number;
  readonly rows: number;
  readonly columns: number;
  /** Depth at the nodes, rows x columns, mm; may lie below 0. */
  readonly depth: Float32Array<ArrayBuffer>;
  /** Where was read, as grid places, and the surface exactly there. */
  readonly spots: readonly ReadSpot[];
}

export interface ReadSpot {
  readonly u: number;
  readonly v: number;
  readonly depth: Mm;
}

/** Nodes stand no further apart than this share of the length over which depths are alike: a cubic then errs by less than 0.001 mm. */
const CLOSE = 1 / 10;
const LARGEST_STEP = 16;
/** Nodes beyond the grid's edges that the cubic leans on: one before, two after and one for what the last step cuts off. */
const MARGIN = 4;

/** The surface a kriging gives on a face. @param at  grid places of its readings */
export function readSurface(
  face: Face,
  kriging: Kriging,
  at: readonly (readonly [u: number, v: number])[],
  onProgress: Progress = () => {},
): ReadSurface {
  const { grid } = face;
  const step = stepFor(face, kriging.covariance.length);
  const rows = Math.floor(grid.rows / step) + MARGIN;
  const columns = Math.floor(grid.columns / step) + MARGIN;
  const nodes: [number, number][] = [];
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < columns; j++) {
      nodes.push([grid.u0 + (i - 1) * step * grid.du, grid.v0 + (j - 1) * step * grid.dv]);
    }
  }
  const there = depthsAt(kriging, placesOf(face, at));
  return {
    step,
    rows,
    columns,
    depth: Float32Array.from(depthsAt(kriging, placesOf(face, nodes), onProgress)),
    spots: at.map(([u, v], i) => ({ u, v, depth: there[i] })),
  };
}

function stepFor({ grid, picture }: Face, length: Mm): number {
  const polar = picture.kind === 'polar';
  const along = polar ? grid.du / picture.slant : grid.du;
  const across = grid.dv * (polar ? grid.u0 + grid.rows * grid.du : picture.columnScale);
  let step = LARGEST_STEP;
  while (step > 1 && step * Math.max(along, across) > CLOSE * length) step /= 2;
  return step;
}

/**
 * Depth of the surface at a grid place, mm; may lie below 0. The cubic of Catmull and Rom both ways.
 * A place off the grid takes the surface of the nearest edge.
 */
export function surfaceDepth(
  { step, rows, columns, depth }: ReadSurface,
  grid: Grid,
  u: number,
  v: number,
): Mm {
  const a = clamp((u - grid.u0) / grid.du / step, rows - MARGIN + 0.999);
  let fromStart = (v - grid.v0) / grid.dv;
  if (grid.wraps) fromStart -= grid.columns * Math.floor(fromStart / grid.columns);
  const b = clamp(fromStart / step, columns - MARGIN + 0.999);
  const i = Math.floor(a);
  const j = Math.floor(b);
  const s = b - j;
  const t = a - i;
  const at = i * columns + j;
  return cubic(
    t,
    cubic(s, depth[at], depth[at + 1], depth[at + 2], depth[at + 3]),
    cubic(s, depth[at + columns], depth[at + columns + 1], depth[at + columns + 2], depth[at + columns + 3]),
    cubic(
      s,
      depth[at + 2 * columns],
      depth[at + 2 * columns + 1],
      depth[at + 2 * columns + 2],
      depth[at + 2 * columns + 3],
    ),
    cubic(
      s,
      depth[at + 3 * columns],
      depth[at + 3 * columns + 1],
      depth[at + 3 * columns + 2],
      depth[at + 3 * columns + 3],
    ),
  );
}

/** Between b at 0 and c at 1, with the slopes that a and d give it. */
function cubic(t: number, a: number, b: number, c: number, d: number): number {
  return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}
