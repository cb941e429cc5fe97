/**
 * The faces of a vane carried on past their edges: a stroke that runs off a vane goes on where the pointer is, on the same face. A
 * side goes on along its own curve and straight past its ends, a tip at the height of the vane, an edge in its own plane.
 */
import { type Face, toFacePoint } from '../../geometry/part/face.ts';
import type { VaneFaceName } from '../../geometry/part/vane-mesh.ts';
import type { VaneShape } from '../../geometry/part/vane-shape.ts';
import type { FacePoint, Mm, Vec3 } from '../../geometry/units.ts';
import type { Ray } from './camera.ts';
import { at } from './face-hit.ts';

/** The point of the face's own coordinates that a ray meets on it or beyond it; null where it does not, or only from inside. */
export function vaneBeyond(shape: VaneShape, face: Face, name: VaneFaceName, ray: Ray): FacePoint | null {
  const t = distanceTo(shape, name, ray);
  if (t === null) return null;
  const { u, v } = face.below(at(ray, t));
  return toFacePoint(face, u, v);
}

function distanceTo(shape: VaneShape, name: VaneFaceName, ray: Ray): Mm | null {
  switch (name) {
    case 'pressure':
      return toSide(shape, 1, ray);
    case 'suction':
      return toSide(shape, -1, ray);
    case 'tip':
      return toTip(shape, ray);
    case 'leading-edge':
      return toEnd(shape, 0, -1, ray);
    case 'trailing-edge':
      return toEnd(shape, shape.length, 1, ray);
  }
}

const PIECES = 96;
/** How far a side is carried on past its ends, as a share of its length. */
const PAST = 0.25;

/** A side stands upright: in plan it is a line, and so is the ray. */
function toSide(shape: VaneShape, sign: 1 | -1, { from, along }: Ray): Mm | null {
  const { length } = shape;
  const places = Array.from({ length: PIECES + 1 }, (_, i) => {
    const s = length * (-PAST + ((1 + 2 * PAST) * i) / PIECES);
    return shape.position(s, (sign * shape.thickness(s)) / 2, 0);
  });
  let nearest: Mm | null = null;
  for (let i = 0; i < PIECES; i++) {
    const [a, b] = [places[i], places[i + 1]];
    const [ex, ey] = [b[0] - a[0], b[1] - a[1]];
    // The ray comes from outside where it runs against the way out of the side.
    const size = along[0] * ey - along[1] * ex;
    if (Math.abs(size) < 1e-12) continue;
    const [ox, oy] = [a[0] - from[0], a[1] - from[1]];
    const t = (ox * ey - oy * ex) / size;
    const share = (ox * along[1] - oy * along[0]) / size;
    if (share < 0 || share > 1 || t <= 0 || (nearest !== null && t >= nearest)) continue;
    const middle = length * (-PAST + ((1 + 2 * PAST) * (i + 0.5)) / PIECES);
    const { nx, ny } = shape.camber(middle);
    if (sign * (along[0] * nx + along[1] * ny) < 0) nearest = t;
  }
  return nearest;
}

const TIP_STEPS = 8;

/** A tip slopes little: a few steps from the height of the vane under the last place. */
function toTip(shape: VaneShape, ray: Ray): Mm | null {
  const { from, along } = ray;
  if (along[2] > -1e-3) return null;
  let height = shape.height(shape.length / 2);
  for (let i = 0; i < TIP_STEPS; i++) {
    const { s } = shape.locate(at(ray, (height - from[2]) / along[2]));
    height = shape.height(s);
  }
  const t = (height - from[2]) / along[2];
  return t > 0 ? t : null;
}

/** The plane through an end of the camber. @param out  1 where the way out of the metal is along it, -1 where it is against it */
function toEnd(shape: VaneShape, s: Mm, out: 1 | -1, { from, along }: Ray): Mm | null {
  const { x, y, tx, ty } = shape.camber(s);
  const normal: Vec3 = [out * tx, out * ty, 0];
  const against = normal[0] * along[0] + normal[1] * along[1];
  if (against > -1e-6) return null;
  const t = (normal[0] * (x - from[0]) + normal[1] * (y - from[1])) / against;
  return t > 0 ? t : null;
}
