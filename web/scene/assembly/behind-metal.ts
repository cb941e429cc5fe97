import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { standsFor } from '../../../geometry/job/face-names.ts';
import type { Mm, Rad, Vec3 } from '../../../geometry/units.ts';
import type { LivePart } from '../../wear/live-faces.ts';
import { plateRadius } from './assembly-bounds.ts';
import { beyondCut } from './cut.ts';
import { intoPlate, intoRotor, type Pose } from './pose.ts';

export interface Assembled {
  readonly plate: LivePart;
  readonly rotor: LivePart;
  readonly pose: Pose;
  /** Of the cut; null when nothing is cut away. */
  readonly cut: Rad | null;
}

/** The way to the eye is looked along from this far off the place, mm, in steps that grow up to the last: metal is thicker than that. */
const FIRST: Mm = 0.03;
const GROWTH = 1.2;
const LONGEST: Mm = 1.5;

/** Whether metal of either part stands between a place and the eye. Plate and tips count as worn, all else as new. */
export function isBehindMetal(assembled: Assembled, point: Vec3, eye: Vec3): boolean {
  const off: Vec3 = [eye[0] - point[0], eye[1] - point[1], eye[2] - point[2]];
  const distance = Math.hypot(...off);
  const reach = reachOf(assembled);
  let step = FIRST;
  for (let t = FIRST; t < distance; t += step) {
    const share = t / distance;
    const at: Vec3 = [point[0] + share * off[0], point[1] + share * off[1], point[2] + share * off[2]];
    if (Math.hypot(...at) > reach) return false;
    if (isMetal(assembled, at)) return true;
    step = Math.min(LONGEST, step * GROWTH);
  }
  return false;
}

/** A place on the cut itself stays, mm. */
const ON_CUT: Mm = 0.01;

export function isCutAway({ cut }: Assembled, point: Vec3): boolean {
  return cut !== null && beyondCut(cut, point) > ON_CUT;
}

export function isMetal(assembled: Assembled, at: Vec3): boolean {
  const { pose, cut } = assembled;
  if (cut !== null && beyondCut(cut, at) >= 0) return false;
  return isPlate(assembled.plate, intoPlate(pose, at)) || isRotor(assembled.rotor, intoRotor(pose, at), pose);
}

function isPlate({ part: { body }, faces: [{ face, map }] }: LivePart, [x, y, z]: Vec3): boolean {
  if (body.kind !== 'plate') return false;
  const below = body.height(x, y) - z;
  if (below < 0 || below > body.thickness) return false;
  const [u, v] = face.picture.kind === 'polar' ? [Math.hypot(x, y), Math.atan2(y, x)] : [y, x];
  return face.holds(u, v) && below > depthAt(map, face, u, v);
}

function isRotor({ part: { body }, faces }: LivePart, at: Vec3, { facing }: Pose): boolean {
  if (body.kind !== 'impeller') return false;
  const { shape, vanes } = body;
  const [x, y, z] = at;
  const radius = Math.hypot(x, y);
  const back = -shape.shroudThickness;
  if (z < back || radius < shape.boreRadius || radius > shape.outerRadius) return false;
  if (radius < shape.hubRadius) return z < shape.hubHeight;
  if (z < 0) return true;
  const room = shape.vanes.thicknessInlet + shape.vanes.thicknessOutlet;
  if (z > facing.tipAt(radius) || radius < shape.vanes.inletRadius - room) return false;
  return vanes.some((vane) => {
    const { s, n } = vane.locate(at);
    if (s < 0 || s > vane.length || Math.abs(n) > vane.halfThickness(s)) return false;
    const tip = faces.find(({ face }) => standsFor(`vane-${vane.number}/tip`, face.name));
    return tip === undefined || z < facing.tipAt(radius) - depthAt(tip.map, tip.face, s, n);
  });
}

/** Nothing stands further from the origin, mm. */
function reachOf({ pose: { facing, height } }: Assembled): Mm {
  const widest = Math.max(facing.rotor.shape.outerRadius, plateRadius(facing));
  return Math.hypot(widest, height + facing.plate.thickness + widest);
}
