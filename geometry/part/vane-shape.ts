/**
 * One vane in its own coordinates: s along the camber from the leading edge, n across towards the pressure side, z from the shroud.
 * Source: geometry definitions, "Impeller"; tests/geometry/part/impeller.test.ts.
 */
import type { Impeller } from '../job/job.ts';
import { type Mm, type Rad, TURN, type Vec3 } from '../units.ts';
import type { Camber } from './camber.ts';
import { lastOf } from './last-of.ts';

export interface VaneShape {
  /** 1 to the count of the vanes. */
  readonly number: number;
  /** Where its leading edge stands. */
  readonly angle: Rad;
  /** Length of the camber, mm: s runs from 0 to here. */
  readonly length: Mm;
  readonly nose: 'round' | 'square';
  /** Thickness the nose is rounded with. */
  readonly noseThickness: Mm;
  camber(s: Mm): CamberPlace;
  thickness(s: Mm): Mm;
  height(s: Mm): Mm;
  /** From where to where along s the vane is at least this high, mm; empty where it is nowhere. */
  reaches(z: Mm): readonly [from: Mm, to: Mm];
  /** Where the metal begins across n: 0 for a square nose. NaN beyond the nose's half thickness. */
  noseAt(n: Mm): Mm;
  /** The greatest |n| that is metal at s. */
  halfThickness(s: Mm): Mm;
  /** Part frame to vane coordinates: the nearest place of the camber. Exact within the vane and near it. */
  locate(point: Vec3): VanePlace;
  position(s: Mm, n: Mm, z: Mm): Vec3;
}

/** A place of the camber in the plane z = 0. */
export interface CamberPlace {
  readonly x: Mm;
  readonly y: Mm;
  /** Unit vector along s. */
  readonly tx: number;
  readonly ty: number;
  /** Unit vector across, towards the pressure side. */
  readonly nx: number;
  readonly ny: number;
  /** (dT/ds) . Np, 1/mm: the volume element is (1 - k n) ds dn dz. */
  readonly k: number;
}

export interface VanePlace {
  readonly s: Mm;
  readonly n: Mm;
  readonly z: Mm;
}

/** The vanes of an impeller, in the order of their numbers. */
export function vaneShapes({ vanes, rotation }: Impeller, camber: Camber): readonly VaneShape[] {
  // Swept back: towards smaller angles when the rotor turns counter-clockwise.
  const sweep = rotation === 'counter-clockwise' ? -1 : 1;
  return Array.from({ length: vanes.count }, (_, i) => {
    const angle = vanes.firstAngle + (i * TURN) / vanes.count;
    const cos = Math.cos(angle);
    const sin = Math.sin(angle);
    const { length } = camber;
    const radius1 = vanes.inletRadius;
    const radius2 = camber.radius(length);
    const t1 = vanes.thicknessInlet;
    const taper = (vanes.thicknessOutlet - t1) / length;
    const fall = (vanes.heightOutlet - vanes.heightInlet) / (radius2 - radius1);
    const round = vanes.nose === 'round';
    const place = (s: Mm): CamberPlace => {
      const point = camber.at(s);
      // The camber sweeps towards greater angles from the direction 0; here it is mirrored and turned into its place.
      const y = sweep * point.y;
      const vy = sweep * point.ty;
      const tx = point.tx * cos - vy * sin;
      const ty = point.tx * sin + vy * cos;
      return {
        x: point.x * cos - y * sin,
        y: point.x * sin + y * cos,
        tx,
        ty,
        nx: sweep * ty,
        ny: -sweep * tx,
        k: -point.turning,
      };
    };
    const thickness = (s: Mm): Mm => t1 + taper * clamp(s, 0, length);
    const height = (s: Mm): Mm => vanes.heightInlet + fall * (camber.radius(clamp(s, 0, length)) - radius1);
    return {
      number: i + 1,
      angle,
      length,
      nose: vanes.nose,
      noseThickness: t1,
      camber: place,
      thickness,
      height,
      reaches: lastOf((z) => {
        const [from, to] = tapered(z, vanes.heightInlet, vanes.heightOutlet, radius2 - radius1);
        return [camber.lengthAt(radius1 + from), camber.lengthAt(radius1 + to)] as const;
      }),
      noseAt: (n) => (round ? (t1 / 2) * (1 - Math.sqrt(1 - ((2 * n) / t1) ** 2)) : 0),
      halfThickness: (s) => {
        const half = thickness(s) / 2;
        if (!round || s >= t1 / 2) return half;
        return s <= 0 ? 0 : Math.min(half, Math.sqrt(s * (t1 - s)));
      },
      locate: (point) => located(place, length, camber, point),
      position: (s, n, z) => {
        const { x, y, nx, ny } = place(s);
        return [x + n * nx, y + n * ny, z];
      },
    };
  });
}

/** Halves and Newton steps until the place moves by less than this, mm. */
const CLOSE: Mm = 1e-10;
const MOST_STEPS = 30;
const STARTS = 9;

/** The nearest place of a camber: a few places tried, then (P - C) . T = 0 by Newton. Past the ends the camber runs on straight. */
function located(place: (s: Mm) => CamberPlace, length: Mm, camber: Camber, [px, py, z]: Vec3): VanePlace {
  let s = camber.lengthAt(Math.hypot(px, py));
  let least = Infinity;
  for (const start of [s, ...Array.from({ length: STARTS }, (_, i) => (i * length) / (STARTS - 1))]) {
    const { x, y } = place(start);
    const square = (px - x) ** 2 + (py - y) ** 2;
    if (square >= least) continue;
    least = square;
    s = start;
  }
  for (let i = 0; i < MOST_STEPS; i++) {
    const { x, y, tx, ty, nx, ny, k } = place(s);
    const along = (px - x) * tx + (py - y) * ty;
    const across = (px - x) * nx + (py - y) * ny;
    const step = along / Math.max(0.2, 1 - k * across);
    s += clamp(step, -length / 4, length / 4);
    if (Math.abs(step) < CLOSE) break;
  }
  const { x, y, nx, ny } = place(s);
  return { s, n: (px - x) * nx + (py - y) * ny, z };
}

/** Where a size that runs linearly from `first` to `last` over `length` is at least `least`; empty where it is nowhere. */
export function tapered(least: Mm, first: Mm, last: Mm, length: Mm): readonly [from: Mm, to: Mm] {
  if (first >= least && last >= least) return [0, length];
  if (first < least && last < least) return [0, 0];
  const at = ((least - first) / (last - first)) * length;
  return first >= least ? [0, at] : [at, length];
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
