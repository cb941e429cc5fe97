/** What lies under the pointer on an impeller: the worn vane or shroud a ray meets first, unless hub, rim or sound metal stops it. */
import { depthAt } from '../../geometry/depth/depth-at.ts';
import { toFacePoint } from '../../geometry/part/face.ts';
import type { ImpellerBody } from '../../geometry/part/part.ts';
import { type VaneFaceName, vaneFaceOf } from '../../geometry/part/vane-mesh.ts';
import type { VanePlace, VaneShape } from '../../geometry/part/vane-shape.ts';
import type { Mm } from '../../geometry/units.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import type { Ray } from './camera.ts';
import { at, between, type Drawn, type Hit, hitOn, isHeld } from './face-hit.ts';
import { hubBlockAt } from './hub-walls.ts';
import { vaneHull } from './vane-hull.ts';

export function pickOnImpeller(live: LivePart, body: ImpellerBody, ray: Ray, drawn: Drawn): Hit | null {
  const shroud = live.faces.filter(({ face }) => vaneFaceOf(face.name) === null);
  let nearest = Math.min(hubBlockAt(body.shape, ray), footAt(shroud, ray));
  let found: Hit | null = null;
  const take = (hit: Hit | null) => {
    if (hit === null || hit.distance >= nearest) return;
    nearest = hit.distance;
    found = hit;
  };
  const within = { ...drawn, deepest: Math.min(drawn.deepest, body.shape.shroudThickness) };
  for (const face of shroud) take(uncovered(hitOn(face, shroud, ray, within), ray));
  for (const vane of body.vanes) {
    const met = meetVane(vane, facesOf(live, vane), ray, drawn.times, nearest);
    if (met === null) continue;
    nearest = met.distance;
    found = met.hit;
  }
  return found;
}

type VaneFaces = Readonly<Record<VaneFaceName, LiveFace>>;

const facesOfPart = new WeakMap<LivePart, Map<number, VaneFaces>>();

function facesOf(live: LivePart, { number }: VaneShape): VaneFaces {
  const known = facesOfPart.get(live) ?? grouped(live);
  facesOfPart.set(live, known);
  return known.get(number) as VaneFaces;
}

function grouped({ faces }: LivePart): Map<number, VaneFaces> {
  const vanes = new Map<number, VaneFaces>();
  for (const face of faces) {
    const on = vaneFaceOf(face.face.name);
    if (on !== null) vanes.set(on.vane, { ...vanes.get(on.vane), [on.name]: face } as VaneFaces);
  }
  return vanes;
}

/** Where a ray meets the shroud under a vane, which is no face: laid open where the vane is gone. */
function footAt(shroud: readonly LiveFace[], { from, along }: Ray): Mm {
  const front = shroud.find(({ face }) => face.name === 'shroud/front');
  const distance = -from[2] / along[2];
  if (front === undefined || along[2] >= 0 || distance <= 0) return Number.POSITIVE_INFINITY;
  const { u, v } = front.face.below(at({ from, along }, distance));
  const [radius] = front.face.coordinates;
  const isOnRing = u >= radius.from && u <= radius.to;
  return isOnRing && !isHeld(front.face, u, v) ? distance : Number.POSITIVE_INFINITY;
}

/** A hit on the worn shroud, unless what a vane stands on lies before it: below the face as new there is metal wherever there is no face. */
function uncovered(hit: Hit | null, ray: Ray): Hit | null {
  if (hit === null) return null;
  const { face } = hit.live;
  const depth = face.below(at(ray, hit.distance)).depth;
  const start = hit.distance - depth / Math.abs(ray.along[2]);
  for (let t = start; t < hit.distance; t += STEP) {
    const { u, v } = face.below(at(ray, t));
    if (!isHeld(face, u, v)) return null;
  }
  return hit;
}

interface Met {
  readonly distance: Mm;
  /** Null where the vane is met and none of its faces. */
  readonly hit: Hit | null;
}

/** Steps of the walk through what is worn away, mm along the ray. */
const STEP: Mm = 0.2;
/** Beyond the vane as new by more than this, mm, a walk has left it. */
const OUT: Mm = 0.02;
const DUST: Mm = 1e-6;
const JUST: Mm = 1e-3;

