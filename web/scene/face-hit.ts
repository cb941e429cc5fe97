/** Where a ray meets the worn surface of a face that is a plane, a cone or a cylinder: the nominal shape first, then a walk inward. */
import { cellAt, depthAt } from '../../geometry/depth/depth-at.ts';
import { type Face, toFacePoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm, Vec3 } from '../../geometry/units.ts';
import type { LiveFace } from '../wear/live-faces.ts';
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

/** Steps of the walk from the nominal surface down to the worn one, mm below it. */
const STEP: Mm = 0.2;
const HALVINGS = 12;
/** Less than this down for each mm along, the ray runs in the surface: nothing can be told there. */
const GRAZING = 1e-4;

/**
 * Where a ray meets a worn face as it is drawn.
 * @param faces  those that may have taken the metal behind it
 */
export function hitOn(
  live: LiveFace,
  faces: readonly LiveFace[],
  ray: Ray,
  { times, deepest }: Drawn,
): Hit | null {
  const { face, map } = live;
  const surface = surfaceFor(face);
  for (const start of surface.meets(ray)) {
    const slope = surface.below(at(ray, start + 1)).depth;
    if (slope < GRAZING) continue;
    // In metal, in front of it, or off the face; where another face has taken the metal there is no face either.
    const isWithin = (t: number): boolean | null => {
      const point = at(ray, t);
      const { depth, u, v } = surface.below(point);
      if (!isHeld(face, u, v) || isLost(faces, live, point, times)) return null;
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

/** What `holds` says, asked of the cover first: few cells are cut by an edge. */
export function isHeld(face: Face, u: number, v: number): boolean {
  const cell = face.cover === null ? -1 : cellAt(face, u, v);
  const share = cell < 0 ? null : face.cover?.[cell];
  return share === 1 || (share !== 0 && face.holds(u, v));
}

/** True where another face is worn so deep that the metal behind this one is gone. */
export function isLost(
  faces: readonly LiveFace[],
  but: LiveFace | null,
  point: Vec3,
  times: number,
): boolean {
  return faces.some(({ face, map }) => {
    if (face === but?.face) return false;
    const { depth, u, v } = surfaceFor(face).below(point);
    return depth >= 0 && depth < times * depthAt(map, face, u, v);
  });
}

/** Halves the step in which something becomes true. */
export function between(isTrue: (t: number) => boolean, notYet: number, already: number): number {
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

/** A point on a ray. */
export const at = ({ from, along }: Ray, t: number): Vec3 => [
  from[0] + t * along[0],
  from[1] + t * along[1],
  from[2] + t * along[2],
];

const surfaces = new WeakMap<Face, Surface>();

export function surfaceFor(face: Face): Surface {
  const surface = surfaces.get(face) ?? surfaceOf(face);
  surfaces.set(face, surface);
  return surface;
}
