import type { Face } from '../../geometry/part/face.ts';
import type { Part } from '../../geometry/part/part.ts';
import { vaneFaceOf } from '../../geometry/part/vane-mesh.ts';
import type { Mm, Vec3 } from '../../geometry/units.ts';
import { hubBlockAt } from './hub-walls.ts';
import { vaneHull } from './vane-hull.ts';

/** What stands no further than this before a place, mm, is the place's own surface. */
const NEAR: Mm = 1;

/**
 * Whether a place on a face is hidden behind another vane or the hub, as new; nothing stands before the face of a plate. For lines drawn
 * over the picture: a vane does not hide its own.
 */
export function isHiddenBehind({ body }: Part, on: Face, eye: Vec3, point: Vec3): boolean {
  if (body.kind !== 'impeller') return false;
  const off: Vec3 = [point[0] - eye[0], point[1] - eye[1], point[2] - eye[2]];
  const distance = Math.hypot(...off);
  const ray = { from: eye, along: [off[0] / distance, off[1] / distance, off[2] / distance] as const };
  const before = distance - NEAR;
  if (hubBlockAt(body.shape, ray) < before) return true;
  const own = vaneFaceOf(on.name)?.vane;
  return body.vanes.some(
    (vane) => vane.number !== own && (vaneHull(vane).hits(ray)[0]?.distance ?? distance) < before,
  );
}
