import type { Face } from '../../geometry/part/face.ts';
import { type FacePoint, TURN } from '../../geometry/units.ts';

/** From and to along one coordinate of a face, in our units; an angle runs counter-clockwise, `to` above `from`. */
export type BoxRange = readonly [from: number, to: number];

/** Points along one side. */
const SIDE = 48;

/** The edge of a box in a face's two coordinates: one closed line, or two where it runs the whole turn. */
export function boxOutline(face: Face, first: BoxRange, second: BoxRange): readonly (readonly FacePoint[])[] {
  const [a, b] = face.coordinates;
  const isRing = (range: BoxRange, isAngle: boolean) => isAngle && range[1] - range[0] > TURN - 1e-9;
  if (isRing(first, a.isAngle)) {
    return second.map((value) => along((share) => [mixed(first, share), value], 4 * SIDE));
  }
  if (isRing(second, b.isAngle)) {
    return first.map((value) => along((share) => [value, mixed(second, share)], 4 * SIDE));
  }
  return [
    [
      ...along((share) => [mixed(first, share), second[0]], SIDE),
      ...along((share) => [first[1], mixed(second, share)], SIDE),
      ...along((share) => [mixed(first, 1 - share), second[1]], SIDE),
      ...along((share) => [first[0], mixed(second, 1 - share)], SIDE),
    ],
  ];
}

const mixed = ([from, to]: BoxRange, share: number): number => from + share * (to - from);

/** Points from the start of a side to just before its end. */
function along(at: (share: number) => FacePoint, points: number): FacePoint[] {
  return Array.from({ length: points }, (_, i) => at(i / points));
}
