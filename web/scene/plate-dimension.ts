/** The dimensions of a wear plate as lines on it. */
import type { BoltCircleFile, WearPlateFile } from '../../geometry/job/job-file.ts';
import type { PlateBody } from '../../geometry/part/part.ts';
import { type Mm, type Rad, TURN, toRadians, type Vec3 } from '../../geometry/units.ts';
import { circleAt, type Dimension, polarPlace } from './dimension-shape.ts';

/** @param name  path within the plate of what is being typed, such as `boltHoles[1].holeDiameter` */
export function plateDimension(name: string, plate: WearPlateFile, body: PlateBody): Dimension | null {
  if (name === 'thickness') return thickness(plate, body);
  const corner = /^outline\.(?:edge|holes\[(\d+)\])\[(\d+)\]\[([01])\]$/.exec(name);
  if (corner !== null) return cornerOf(plate, corner);
  const radius = (plate.outerDiameter ?? 0) / 2;
  if (plate.outline === undefined) {
    if (name === 'outerDiameter') return across(body, radius, plate.outerDiameter ?? 0, 0);
    if (name === 'boreDiameter')
      return across(body, (plate.boreDiameter ?? 0) / 2, plate.boreDiameter ?? 0, 0);
    if (name === 'coneAngle') return cone(plate, body);
  }
  const hole = /^boltHoles\[(\d+)\]\.(\w+)$/.exec(name);
  const circle = hole === null ? undefined : plate.boltHoles?.[Number(hole[1])];
  return hole === null || circle === undefined ? null : ofHoles(hole[2], circle, body);
}

/** A diameter through the shaft at the height of the circle it measures. */
function across(body: PlateBody, radius: Mm, value: Mm, angle: Rad): Dimension {
  const z = body.height(radius, 0);
  const end = (sign: number): Vec3 => [sign * radius * Math.cos(angle), sign * radius * Math.sin(angle), z];
  return { measured: [end(-1), end(1)], thin: [], quantity: 'length', value, sign: 'Ø', at: end(0) };
}

/** Beside the part at its greatest x, where it stands clear of the face. */
function thickness(plate: WearPlateFile, body: PlateBody): Dimension {
  const edge = body.loops.find(({ role }) => role === 'edge');
  const [x, y] =
    edge?.kind === 'polygon'
      ? edge.corners.reduce((a, b) => (b[0] - b[1] > a[0] - a[1] ? b : a))
      : polarPlace(edge?.radius ?? 0, -0.6);
  const top = body.height(x, y);
  const reach = Math.hypot(x, y);
  const out = (share: number, z: Mm): Vec3 => [x + (x / reach) * share, y + (y / reach) * share, z];
  const gap = Math.max(4, reach * 0.07);
  const bottom = top - plate.thickness;
  return {
    measured: [out(gap, top), out(gap, bottom)],
    thin: [
      [out(0, top), out(1.4 * gap, top)],
      [out(0, bottom), out(1.4 * gap, bottom)],
    ],
    quantity: 'length',
    value: plate.thickness,
    sign: '',
    at: out(2.6 * gap, (top + bottom) / 2),
  };
}

/** The angle at the rim between the level and the slope, in a plane through the shaft. */
function cone(plate: WearPlateFile, body: PlateBody): Dimension {
  const [outer, bore] = [(plate.outerDiameter ?? 0) / 2, (plate.boreDiameter ?? 0) / 2];
  const angle = toRadians(plate.coneAngle ?? 0);
  const level = body.height(outer, 0);
  const length = (outer - bore) * 0.8;
  const at = (turn: Rad, reach: Mm): Vec3 => [
    outer - reach * Math.cos(turn),
    0,
    level - reach * Math.sin(turn),
  ];
  return {
    measured: Array.from({ length: 13 }, (_, i) => at((angle * i) / 12, length)),
    thin: [
      [at(0, 0), at(0, length * 1.1)],
      [at(angle, 0), at(angle, length * 1.1)],
    ],
    quantity: 'angle',
    value: plate.coneAngle ?? 0,
    sign: '',
    at: at(angle / 2, length * 1.25),
  };
}

function ofHoles(name: string, circle: BoltCircleFile, body: PlateBody): Dimension | null {
  const { count, circleDiameter, holeDiameter, startAngle = 0 } = circle;
  const radius = circleDiameter / 2;
  const z = body.height(radius, 0);
  const start = toRadians(startAngle);
  const round = Array.from({ length: 121 }, (_, i): Vec3 => [...polarPlace(radius, (TURN * i) / 120), z]);
  switch (name) {
    case 'circleDiameter':
      return { ...across(body, radius, circleDiameter, start), thin: [round] };
    case 'holeDiameter': {
      const [x, y] = polarPlace(radius, start);
      const end = (sign: number): Vec3 => [x + (sign * holeDiameter) / 2, y, z];
      const at: Vec3 = [...polarPlace(radius + holeDiameter * 1.6, start), z];
      return {
        measured: [end(-1), end(1)],
        thin: [],
        quantity: 'length',
        value: holeDiameter,
        sign: 'Ø',
        at,
      };
    }
    case 'count': {
      const places = Array.from({ length: count }, (_, i) => polarPlace(radius, start + (TURN * i) / count));
      const rings = places.map(([x, y]) => circleAt(x, y, holeDiameter * 0.75, z));
      return {
        measured: [],
        thin: [round, ...rings],
        quantity: 'plain',
        value: count,
        noun: 'holes',
        sign: '',
        at: [0, 0, z],
      };
    }
    case 'startAngle': {
      const arc = Array.from(
        { length: 33 },
        (_, i): Vec3 => [...polarPlace(radius * 0.9, (start * i) / 32), z],
      );
      const arms = [0, start].map((turn): readonly Vec3[] => [
        [0, 0, z],
        [...polarPlace(radius, turn), z],
      ]);
      const at: Vec3 = [...polarPlace(radius * 0.78, start / 2), z];
      return { measured: arc, thin: arms, quantity: 'angle', value: startAngle, sign: '', at };
    }
    default:
      return null;
  }
}

/** A corner of an outline, with a ring round it. */
function cornerOf(plate: WearPlateFile, [, hole, corner, axis]: RegExpExecArray): Dimension | null {
  const loop = hole === undefined ? plate.outline?.edge : plate.outline?.holes?.[Number(hole)];
  const point = loop?.[Number(corner)];
  if (loop === undefined || point === undefined) return null;
  const [x, y] = point;
  const reach = Math.max(...loop.map(([a, b]) => Math.hypot(a, b)));
  const foot: Vec3 = axis === '0' ? [0, y, 0] : [x, 0, 0];
  return {
    measured: [foot, [x, y, 0]],
    thin: [circleAt(x, y, reach * 0.03, 0)],
    quantity: 'length',
    value: axis === '0' ? x : y,
    sign: '',
    at: [(foot[0] + x) / 2, (foot[1] + y) / 2, 0],
  };
}
