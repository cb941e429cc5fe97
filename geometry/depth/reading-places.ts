import type { Reading, Readings } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { Observed, Places } from './kriging/kriging.ts';

/** Readings that can be used, and those that cannot. */
export interface PlacedReadings {
  /** One for each place that was read. */
  readonly observed: Observed;
  /** Grid place (u, v) of each. */
  readonly at: readonly (readonly [u: number, v: number])[];
  /** Which of the mark's readings each stands for. */
  readonly of: readonly (readonly number[])[];
  /** Readings off the face or in a hole: not used. */
  readonly off: readonly number[];
  /** Places that were read more than once, with readings further apart than the gauge error allows. */
  readonly contradicting: readonly (readonly number[])[];
}

/** Readings closer than this were taken at one place: nearer than a gauge can be set down twice. mm */
const SAME_PLACE: Mm = 0.5;
/** Two readings of one place further apart than so many standard deviations of their difference contradict each other. */
const TOO_FAR = 4;

/**
 * The readings of a mark at their places on a face. Readings of one place become one, their mean, with the error that the gauge
 * leaves it; where they contradict each other their own scatter says how far to trust it.
 * A reading a hair beyond the edge, as one typed to the rim is, counts.
 */
export function placedReadings(face: Face, { points, gaugeError }: Readings): PlacedReadings {
  const off: number[] = [];
  const groups: { at: readonly [number, number]; place: Places; of: number[] }[] = [];
  const near = new Map<string, (typeof groups)[number][]>();
  for (const [i, { at }] of points.entries()) {
    const [u, v] = toGridPoint(face, at);
    if (!isOn(face, u, v)) {
      off.push(i);
      continue;
    }
    const place = placesOf(face, [[u, v]]);
    const known = neighbours(near, place).find((group) => distance(group.place, place) < SAME_PLACE);
    if (known !== undefined) known.of.push(i);
    else {
      const group = { at: [u, v] as const, place, of: [i] };
      groups.push(group);
      const key = bucket(place, 0, 0, 0);
      near.set(key, [...(near.get(key) ?? []), group]);
    }
  }
  const merged = groups.map(({ of }) => mergedReading(points, of, gaugeError));
  return {
    observed: {
      places: placesOf(
        face,
        groups.map(({ at }) => at),
      ),
      depth: Float64Array.from(merged, ({ depth }) => depth),
      error: Float64Array.from(merged, ({ error }) => error),
    },
    at: groups.map(({ at }) => at),
    of: groups.map(({ of }) => of),
    off,
    contradicting: groups.filter((_, i) => merged[i].contradicts).map(({ of }) => of),
  };
}

/**
 * Places of grid points in a space where the straight distance is the distance on the face: its flat picture. A face that goes
 * round is left round, so that the 0/360 line is nowhere: plane faces by x, y; a cone as it stands; a bore by the chord.
 * A chord is 1 % shorter than its arc over half a radian, and closer yet on a cone.
 * (A covariance of distances along a circle would not stay valid; of straight ones it does. From memory: Gneiting, Bernoulli 19, 2013.)
 */
export function placesOf(face: Face, at: readonly (readonly [u: number, v: number])[]): Places {
  const { picture, grid } = face;
  const places = new Float64Array(3 * at.length);
  const rise = picture.kind === 'polar' ? Math.sqrt(1 - picture.slant ** 2) / picture.slant : 0;
  for (const [i, [u, v]] of at.entries()) {
    if (picture.kind === 'polar') places.set([u * Math.cos(v), u * Math.sin(v), u * rise], 3 * i);
    else if (grid.wraps) {
      const radius = picture.columnScale;
      places.set([radius * Math.cos(v), radius * Math.sin(v), u], 3 * i);
    } else places.set([v * picture.columnScale, u, 0], 3 * i);
  }
  return places;
}

function mergedReading(
  points: readonly Reading[],
  of: readonly number[],
  gaugeError: Mm,
): { depth: Mm; error: number; contradicts: boolean } {
  const depths = of.map((i) => points[i].depth);
  const count = depths.length;
  const depth = depths.reduce((sum, value) => sum + value, 0) / count;
  const gauge = gaugeError * gaugeError;
  if (count === 1) return { depth, error: gauge, contradicts: false };
  const apart = Math.max(...depths) - Math.min(...depths);
  const contradicts = apart > TOO_FAR * gaugeError * Math.SQRT2;
  const scatter = depths.reduce((sum, value) => sum + (value - depth) ** 2, 0) / (count - 1);
  return { depth, error: (contradicts ? Math.max(gauge, scatter) : gauge) / count, contradicts };
}

/** A reading typed to the last figure of a rim or an angle may lie a rounding beyond it. mm */
const RIM: Mm = 0.05;

function isOn(face: Face, u: number, v: number): boolean {
  if (face.holds(u, v)) return true;
  const across = RIM / (face.picture.kind === 'polar' ? Math.max(u, RIM) : face.picture.columnScale);
  return [
    [RIM, 0],
    [-RIM, 0],
    [0, across],
    [0, -across],
  ].some(([du, dv]) => face.holds(u + du, v + dv));
}

function distance(a: Places, b: Places): Mm {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function bucket(place: Places, dx: number, dy: number, dz: number): string {
  return [dx, dy, dz].map((step, axis) => Math.floor(place[axis] / SAME_PLACE) + step).join();
}

function neighbours<T>(near: ReadonlyMap<string, readonly T[]>, place: Places): readonly T[] {
  const steps = [-1, 0, 1];
  return steps.flatMap((dx) =>
    steps.flatMap((dy) => steps.flatMap((dz) => near.get(bucket(place, dx, dy, dz)) ?? [])),
  );
}
