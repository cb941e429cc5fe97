import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import { type Face, isOnFace, toFacePoint } from '../part/face.ts';
import type { FacePoint, Mm } from '../units.ts';

export interface WallLeft {
  readonly face: string;
  readonly at: FacePoint;
  /** Metal behind the worn surface, along the depth, mm; 0 where it is worn through. */
  readonly remaining: Mm;
}

/** Where the least metal is left behind a face. Exact for the map's cells and samples. */
export function thinnestWall(face: Face, map: DepthMap): WallLeft {
  const { grid } = map;
  let remaining = Infinity;
  let u = grid.u0;
  let v = grid.v0;
  const look = (row: number, column: number, depth: Mm): void => {
    const atU = grid.u0 + row * grid.du;
    const atV = grid.v0 + column * grid.dv;
    const left = face.wall(atU) - depth;
    if (left >= remaining) return;
    remaining = left;
    u = atU;
    v = atV;
  };
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
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
  return { face: face.name, at: toFacePoint(face, u, v), remaining: Math.max(0, remaining) };
}
