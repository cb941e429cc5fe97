/** A vane as few triangles, so that a ray finds out fast whether and roughly where it meets it. */
import type { VaneFaceName } from '../../geometry/part/vane-mesh.ts';
import type { VaneShape } from '../../geometry/part/vane-shape.ts';
import { type VaneStation, vaneStations } from '../../geometry/part/vane-stations.ts';
import type { Mm, Vec3 } from '../../geometry/units.ts';
import type { Ray } from './camera.ts';

/** Where a ray comes into the hull. */
export interface HullHit {
  readonly distance: Mm;
  /** The bottom is no face. */
  readonly on: VaneFaceName | 'bottom';
}

export interface VaneHull {
  /** The places where a ray comes in from outside, nearest first; on a curved face to 0.1 mm. */
  hits(ray: Ray): readonly HullHit[];
}

/** Stations along at most. */
const MOST = 40;

const known = new WeakMap<VaneShape, VaneHull>();

export function vaneHull(shape: VaneShape): VaneHull {
  const hull = known.get(shape) ?? hullOf(shape);
  known.set(shape, hull);
  return hull;
}

interface Triangle {
  readonly on: HullHit['on'];
  readonly a: Vec3;
  readonly ab: Vec3;
  readonly ac: Vec3;
}

function hullOf(shape: VaneShape): VaneHull {
  const triangles = trianglesOf(shape);
  const corners = triangles.flatMap(({ a, ab, ac }) => [a, plus(a, ab), plus(a, ac)]);
  const [low, high] = [Math.min, Math.max].map((end) =>
    [0, 1, 2].map((k) => corners.reduce((most, corner) => end(most, corner[k]), corners[0][k])),
  );
  return {
    hits(ray) {
      if (!meetsBox(ray, low, high)) return [];
      const hits: HullHit[] = [];
      for (const triangle of triangles) {
        const distance = meets(ray, triangle);
        if (distance !== null) hits.push({ distance, on: triangle.on });
      }
      return hits.sort((p, q) => p.distance - q.distance);
    },
  };
}

/** Seen from outside, each triangle runs counter-clockwise. */
function trianglesOf(shape: VaneShape): readonly Triangle[] {
  const { along, shoulder } = vaneStations(shape);
  const every = Math.ceil((along.length - shoulder) / MOST);
  const kept = along.filter((_, i) => i < shoulder || (i - shoulder) % every === 0 || i === along.length - 1);
  const corner = (station: VaneStation, side: number, level: number): Vec3 => {
    const n = side * station.half;
    return [station.x + n * station.nx, station.y + n * station.ny, level * station.height];
  };
  const first = kept[0];
  const last = kept[kept.length - 1];
  const quads: (readonly [on: HullHit['on'], corners: readonly Vec3[], outward: Vec3])[] = [];
  for (let i = 0; i + 1 < kept.length; i++) {
    const [here, next] = [kept[i], kept[i + 1]];
    // The round of a nose is the leading edge.
    const isNose = i < shoulder;
    for (const side of [1, -1]) {
      const on = isNose ? 'leading-edge' : side > 0 ? 'pressure' : 'suction';
      const out: Vec3 = [side * here.nx, side * here.ny, 0];
      quads.push([on, quad(corner, here, next, [side, 0], [side, 1]), out]);
    }
    quads.push(['tip', quad(corner, here, next, [1, 1], [-1, 1]), [0, 0, 1]]);
    quads.push(['bottom', quad(corner, here, next, [1, 0], [-1, 0]), [0, 0, -1]]);
  }
  if (shoulder === 0) quads.push(['leading-edge', endOf(corner, first), [-first.tx, -first.ty, 0]]);
  quads.push(['trailing-edge', endOf(corner, last), [last.tx, last.ty, 0]]);
  return quads.flatMap(([on, [a, b, c, d], outward]) =>
    [
      [a, b, c],
      [a, c, d],
    ].flatMap(([p, q, r]): Triangle[] => {
      const [ab, ac] = [minus(q, p), minus(r, p)];
      const normal = cross(ab, ac);
      if (Math.hypot(...normal) < 1e-9) return [];
      return [dot(normal, outward) > 0 ? { on, a: p, ab, ac } : { on, a: p, ab: ac, ac: ab }];
    }),
  );
}

type CornerAt = (station: VaneStation, side: number, level: number) => Vec3;
type Place = readonly [side: number, level: number];

/** From one station to the next between two of their corners. */
function quad(corner: CornerAt, here: VaneStation, next: VaneStation, p: Place, q: Place): readonly Vec3[] {
  return [corner(here, ...p), corner(next, ...p), corner(next, ...q), corner(here, ...q)];
}

/** The square end of a vane. */
function endOf(corner: CornerAt, end: VaneStation): readonly Vec3[] {
  return [corner(end, 1, 0), corner(end, -1, 0), corner(end, -1, 1), corner(end, 1, 1)];
}

/** Rays along an edge between two triangles meet one of them. */
const EDGE = 1e-9;

/** Distance at which a ray comes through a triangle from its outside. Source: T. Moller, B. Trumbore, J. Graphics Tools 2(1), 1997. */
function meets({ from, along }: Ray, { a, ab, ac }: Triangle): Mm | null {
  const p = cross(along, ac);
  const size = dot(ab, p);
  // Its outside faces the ray.
  if (size < 1e-12) return null;
  const off = minus(from, a);
  const u = dot(off, p) / size;
  if (u < -EDGE || u > 1 + EDGE) return null;
  const q = cross(off, ab);
  const v = dot(along, q) / size;
  if (v < -EDGE || u + v > 1 + EDGE) return null;
  const distance = dot(ac, q) / size;
  return distance > 0 ? distance : null;
}

function meetsBox({ from, along }: Ray, low: readonly number[], high: readonly number[]): boolean {
  let [near, far] = [0, Number.POSITIVE_INFINITY];
  for (let k = 0; k < 3; k++) {
    const [a, b] = [(low[k] - from[k]) / along[k], (high[k] - from[k]) / along[k]];
    if (along[k] === 0) {
      if (from[k] < low[k] || from[k] > high[k]) return false;
      continue;
    }
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near <= far;
}

const plus = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
