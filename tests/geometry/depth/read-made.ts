/** Gauge readings made to order for the tests, in the engine's own units. */
import type { Readings } from '../../../geometry/job/job.ts';
import { type Face, toFacePoint } from '../../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../../geometry/units.ts';

export function readings(
  face: string,
  points: readonly (readonly [first: number, second: number, depth: Mm])[],
  change: Partial<Readings> = {},
): Readings {
  return {
    kind: 'readings',
    face,
    blend: 'deepest',
    points: points.map(([first, second, depth]) => ({ at: [first, second], depth })),
    gaugeError: 0.1,
    within: null,
    covariance: {},
    ...change,
  };
}

/** Readings of a surface at random places of a face. @param depth  at the place in the part frame */
export function readAtRandom(
  face: Face,
  count: number,
  random: () => number,
  depth: (x: Mm, y: Mm, z: Mm) => Mm,
): [first: number, second: number, depth: Mm][] {
  const { grid } = face;
  const points: [number, number, number][] = [];
  while (points.length < count) {
    const u = grid.u0 + random() * grid.rows * grid.du;
    const v = grid.v0 + random() * grid.columns * grid.dv;
    if (!face.holds(u, v)) continue;
    const at: FacePoint = toFacePoint(face, u, v);
    points.push([at[0], at[1], depth(...face.position(u, v, 0))]);
  }
  return points;
}
