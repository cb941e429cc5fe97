/** The dimensions of an impeller as lines on it; those of the vanes on vane 1. */
import type { ImpellerFile } from '../../geometry/job/job-file.ts';
import type { ImpellerBody } from '../../geometry/part/part.ts';
import type { VaneShape } from '../../geometry/part/vane-shape.ts';
import { type Mm, type Rad, TURN, type Vec3 } from '../../geometry/units.ts';
import { circleAt, type Dimension, polarPlace } from './dimension-shape.ts';

/** @param name  path within the impeller of what is being typed, such as `vanes.inletAngle` */
export function impellerDimension(name: string, file: ImpellerFile, body: ImpellerBody): Dimension | null {
  const { shape } = body;
  const { hubRadius, hubHeight, boreRadius, outerRadius, shroudThickness } = shape;
  switch (name) {
    case 'outerDiameter':
      return across(outerRadius, 0, shape.vanes.heightOutlet);
    case 'hubDiameter':
      return across(hubRadius, 0, hubHeight);
    case 'boreDiameter':
      return across(boreRadius, 0, hubHeight);
    case 'hubHeight':
      return upright(hubRadius, hubHeight, 0);
    case 'shroudThickness':
      return upright(outerRadius, 0, -shroudThickness);
    default:
      return name.startsWith('vanes.') ? ofVanes(name.slice('vanes.'.length), file, body) : null;
  }
}

function ofVanes(name: string, { vanes: file }: ImpellerFile, body: ImpellerBody): Dimension | null {
  const { vanes, shape } = body;
  const [vane] = vanes;
  const { inletRadius, heightInlet } = shape.vanes;
  switch (name) {
    case 'count':
      return counted(vanes);
    case 'firstAngle':
      return { ...arcAbout(inletRadius, 0, vane.angle, heightInlet), value: file.firstAngle ?? 0 };
    case 'inletDiameter':
      return {
        ...across(inletRadius, vane.angle, heightInlet),
        thin: [circleAt(0, 0, inletRadius, heightInlet)],
      };
    case 'inletAngle':
      return bladeAngle(vane, 0, file.inletAngle);
    case 'outletAngle':
      return bladeAngle(vane, vane.length, file.outletAngle);
    case 'wrap':
      return { ...wrapOf(vane, shape.outerRadius), value: file.wrap ?? 0 };
    case 'thicknessInlet':
      return thickness(vane, vane.noseThickness, file.thicknessInlet);
    case 'thicknessOutlet':
      return thickness(vane, vane.length, file.thicknessOutlet);
    case 'heightInlet':
      return height(vane, 0, file.heightInlet);
    case 'heightOutlet':
      return height(vane, vane.length, file.heightOutlet);
    default:
      return null;
  }
}

function across(radius: Mm, angle: Rad, z: Mm): Dimension {
  const end = (sign: number): Vec3 => [...polarPlace(sign * radius, angle), z];
  return {
    measured: [end(-1), end(1)],
    thin: [],
    quantity: 'length',
    value: 2 * radius,
    sign: 'Ø',
    at: [0, 0, z],
  };
}

/** Beside a round wall, where it stands clear of it. */
function upright(radius: Mm, high: Mm, low: Mm): Dimension {
  const gap = Math.max(4, radius * 0.07);
  const out = (off: Mm, z: Mm): Vec3 => [...polarPlace(radius + off, -0.6), z];
  return {
    measured: [out(gap, high), out(gap, low)],
    thin: [
      [out(0, high), out(1.4 * gap, high)],
      [out(0, low), out(1.4 * gap, low)],
    ],
    quantity: 'length',
    value: high - low,
    sign: '',
    at: out(2.6 * gap, (high + low) / 2),
  };
}

function counted(vanes: readonly VaneShape[]): Dimension {
  const rings = vanes.map((vane) => {
    const [x, y, z] = vane.position(0, 0, vane.height(0));
    return circleAt(x, y, 0.9 * vane.noseThickness, z);
  });
  return {
    measured: [],
    thin: rings,
    quantity: 'plain',
    value: vanes.length,
    noun: vanes.length === 1 ? 'vane' : 'vanes',
    sign: '',
    at: [0, 0, vanes[0].height(0)],
  };
}

