import type { Face } from '../../geometry/part/face.ts';
import { type FacePoint, type Mm, toDegrees, toRadians } from '../../geometry/units.ts';

/** Steps of the file per mm and per degree: far below what a hand can place, and a path of points stays short to read. */
const STEPS_A_MM = 100;
const STEPS_A_DEGREE = 1000;

/**
 * A point of a face as the job file will spell it: to 0.01 mm, angles in degrees to 0.001 in [0, 360).
 * A tool rounds before it presses, so that what is seen while drawing is what the file gives back, cell for cell.
 */
export function filePoint(face: Face, point: FacePoint): FacePoint {
  return [fileCoordinate(face, 0, point[0]), fileCoordinate(face, 1, point[1])];
}

/** The point a rounded one stands for, in our own units: the same step as reading the file makes. */
export function ownPoint(face: Face, [first, second]: FacePoint): FacePoint {
  const [a, b] = face.coordinates;
  return [a.isAngle ? toRadians(first) : first, b.isAngle ? toRadians(second) : second];
}

/** One of the two numbers of a point as the file spells it. */
export function fileCoordinate(face: Face, which: 0 | 1, value: number): number {
  if (!face.coordinates[which].isAngle) return roundLength(value);
  const degrees = roundAngle(toDegrees(value)) % 360;
  return roundAngle(degrees < 0 ? degrees + 360 : degrees);
}

// The + 0 turns -0 into 0: the file knows only one.
export const roundLength = (length: Mm): Mm => Math.round(length * STEPS_A_MM) / STEPS_A_MM + 0;
export const roundAngle = (degrees: number): number =>
  Math.round(degrees * STEPS_A_DEGREE) / STEPS_A_DEGREE + 0;
