import { depthAt } from '../depth/depth-at.ts';
import { type DepthMap, deepestOf, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import { type Face, isOnFace, toFacePoint } from '../part/face.ts';
import type { Part, Side } from '../part/part.ts';
import type { FacePoint, Mm } from '../units.ts';

export interface WallLeft {
  readonly face: string;
  readonly at: FacePoint;
  /** Metal between the worn surface and what lies behind it, along the depth, mm; 0 where it is worn through. */
  readonly remaining: Mm;
}

/**
 * Where the least metal is left behind a face of a part: behind both worn sides of a vane or a shroud, and only where there is still
 * metal (not where an edge is eaten away). Faces whose depth is no wall, tips and edges, do not count.
 * Exact for the map's cells and samples.
 */
export function thinnestWall(part: Part, mapOf: (face: Face) => DepthMap): WallLeft {
  return part.faces
    .map((face) => thinnestBehind(face, part, mapOf))
    .reduce((a, b) => (b.remaining < a.remaining ? b : a));
}

function thinnestBehind(face: Face, part: Part, mapOf: (face: Face) => DepthMap): WallLeft {
  const map = mapOf(face);
  const { grid } = map;
  const behind = part.faces.find(({ name }) => name === face.opposite) ?? null;
  const others = sidesBeside(part, face, behind);
  let remaining = Infinity;
  let [bestU, bestV] = [grid.u0, grid.v0];
  const look = (row: number, column: number, depth: Mm): void => {
    const u = grid.u0 + row * grid.du;
    if (!face.isWall(u)) return;
    const v = grid.v0 + column * grid.dv;
    const wall = face.wall(u);
    const left = wall - depth - (behind === null ? 0 : depthAt(mapOf(behind), behind, u, v));
    if (left >= remaining || isGone(others, mapOf, u, v, wall / 2)) return;
    remaining = left;
    [bestU, bestV] = [u, v];
  };
  // Sound on both sides a wall is even along a row, and one place of the row tells.
  const isSound =
    deepestOf(map) === 0 && (behind === null || deepestOf(mapOf(behind)) === 0) && face.cover === null;
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < (isSound ? 1 : grid.columns); column++) {
      const cell = row * grid.columns + column;
      if (face.cover !== null && face.cover[cell] === 0) continue;
      const slot = map.slot[cell];
      if (slot < 0) {
        look(row + 0.5, column + 0.5, map.depth[cell]);
        continue;
      }
      for (let i = 0; i < SAMPLES; i++) {
        const [u, v] = [row + SAMPLE_U[i], column + SAMPLE_V[i]];
        if (isOnFace(face, cell, u, v)) look(u, v, map.samples[slot * SAMPLES + i]);
      }
    }
  }
  return { face: face.name, at: toFacePoint(face, bestU, bestV), remaining: Math.max(0, remaining) };
}

/** The faces that may have taken the wall behind this one from the side: those of its corners, but not the one it is the back of. */
function sidesBeside(part: Part, face: Face, behind: Face | null): readonly Side[] {
  return part.corners.flatMap(({ over, besides }) =>
    over === face ? besides.filter((side) => side.face !== behind) : [],
  );
}

/** True when the middle of the wall is lost to another face. */
function isGone(
  others: readonly Side[],
  mapOf: (face: Face) => DepthMap,
  u: number,
  v: number,
  middle: Mm,
): boolean {
  return others.some(({ face, seenFrom }) => {
    const place = seenFrom(u, v, middle);
    return place.depth >= 0 && place.depth < depthAt(mapOf(face), face, place.u, place.v);
  });
}
