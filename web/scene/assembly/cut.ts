/** The cut through the shaft: it runs through the direction of its angle, and what lies clockwise of that is taken away. */
import type { Mm, Rad, Vec3 } from '../../../geometry/units.ts';

/** Unit vector out of the cut metal, towards what is taken away. */
export function cutNormal(angle: Rad): Vec3 {
  return [Math.sin(angle), -Math.cos(angle), 0];
}

/** How far a place stands on the side that is taken away, mm; below 0 it stays. */
export function beyondCut(angle: Rad, [x, y]: Vec3): Mm {
  return x * Math.sin(angle) - y * Math.cos(angle);
}
