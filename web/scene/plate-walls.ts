/** The walls and the back of a plate, which stop a ray and are no worn face. */
import type { Loop, Part, PlateBody } from '../../geometry/part/part.ts';
import type { Mm, Vec3 } from '../../geometry/units.ts';
import type { LivePart } from '../wear/live-faces.ts';
import type { Ray } from './camera.ts';
import { at, type Drawn, isLost } from './face-hit.ts';
import { type Surface, surfaceOf } from './surface.ts';

/** A ray through the very edge of the rim meets it, mm. */
const EDGE: Mm = 1e-6;
const INSIDE: Mm = 1;

/** How far the ray goes until the rim, the wall of a hole or the back stops it. */
export function plateBlockAt(live: LivePart, body: PlateBody, ray: Ray, { times }: Drawn): Mm {
  const { part, faces } = live;
  let nearest = backAt(part, body, ray);
  for (const loop of body.loops) {
    // A flat outline has no other face that its walls could hide.
    if (loop.kind !== 'circle' || loop.role === 'bore') continue;
    const t = wallAt(body, loop, ray);
    if (t < nearest && !isLost(faces, null, justInside(loop, at(ray, t)), times)) nearest = t;
  }
  return nearest;
}

type Circle = Extract<Loop, { kind: 'circle' }>;

/** A little into the metal from a point of a wall: the cells at the very edge may be no face. */
function justInside({ centre, radius, role }: Circle, [x, y, z]: Vec3): Vec3 {
  const scale = 1 + (role === 'edge' ? -INSIDE : INSIDE) / radius;
  return [centre[0] + (x - centre[0]) * scale, centre[1] + (y - centre[1]) * scale, z];
}

/** The rim stops a ray that comes from outside, a hole's wall one that comes from inside the hole. */
function wallAt(body: PlateBody, { centre, radius, role }: Circle, { from, along }: Ray): Mm {
  const [x, y] = [from[0] - centre[0], from[1] - centre[1]];
  const a = along[0] ** 2 + along[1] ** 2;
  const b = x * along[0] + y * along[1];
  const inside = b * b - a * (x * x + y * y - radius * radius);
  if (inside < 0 || a < 1e-12) return Number.POSITIVE_INFINITY;
  const t = (-b + (role === 'edge' ? -1 : 1) * Math.sqrt(inside)) / a;
  const below = body.height(from[0] + t * along[0], from[1] + t * along[1]) - from[2] - t * along[2];
  return t > 0 && below >= -EDGE && below <= body.thickness + EDGE ? t : Number.POSITIVE_INFINITY;
}

/** The back is the running face, `thickness` lower and seen from below: in a mirror at z = 0 it faces up. */
function backAt(part: Part, body: PlateBody, { from, along }: Ray): Mm {
  const [face] = part.faces;
  const mirrored: Ray = { from: [from[0], from[1], -from[2]], along: [along[0], along[1], -along[2]] };
  for (const t of backFor(part, body).meets(mirrored)) {
    const [x, y] = at(mirrored, t);
    const [u, v] = face.picture.kind === 'polar' ? [Math.hypot(x, y), Math.atan2(y, x)] : [y, x];
    if (face.holds(u, v)) return t;
  }
  return Number.POSITIVE_INFINITY;
}

function mirroredBack({ faces }: Part, body: PlateBody): Surface {
  const [face] = faces;
  return surfaceOf({
    ...face,
    normal: (u, v) => {
      const [x, y, z] = face.normal(u, v);
      return [-x, -y, z];
    },
    position: (u, v) => {
      const [x, y, z] = face.position(u, v, 0);
      return [x, y, body.thickness - z];
    },
  });
}

const backs = new WeakMap<Part, Surface>();

function backFor(part: Part, body: PlateBody): Surface {
  const surface = backs.get(part) ?? mirroredBack(part, body);
  backs.set(part, surface);
  return surface;
}
