import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { toGridPoint } from '../../../geometry/part/face.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import {
  type FacePoint,
  type Mm,
  type Rad,
  toRadians,
  type Vec3,
  wrapTurn,
} from '../../../geometry/units.ts';
import type { LiveFace, LivePart } from '../../wear/live-faces.ts';
import { LENS, type Rig, type Screen } from '../camera.ts';
import type { Facing } from './facing.ts';
import { fromPlate, fromRotor, type Pose } from './pose.ts';

/** Where the gap is least, in the file's units. */
export type TightSpot = ClearanceResult['tightest'];

/** Both places of a tight spot, each in the frame of its part. */
export interface TightPlaces {
  readonly onPlate: Vec3;
  readonly onTip: Vec3;
}

/**
 * The estimate takes places within one ring as one; the plate's is shown at the radius of the tip's, so that they stand one over the other.
 * @returns null when the parts have not the faces it names (any more)
 */
export function tightPlaces(
  spot: TightSpot,
  { plate, rotor, facing }: { readonly plate: LivePart; readonly rotor: LivePart; readonly facing: Facing },
): TightPlaces | null {
  const face = plate.faces.find((live) => live.face.name === 'face');
  const tip = rotor.faces.find((live) => live.face.name === spot.tip);
  if (face === undefined || tip === undefined) return null;
  const [x, y, z] = surfacePlace(tip, spot.on);
  const radius = Math.hypot(x, y);
  // The tip's own height goes by its place along the vane; turned, it goes by the radius.
  const [s] = toGridPoint(tip.face, spot.on);
  const onTip: Vec3 = [x, y, z - tip.face.wall(s) + facing.tipAt(radius)];
  if (!face.face.coordinates[1].isAngle) return { onPlate: surfacePlace(face, spot.plate), onTip };
  const angle = toRadians(spot.plate[1]);
  const level = face.face.holds(...toGridPoint(face.face, [radius, angle])) ? radius : spot.plate[0];
  return { onPlate: surfacePlace(face, [level, angle]), onTip };
}

function surfacePlace({ face, map }: LiveFace, point: FacePoint): Vec3 {
  const [u, v] = toGridPoint(face, point);
  return face.position(u, v, depthAt(map, face, u, v));
}

/** How far the rotor has to be turned for the two to meet, 0 to a whole turn, and where a cut shows them. */
export function meeting({ onPlate, onTip }: TightPlaces): { readonly turn: Rad; readonly cut: Rad } {
  const cut = wrapTurn(Math.atan2(-onPlate[1], onPlate[0]));
  return { turn: wrapTurn(cut - Math.atan2(onTip[1], onTip[0])), cut };
}

/** A gap is shown at least this high, px, but the picture spans no less and no more than this, mm. */
const SEEN_PX = 48;
const NARROWEST: Mm = 6;
const WIDEST: Mm = 60;

/** Looks square at the cut, level with the gap, so near that the gap is plain to see. */
export function tightRig(places: TightPlaces, pose: Pose, cut: Rad, gap: Mm, screen: Screen): Rig {
  const [plate, tip] = [fromPlate(pose, places.onPlate), fromRotor(pose, places.onTip)];
  const scale = Math.min(
    screen.width / NARROWEST,
    Math.max(screen.width / WIDEST, SEEN_PX / Math.max(Math.abs(gap), 1e-3)),
  );
  const target: Vec3 = [(plate[0] + tip[0]) / 2, (plate[1] + tip[1]) / 2, (plate[2] + tip[2]) / 2];
  const focal = screen.height / 2 / Math.tan(LENS / 2);
  return { target, distance: focal / scale, turn: cut - Math.PI / 2, tilt: 0 };
}
