/** Gauge readings taken at random places of a known surface, and how the estimate's own interval stands to the truth. */
import type { Readings, RoundPlate } from '../../geometry/job/job.ts';
import { type FacePoint, type Mm, TURN } from '../../geometry/units.ts';
import { between, type Chance, normal } from './random-field.ts';

/** Places spread evenly over the face of a round plate, none over a hole; radius mm, angle rad. */
export function placesOn({ outerRadius, boreRadius, holes }: RoundPlate, count: number, chance: Chance) {
  const places: FacePoint[] = [];
  while (places.length < count) {
    const r = Math.sqrt(between(chance, boreRadius ** 2, outerRadius ** 2));
    const angle = between(chance, 0, TURN);
    const clear = ({ x, y, radius }: RoundPlate['holes'][number]) =>
      Math.hypot(r * Math.cos(angle) - x, r * Math.sin(angle) - y) > radius;
    if (holes.every(clear)) places.push([r, angle]);
  }
  return places;
}

/** Everything about how alike two depths are is left for the estimate to find. */
export function readingsAt(
  places: readonly FacePoint[],
  depthAt: (place: FacePoint) => Mm,
  gaugeError: Mm,
  chance: Chance,
): Readings {
  return {
    kind: 'readings',
    face: 'face',
    blend: 'deepest',
    points: places.map((at) => ({ at, depth: depthAt(at) + gaugeError * normal(chance) })),
    gaugeError,
    within: null,
    covariance: {},
  };
}

/** An estimate of a volume, its standard error and the true volume, mm3. */
export interface Trial {
  readonly volume: number;
  readonly error: number;
  readonly truth: number;
}

export interface Calibration {
  readonly of: number;
  /** How many lie within 1.96 of their standard errors of the truth. */
  readonly held: number;
  /** Root mean square of how many standard errors they lie off. */
  readonly rms: number;
}

export function calibration(trials: readonly Trial[]): Calibration {
  const off = trials.map(({ volume, error, truth }) => (volume - truth) / error);
  return {
    of: off.length,
    held: off.filter((z) => Math.abs(z) <= 1.96).length,
    rms: Math.sqrt(off.reduce((sum, z) => sum + z * z, 0) / off.length),
  };
}
