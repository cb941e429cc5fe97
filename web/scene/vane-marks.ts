import type { ImpellerBody } from '../../geometry/part/part.ts';
import { type Rad, toRadians, type Vec3 } from '../../geometry/units.ts';

/** What is written round an impeller: the number of each vane at its leading edge, and an arrow in the direction it turns. */
export interface VaneMarks {
  readonly numbers: readonly { readonly number: number; readonly at: Vec3 }[];
  /** Along the rim; the last point is the head's tip. */
  readonly arrow: readonly Vec3[];
  /** The two corners of the arrow's head. */
  readonly head: readonly [Vec3, Vec3];
}

/** Where the arrow stands: outside the rim, between the numbers of the angles. */
const ARROW = {
  radius: 1.085,
  from: toRadians(104),
  to: toRadians(136),
  head: toRadians(4.2),
  wide: 0.018,
} as const;
const PIECES = 24;

export function vaneMarks({ shape, vanes }: ImpellerBody): VaneMarks {
  const { outerRadius, hubRadius, rotation } = shape;
  const isClockwise = rotation === 'clockwise';
  const [start, end] = isClockwise ? [ARROW.to, ARROW.from] : [ARROW.from, ARROW.to];
  const at = (angle: Rad, share: number): Vec3 => {
    const radius = outerRadius * share;
    return [radius * Math.cos(angle), radius * Math.sin(angle), 0];
  };
  const foot = end + (isClockwise ? ARROW.head : -ARROW.head);
  return {
    numbers: vanes.map((vane) => {
      // A little inward of the leading edge, clear of the hub.
      const { x, y } = vane.camber(0);
      const radius = Math.hypot(x, y);
      const within = Math.max((radius + hubRadius) / 2, radius - outerRadius * 0.06) / radius;
      return { number: vane.number, at: [x * within, y * within, vane.height(0)] };
    }),
    arrow: Array.from({ length: PIECES + 1 }, (_, i) =>
      at(start + ((end - start) * i) / PIECES, ARROW.radius),
    ),
    head: [at(foot, ARROW.radius + ARROW.wide), at(foot, ARROW.radius - ARROW.wide)],
  };
}
