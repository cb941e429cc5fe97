import type { Mm } from '../units.ts';
import type { Below, Face } from './face.ts';
import type { VanePlace } from './vane-shape.ts';

/** A face of a vane, with the way from its own coordinates to the vane's and back. */
export interface VaneFace {
  readonly face: Face;
  /** Vane coordinates of the point `depth` below (u, v). */
  inVane(u: number, v: number, depth: Mm): VanePlace;
  /** How far a point of the vane lies below the face, and the grid point above it. */
  under(place: VanePlace): Below;
}

const OFF = Math.sqrt(0.6) / 2;

/** Adds up a function of s over from..to, Gauss-Legendre with three points: what a row of cells asks of a smooth camber. */
export function overRow(from: Mm, to: Mm, add: (s: Mm, weight: Mm) => void): void {
  const length = to - from;
  const middle = (from + to) / 2;
  add(middle - OFF * length, (5 / 18) * length);
  add(middle, (8 / 18) * length);
  add(middle + OFF * length, (5 / 18) * length);
}

/** Middle of each column. */
export function columnMiddles({ grid }: Pick<Face, 'grid'>): Float64Array {
  return Float64Array.from({ length: grid.columns }, (_, j) => grid.v0 + (j + 0.5) * grid.dv);
}
