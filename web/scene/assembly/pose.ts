/**
 * Where the two parts stand in the picture: the impeller in its own frame, turned about the shaft; over it the plate, turned over by half
 * a turn about x, so that the marks of 0 degrees of both stand one over the other.
 */
import type { Mm, Rad, Vec3 } from '../../../geometry/units.ts';
import type { Facing } from './facing.ts';

export interface Pose {
  readonly facing: Facing;
  /** mm from the vanes' own origin to the plate's, with all that is pulled apart and all that coats and dressing change. */
  readonly height: Mm;
  /** Of the rotor, counter-clockwise seen from the vane side. */
  readonly turn: Rad;
}

/** A place of the plate's frame in the picture's. */
export function fromPlate({ facing, height }: Pose, [x, y, z]: Vec3): Vec3 {
  return [x, -y, height - z - facing.bendAt(Math.hypot(x, y))];
}

/** What `fromPlate` undoes. */
export function intoPlate({ facing, height }: Pose, [x, y, z]: Vec3): Vec3 {
  return [x, -y, height - z - facing.bendAt(Math.hypot(x, y))];
}

/** A place of the impeller's frame in the picture's. */
export function fromRotor({ turn }: Pose, point: Vec3): Vec3 {
  return turned(point, turn);
}

export function intoRotor({ turn }: Pose, point: Vec3): Vec3 {
  return turned(point, -turn);
}

function turned([x, y, z]: Vec3, angle: Rad): Vec3 {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return [x * c - y * s, x * s + y * c, z];
}
