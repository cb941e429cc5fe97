import type { Mm } from '../units.ts';
import type { VaneShape } from './vane-shape.ts';

const NOSE_POINTS = 48;
const SIDE_POINTS = 256;

/**
 * What a vane covers of the plane z = 0, as a closed loop in (s, n), first point not repeated: from the nose along the pressure side,
 * round the square end and back along the suction side. A round nose is a polygon of 96 corners, 0.1 % of its own half disc short.
 */
export function footprint(shape: VaneShape): readonly (readonly [s: Mm, n: Mm])[] {
  const { length, nose, noseThickness } = shape;
  const noseEnd = nose === 'round' ? noseThickness / 2 : 0;
  const along = [
    ...(nose === 'round'
      ? Array.from(
          { length: NOSE_POINTS },
          (_, i) => noseEnd * (1 - Math.cos((Math.PI / 2) * (i / NOSE_POINTS))),
        )
      : []),
    ...Array.from({ length: SIDE_POINTS + 1 }, (_, i) => noseEnd + ((length - noseEnd) * i) / SIDE_POINTS),
  ];
  const pressure = along.map((s) => [s, shape.halfThickness(s)] as const);
  const suction = along.toReversed().map((s) => [s, -shape.halfThickness(s)] as const);
  // A round nose begins in one point.
  return nose === 'round' ? [...pressure, ...suction.slice(0, -1)] : [...pressure, ...suction];
}
