import type { DepthMap } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Part } from '../part/part.ts';
import { type Wall, walkWall, wallsOf } from './walk-wall.ts';

/** What is left of a wall, cell by cell of the grid that its two sides share. */
export interface WallMap extends Wall {
  /** Thinnest place of each cell, mm, 0 where it is worn through; NaN where there is no wall: off the face, on a nose, eaten away. */
  readonly remaining: Float32Array;
}

/**
 * The map of the wall that a face is a side of.
 * @returns null for a face whose depth is no wall: tips and edges
 */
export function wallMap(part: Part, face: string, mapOf: (face: Face) => DepthMap): WallMap | null {
  const wall = wallsOf(part).find((known) => known.face.name === face || known.behind?.name === face);
  if (wall === undefined) return null;
  const { rows, columns } = wall.face.grid;
  const remaining = new Float32Array(rows * columns).fill(Number.NaN);
  walkWall(wall, part, mapOf, (place) => {
    if (place.isGone()) return;
    const left = Math.max(0, place.wall - place.depth - place.behind);
    if (!(remaining[place.cell] <= left)) remaining[place.cell] = left;
  });
  return { ...wall, remaining };
}
