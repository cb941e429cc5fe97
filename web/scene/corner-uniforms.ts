import { Vector2, Vector3 } from 'three';
import type { Part } from '../../geometry/part/part.ts';
import { ofSide, type Uniforms, type WornTextures } from './worn-textures.ts';

/** What a face needs to know of the one it shares metal with; see `SIDE` in the shaders. */
export function cornerOf({ corners, faces }: Part, worn: readonly WornTextures[], i: number): Uniforms {
  const corner = corners
    .flatMap(({ over, sides }) => sides.map(({ face }) => ({ over, side: face })))
    .find(({ over, side }) => over === faces[i] || side === faces[i]);
  const none = {
    uCorner: { value: 0 },
    uCornerSize: { value: new Vector3() },
    uSlope: { value: new Vector2(0, 1) },
  };
  if (corner === undefined) return { ...ofSide(worn[i]), ...none };
  const { over, side } = corner;
  const other = ofSide(worn[faces.indexOf(over === faces[i] ? side : over)]);
  if (over.opposite === side.name) {
    // The two sides of one wall: through it where together they have taken all of it.
    const wall = new Vector3(over.wall(over.grid.u0), 0, 0);
    return { ...other, ...none, uCorner: { value: 3 }, uCornerSize: { value: wall } };
  }
  const [x, y] = side.position(0, 0, 0);
  const [nx, , nz] = over.normal(over.grid.u0, 0);
  const size = new Vector3(Math.hypot(x, y), side.grid.rows * side.grid.du, over.grid.rows * over.grid.du);
  return {
    ...other,
    uCorner: { value: over === faces[i] ? 1 : 2 },
    uCornerSize: { value: size },
    uSlope: { value: new Vector2(-nx, nz) },
  };
}