/** The worn vane as it is drawn: the first place on the ray that no face has sunk past. */
function meetVane(shape: VaneShape, faces: VaneFaces, ray: Ray, times: number, before: Mm): Met | null {
  const locate = (t: number) => shape.locate(at(ray, t));
  let passed = Number.NEGATIVE_INFINITY;
  for (const { distance, on } of vaneHull(shape).hits(ray)) {
    if (distance >= before) return null;
    if (distance < passed) continue;
    if (on === 'bottom') return { distance, hit: null };
    const start = refined(shape, ray, distance, on);
    const place = locate(start);
    if (leastLeft(shape, faces, place, times).left > -DUST) {
      return { distance: start, hit: hitOnVane(faces, on, place, start) };
    }
    for (let t = start + STEP; ; t += STEP) {
      const now = locate(t);
      passed = t;
      if (!isWithin(shape, now)) break;
      if (leastLeft(shape, faces, now, times).left < 0) continue;
      const met = between((s) => leastLeft(shape, faces, locate(s), times).left >= 0, t - STEP, t);
      // The face that had taken the metal just before is the one whose surface, or the wall of whose wear, is met.
      const { of } = leastLeft(shape, faces, locate(met - JUST), times);
      return met < before ? { distance: met, hit: hitOnVane(faces, of, locate(met), met) } : null;
    }
  }
  return null;
}

/** Brings a distance found on the hull onto the face itself: the depth below it is all but linear along the ray. */
function refined(shape: VaneShape, ray: Ray, distance: Mm, on: VaneFaceName): Mm {
  let t = distance;
  for (let i = 0; i < 3; i++) {
    const depth = belowAll(shape, shape.locate(at(ray, t)))[on];
    const slope = belowAll(shape, shape.locate(at(ray, t + 0.01)))[on] - depth;
    if (Math.abs(slope) < 1e-5) break;
    const step = (-0.01 * depth) / slope;
    if (Math.abs(step) > 1) break;
    t += step;
  }
  return t;
}

/** How far a place lies below each face of the vane as new, mm; negative in front of it. */
function belowAll(shape: VaneShape, { s, n, z }: VanePlace): Readonly<Record<VaneFaceName, Mm>> {
  const half = shape.thickness(s) / 2;
  const nose = shape.noseThickness / 2;
  return {
    pressure: half - n,
    suction: half + n,
    tip: shape.height(s) - z,
    'leading-edge': s - shape.noseAt(Math.max(-nose, Math.min(nose, n))),
    'trailing-edge': shape.length - s,
  };
}

function isWithin(shape: VaneShape, place: VanePlace): boolean {
  return place.z > -OUT && Object.values(belowAll(shape, place)).every((depth) => depth > -OUT);
}

const NAMES = ['pressure', 'suction', 'tip', 'leading-edge', 'trailing-edge'] as const;

/** The face that a place lies least far behind as it is drawn, and how far, mm; below 0 the metal there is gone. */
function leastLeft(
  shape: VaneShape,
  faces: VaneFaces,
  place: VanePlace,
  times: number,
): { readonly of: VaneFaceName; readonly left: Mm } {
  const below = belowAll(shape, place);
  let of: VaneFaceName = 'tip';
  let left = Number.POSITIVE_INFINITY;
  for (const name of NAMES) {
    const here = below[name] - times * sunkAt(faces[name], ...gridPoint(name, place));
    if (here >= left) continue;
    left = here;
    of = name;
  }
  return { of, left };
}

/** Depth at a place of the face, or at its edge nearest to one just beyond. */
function sunkAt({ map, face }: LiveFace, u: number, v: number): Mm {
  const { u0, du, rows, v0, dv, columns } = face.grid;
  const inside = (value: number, from: number, step: number, count: number) =>
    Math.min(from + (count - 1e-6) * step, Math.max(from + 1e-6 * step, value));
  return depthAt(map, face, inside(u, u0, du, rows), inside(v, v0, dv, columns));
}

function gridPoint(name: VaneFaceName, { s, n, z }: VanePlace): readonly [u: number, v: number] {
  if (name === 'tip') return [s, n];
  return name === 'pressure' || name === 'suction' ? [s, z] : [z, n];
}

function hitOnVane(faces: VaneFaces, on: VaneFaceName, place: VanePlace, distance: Mm): Hit | null {
  // Where it stands on the shroud it has no face.
  if (place.z < 0) return null;
  const live = faces[on];
  const [u, v] = gridPoint(on, place);
  return { live, point: toFacePoint(live.face, u, v), u, v, distance };
}
