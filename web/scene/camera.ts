/**
 * The eye of the 3D picture, without the 3D library: where it stands, where a point of the part falls on the screen, and which ray
 * a place on the screen sends into the part. The canvas and everything drawn over it go by the same numbers.
 */
import type { Mm, Rad, Vec3 } from '../../geometry/units.ts';

/** Looks at `target` from `distance`, turned about the shaft and tilted up from the plane of the plate. */
export interface Rig {
  readonly target: Vec3;
  readonly distance: Mm;
  /** Direction of the eye seen from the target, counter-clockwise from x. */
  readonly turn: Rad;
  /** pi / 2 looks straight down on the face, 0 along it, -pi / 2 at the back. */
  readonly tilt: Rad;
}

export interface Screen {
  /** CSS px. */
  readonly width: number;
  readonly height: number;
}

export interface Ray {
  readonly from: Vec3;
  /** Unit length. */
  readonly along: Vec3;
}

export interface Sight {
  readonly eye: Vec3;
  /** Unit vectors of the picture: to the right, up, and into it. */
  readonly right: Vec3;
  readonly up: Vec3;
  readonly into: Vec3;
  /** px a mm at the target. */
  readonly scale: number;
  /** Where a point falls, px from the top left, and how far into the picture it lies, mm. */
  project(point: Vec3): readonly [x: number, y: number, depth: Mm];
  ray(x: number, y: number): Ray;
}

/** Opening of the lens, top to bottom: long, so that a plate is hardly distorted. */
export const LENS: Rad = (24 / 180) * Math.PI;

export function sightOf(rig: Rig, screen: Screen): Sight {
  const { right, up, into } = axesOf(rig);
  const eye = plus(rig.target, into, -rig.distance);
  const focal = screen.height / 2 / Math.tan(LENS / 2);
  return {
    eye,
    right,
    up,
    into,
    scale: focal / rig.distance,
    project(point) {
      const off: Vec3 = [point[0] - eye[0], point[1] - eye[1], point[2] - eye[2]];
      const depth = dot(off, into);
      const scale = focal / Math.max(depth, 1e-6);
      return [screen.width / 2 + dot(off, right) * scale, screen.height / 2 - dot(off, up) * scale, depth];
    },
    ray(x, y) {
      const along = plus(plus(scaled(into, focal), right, x - screen.width / 2), up, screen.height / 2 - y);
      return { from: eye, along: scaled(along, 1 / Math.hypot(...along)) };
    },
  };
}

/** The picture's axes; defined at every tilt, straight down too. */
function axesOf({ turn, tilt }: Rig): { readonly right: Vec3; readonly up: Vec3; readonly into: Vec3 } {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const [ct, st] = [Math.cos(tilt), Math.sin(tilt)];
  return { right: [-s, c, 0], up: [-st * c, -st * s, ct], into: [-ct * c, -ct * s, -st] };
}

export type ViewName = 'front' | 'angled' | 'side';

const VIEWS: Readonly<Record<ViewName, Pick<Rig, 'turn' | 'tilt'>>> = {
  front: { turn: -Math.PI / 2, tilt: Math.PI / 2 },
  angled: { turn: -Math.PI / 2 + 0.32, tilt: 0.78 },
  side: { turn: -Math.PI / 2, tilt: 0.06 },
};

/** What a view has to show: points about the middle that the eye turns round. */
export interface Shown {
  readonly middle: Vec3;
  readonly points: readonly Vec3[];
}

/** px along the edges of the picture that other things cover. */
export interface Covered {
  readonly top: number;
  readonly bottom: number;
  readonly side: number;
}

const HALVINGS = 24;

/** A preset view: all the points as large as the uncovered part of the picture allows, in its middle. */
export function presetRig(name: ViewName, shown: Shown, screen: Screen, covered: Covered): Rig {
  const width = screen.width - 2 * covered.side;
  const height = screen.height - covered.top - covered.bottom;
  const at = (distance: Mm): Rig => ({ ...VIEWS[name], target: shown.middle, distance });
  const reach = Math.max(...shown.points.map((point) => apart(point, shown.middle)));
  let [near, far] = [reach, 100 * reach];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = Math.sqrt(near * far);
    const [x0, x1, y0, y1] = extent(at(middle), shown, screen);
    if (x1 - x0 > width || y1 - y0 > height) near = middle;
    else far = middle;
  }
  const rig = at(far);
  const [x0, x1, y0, y1] = extent(rig, shown, screen);
  return slid(rig, screen.width / 2 - (x0 + x1) / 2, covered.top + height / 2 - (y0 + y1) / 2, screen);
}

/** px the points take on the screen. */
function extent(
  rig: Rig,
  { points }: Shown,
  screen: Screen,
): [x0: number, x1: number, y0: number, y1: number] {
  const { project } = sightOf(rig, screen);
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const point of points) {
    const [x, y] = project(point);
    [x0, x1, y0, y1] = [Math.min(x0, x), Math.max(x1, x), Math.min(y0, y), Math.max(y1, y)];
  }
  return [x0, x1, y0, y1];
}

/** rad a px. */
const TURN_PACE = 0.008;

/** Turns with a drag: the part follows the hand. */
export function turned(rig: Rig, dx: number, dy: number): Rig {
  const tilt = Math.min(Math.PI / 2, Math.max(-Math.PI / 2, rig.tilt + dy * TURN_PACE));
  return { ...rig, turn: rig.turn - dx * TURN_PACE, tilt };
}

/** Moves the part with the hand, px. */
export function slid(rig: Rig, dx: number, dy: number, screen: Screen): Rig {
  const { right, up, scale } = sightOf(rig, screen);
  return { ...rig, target: plus(plus(rig.target, right, -dx / scale), up, dy / scale) };
}

/** Comes `factor` nearer, the place under (x, y) staying where it is on the screen. */
export function zoomed(
  rig: Rig,
  factor: number,
  x: number,
  y: number,
  screen: Screen,
  reach: readonly [Mm, Mm],
): Rig {
  const distance = Math.min(reach[1], Math.max(reach[0], rig.distance / factor));
  const { right, up, scale } = sightOf(rig, screen);
  const share = 1 - distance / rig.distance;
  const across = ((x - screen.width / 2) / scale) * share;
  const along = ((screen.height / 2 - y) / scale) * share;
  return { ...rig, distance, target: plus(plus(rig.target, right, across), up, along) };
}

const apart = (a: Vec3, b: Vec3): Mm => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const scaled = (a: Vec3, by: number): Vec3 => [a[0] * by, a[1] * by, a[2] * by];
const plus = (a: Vec3, b: Vec3, by: number): Vec3 => [a[0] + b[0] * by, a[1] + b[1] * by, a[2] + b[2] * by];
