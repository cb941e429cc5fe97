/**
 * What lies under the pointer, found on the shapes themselves and never on triangles: the worn surface as it is drawn, holes missed,
 * nothing seen through metal.
 */
import { depthAt } from '../../geometry/depth/depth-at.ts';
import { type Face, toFacePoint } from '../../geometry/part/face.ts';
import type { Loop, Part } from '../../geometry/part/part.ts';
import type { FacePoint, Mm, Vec3 } from '../../geometry/units.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import type { Ray } from './camera.ts';
import { type Surface, surfaceOf } from './surface.ts';

/** A point of a face under the pointer. */
export interface Hit {
  readonly live: LiveFace;
  /** In the face's own two coordinates, ours units. */
  readonly point: FacePoint;
  readonly u: number;
  readonly v: number;
  /** Along the ray, mm. */
  readonly distance: Mm;
}

/** How the wear is drawn: the pointer goes by what is seen. */
export interface Drawn {
  /** Times its true depth. */
  readonly times: number;
  /** No wear is deeper than this, mm. */
  readonly deepest: Mm;
}

/** The face point a ray meets first, or null when it meets none, or something else before. */
export function pick(live: LivePart, ray: Ray, drawn: Drawn): Hit | null {
  let nearest = blockedAt(live, ray, drawn);
  let found: Hit | null = null;
  for (const face of live.faces) {
    const hit = hitOn(face, live.faces, ray, drawn);
    if (hit === null || hit.distance >= nearest) continue;
    nearest = hit.distance;
    found = hit;
  }
  return found;
}

/**
 * Where a ray meets the nominal surface of a face carried on past its edges and over its holes: how a stroke goes on when the
 * pointer leaves the face.
 */
export function pickBeyond({ face }: LiveFace, ray: Ray): FacePoint | null {
  const surface = surfaceFor(face);
  const [t] = surface.meets(ray);
  if (t === undefined) return null;
  const { u, v } = surface.below(at(ray, t));
  return toFacePoint(face, u, v);
}

/** Steps of the walk from the nominal surface down to the worn one, mm below it. */
const STEP: Mm = 0.2;
const HALVINGS = 12;
/** Less than this down for each mm along, the ray runs in the surface: nothing can be told there. */
const GRAZING = 1e-4;
/** A ray through the very edge of the rim meets it, mm. */
const EDGE: Mm = 1e-6;
const INSIDE: Mm = 1;

function hitOn(live: LiveFace, faces: readonly LiveFace[], ray: Ray, { times, deepest }: Drawn): Hit | null {
  const { face, map } = live;
  const surface = surfaceFor(face);
  for (const start of surface.meets(ray)) {
    const slope = surface.below(at(ray, start + 1)).depth;
    if (slope < GRAZING) continue;
    // In metal, in front of it, or off the face; where another face has taken the metal there is no face either.
    const isWithin = (t: number): boolean | null => {
      const point = at(ray, t);
      const { depth, u, v } = surface.below(point);
      if (!face.holds(u, v) || isLost(faces, live, point, times)) return null;
      return depth >= times * depthAt(map, face, u, v) - 1e-9;
    };
    const end = start + (times * deepest + STEP) / slope;
    let before: boolean | null = false;
    for (let t = start; t <= end; t += STEP / slope) {
      const now = isWithin(t);
      if (now === true) {
        if (t === start) return hitAt(live, surface, ray, t);
        const last = t - STEP / slope;
        const onFace = before === null ? between((at) => isWithin(at) !== null, last, t) : last;
        // Coming under the surface from the side is meeting a wall, not the face.
        if (isWithin(onFace) === true) break;
        return hitAt(
          live,
          surface,
          ray,
          between((at) => isWithin(at) === true, onFace, t),
        );
      }
      before = now;
    }
  }
  return null;
}

/** True where another face is worn so deep that the metal behind this one is gone. */
function isLost(faces: readonly LiveFace[], but: LiveFace | null, point: Vec3, times: number): boolean {
  return faces.some(({ face, map }) => {
    if (face === but?.face) return false;
    const { depth, u, v } = surfaceFor(face).below(point);
    return depth >= 0 && depth < times * depthAt(map, face, u, v);
  });
}

/** Halves the step in which something becomes true. */
function between(isTrue: (t: number) => boolean, notYet: number, already: number): number {
  let [a, b] = [notYet, already];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (a + b) / 2;
    if (isTrue(middle)) b = middle;
    else a = middle;
  }
  return b;
}

function hitAt(live: LiveFace, surface: Surface, ray: Ray, distance: number): Hit {
  const { u, v } = surface.below(at(ray, distance));
  return { live, point: toFacePoint(live.face, u, v), u, v, distance };
}

/** How far the ray goes until the rim, the wall of a hole or the back stops it. */
function blockedAt(live: LivePart, ray: Ray, { times }: Drawn): Mm {
  const { part, faces } = live;
  let nearest = backAt(part, ray);
  for (const loop of part.body.loops) {
    // A flat outline has no other face that its walls could hide.
    if (loop.kind !== 'circle' || loop.role === 'bore') continue;
    const t = wallAt(part, loop, ray);
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
function wallAt({ body }: Part, { centre, radius, role }: Circle, { from, along }: Ray): Mm {
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
function backAt(part: Part, { from, along }: Ray): Mm {
  const [face] = part.faces;
  const mirrored: Ray = { from: [from[0], from[1], -from[2]], along: [along[0], along[1], -along[2]] };
  for (const t of backFor(part).meets(mirrored)) {
    const [x, y] = at(mirrored, t);
    const [u, v] = face.picture.kind === 'polar' ? [Math.hypot(x, y), Math.atan2(y, x)] : [y, x];
    if (face.holds(u, v)) return t;
  }
  return Number.POSITIVE_INFINITY;
}

function mirroredBack({ faces, body }: Part): Surface {
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

const at = ({ from, along }: Ray, t: number): Vec3 => [
  from[0] + t * along[0],
  from[1] + t * along[1],
  from[2] + t * along[2],
];

const surfaces = new WeakMap<Face, Surface>();
const backs = new WeakMap<Part, Surface>();

function surfaceFor(face: Face): Surface {
  const surface = surfaces.get(face) ?? surfaceOf(face);
  surfaces.set(face, surface);
  return surface;
}

function backFor(part: Part): Surface {
  const surface = backs.get(part) ?? mirroredBack(part);
  backs.set(part, surface);
  return surface;
}
