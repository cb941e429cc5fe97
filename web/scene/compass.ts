import type { Part } from '../../geometry/part/part.ts';
import { toRadians, type Vec3 } from '../../geometry/units.ts';
import { rimOf } from './rim.ts';

/** Angles round the rim of a part as lines and numbers in the part frame. */
export interface Compass {
  readonly ticks: readonly (readonly [inner: Vec3, outer: Vec3])[];
  readonly numbers: readonly { readonly degrees: number; readonly at: Vec3 }[];
  /** Points at the reference mark: tip and the two corners of its foot. */
  readonly arrow: readonly [tip: Vec3, left: Vec3, right: Vec3];
}

const EVERY = 30;
const NUMBERED = 90;

/**
 * Ticks every 30 degrees, numbers at the quarters and the arrow at 0, just outside the rim and at its height; on the near side as far
 * out as the rim's wall is seen. Null round an outline, whose places are not told by angles.
 * @param eye  where it is seen from, part frame
 */
export function compass({ body }: Part, eye: Vec3): Compass | null {
  const rim = rimOf(body);
  if (rim === null) return null;
  const { z } = rim;
  const flatness = Math.hypot(eye[0], eye[1]) / Math.max(eye[2] - z, 1e-6);
  const towards = Math.atan2(eye[1], eye[0]);
  const at = (degrees: number, share: number, aside = 0): Vec3 => {
    const angle = toRadians(degrees);
    const wall = rim.wall * flatness * Math.max(0, Math.cos(angle - towards));
    const r = rim.radius * share + wall;
    const off = rim.radius * aside;
    return [r * Math.cos(angle) - off * Math.sin(angle), r * Math.sin(angle) + off * Math.cos(angle), z];
  };
  const all = Array.from({ length: 360 / EVERY }, (_, i) => i * EVERY);
  const isNumbered = (degrees: number) => degrees % NUMBERED === 0;
  return {
    ticks: all
      .filter((degrees) => degrees !== 0)
      .map((degrees) => [at(degrees, 1.02), at(degrees, isNumbered(degrees) ? 1.05 : 1.035)]),
    numbers: all.filter(isNumbered).map((degrees) => ({ degrees, at: at(degrees, 1.105) })),
    arrow: [at(0, 1.012), at(0, 1.055, 0.018), at(0, 1.055, -0.018)],
  };
}
