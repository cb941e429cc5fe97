import { Vector2, Vector3 } from 'three';
import type { Part } from '../../geometry/part/part.ts';
import { ofSide, type Uniforms, type WornTextures } from './worn-textures.ts';

/** What a face needs to know of the one it shares a corner with; see `SIDE` in the shaders. */
export function cornerOf({ corners, faces }: Part, worn: readonly WornTextures[], i: number): Uniforms {
  const corner = corners.find(({ over, side }) => over === faces[i] || side === faces[i]);
  const other = corner && worn[faces.indexOf(corner.over === faces[i] ? corner.side : corner.over)];
  const side = ofSide(other ?? worn[i]);
  if (corner === undefined) {
    return {
      ...side,
      uCorner: { value: 0 },
      uCornerSize: { value: new Vector3() },
      uSlope: { value: new Vector2(0, 1) },
    };
  }
  const { over, side: bore } = corner;
  const [x, y] = bore.position(0, 0, 0);
  const [nx, , nz] = over.normal(over.grid.u0, 0);
  const size = new Vector3(Math.hypot(x, y), bore.grid.rows * bore.grid.du, over.grid.rows * over.grid.du);
  return {
    ...side,
    uCorner: { value: over === faces[i] ? 1 : 2 },
    uCornerSize: { value: size },
    uSlope: { value: new Vector2(-nx, nz) },
  };
}
