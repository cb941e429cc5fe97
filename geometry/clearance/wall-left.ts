import type { FacePoint, Mm } from '../units.ts';
import type { WallEstimate } from './thin-places.ts';

export interface WallLeft {
  readonly face: string;
  readonly at: FacePoint;
  /** Metal between the worn surface and what lies behind it, along the depth, mm; 0 where it is worn through. */
  readonly remaining: Mm;
}

/**
 * Where the least metal is left of a part: behind both worn sides of a vane or a shroud, and only where there is still metal (not
 * where an edge is eaten away). Faces whose depth is no wall, tips and edges, do not count.
 */
export function thinnestOf(walls: readonly WallEstimate[]): WallLeft {
  const { face, at, remaining } = walls.reduce((a, b) => (b.remaining < a.remaining ? b : a));
  return { face, at, remaining };
}