/** An angle about the shaft, counter-clockwise from one direction to the other, with an arm along each. */
function arcAbout(radius: Mm, from: Rad, to: Rad, z: Mm): Omit<Dimension, 'value'> {
  const at = (angle: Rad, share: number): Vec3 => [...polarPlace(share * radius, angle), z];
  return {
    measured: Array.from({ length: 65 }, (_, i) => at(from + ((to - from) * i) / 64, 0.9)),
    thin: [
      [[0, 0, z], at(from, 1)],
      [[0, 0, z], at(to, 1)],
    ],
    quantity: 'angle',
    sign: '',
    at: at((from + to) / 2, 0.76),
  };
}

function wrapOf(vane: VaneShape, radius: Mm): Omit<Dimension, 'value'> {
  return arcAbout(radius * 1.04, vane.angle, vane.angle + turnOf(vane), vane.height(vane.length));
}

/** How far a vane turns about the shaft, positive counter-clockwise; it may be more than once round. */
function turnOf(vane: VaneShape): Rad {
  let turned = 0;
  let last = vane.angle;
  for (let i = 1; i <= 64; i++) {
    const { x, y } = vane.camber((vane.length * i) / 64);
    const angle = Math.atan2(y, x);
    turned += angle - last - TURN * Math.round((angle - last) / TURN);
    last = angle;
  }
  return turned;
}

/** Between the tangent of the circle and the vane, on its top. */
function bladeAngle(vane: VaneShape, s: Mm, value: number): Dimension {
  const { x, y, tx, ty } = vane.camber(s);
  const z = vane.height(s);
  const reach = vane.length / 4;
  const radius = Math.hypot(x, y);
  // The tangent that the vane leaves: the one it makes the smaller angle with.
  const side = Math.sign((-y * tx + x * ty) / radius);
  const round = Math.atan2((side * x) / radius, (-side * y) / radius);
  const turn = Math.atan2(ty, tx) - round;
  const angle = turn - TURN * Math.round(turn / TURN);
  // At the outer end the vane comes in from behind.
  const way = s > 0 ? -1 : 1;
  const at = (share: number, off: number): Vec3 => [
    x + way * off * reach * Math.cos(round + share * angle),
    y + way * off * reach * Math.sin(round + share * angle),
    z,
  ];
  return {
    measured: Array.from({ length: 13 }, (_, i) => at(i / 12, 0.75)),
    thin: [
      [at(0, 0), at(0, 1)],
      [at(1, 0), at(1, 1)],
    ],
    quantity: 'angle',
    value,
    sign: '',
    at: at(0.5, 1.05),
  };
}

function thickness(vane: VaneShape, s: Mm, value: Mm): Dimension {
  const z = vane.height(s);
  const half = vane.thickness(s) / 2;
  const at = (n: Mm): Vec3 => vane.position(s, n, z);
  const reach = 3 * vane.thickness(s);
  return {
    measured: [at(-half), at(half)],
    thin: [[at(-half - reach / 2), at(half + reach / 2)]],
    quantity: 'length',
    value,
    sign: '',
    at: at(half + reach),
  };
}

/** Beside the pressure side. */
function height(vane: VaneShape, s: Mm, value: Mm): Dimension {
  const n = vane.thickness(s) / 2;
  const gap = Math.max(4, vane.thickness(s));
  const at = (off: Mm, z: Mm): Vec3 => vane.position(s, n + off, z);
  return {
    measured: [at(gap, 0), at(gap, value)],
    thin: [
      [at(0, 0), at(1.4 * gap, 0)],
      [at(0, value), at(1.4 * gap, value)],
    ],
    quantity: 'length',
    value,
    sign: '',
    at: at(5 * gap, value / 2),
  };
}
