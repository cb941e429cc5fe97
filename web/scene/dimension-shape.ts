import { type Mm, type Rad, TURN, type Vec3 } from '../../geometry/units.ts';

/** A dimension as lines on a part: what a caliper or a protractor would be held to. */
export interface Dimension {
  /** The measured line, arrows at both ends; an arc has more than two points. */
  readonly measured: readonly Vec3[];
  /** Thin lines: witness lines, the circle that holes stand on. */
  readonly thin: readonly (readonly Vec3[])[];
  /** The quantity and its value in the file's unit, to be written at `at`. */
  readonly quantity: 'length' | 'angle' | 'plain';
  readonly value: number;
  /** What is counted, where it is a number of things. */
  readonly noun?: string;
  readonly sign: 'Ø' | '';
  readonly at: Vec3;
}

export function circleAt(x: Mm, y: Mm, radius: Mm, z: Mm): readonly Vec3[] {
  return Array.from({ length: 41 }, (_, i): Vec3 => {
    const [dx, dy] = polarPlace(radius, (TURN * i) / 40);
    return [x + dx, y + dy, z];
  });
}

export const polarPlace = (radius: Mm, angle: Rad): readonly [Mm, Mm] => [
  radius * Math.cos(angle),
  radius * Math.sin(angle),
];
