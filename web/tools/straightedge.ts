/** The straightedge: a line laid over a face from one place to another, or all along one of its two coordinates. */
import type { Section } from '../../geometry/job/job.ts';
import type { SectionFile } from '../../geometry/job/job-file.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import { filePoint, ownPoint } from './file-point.ts';
import { flatDistance } from './flat-distance.ts';

/** How it lies: between two places, or along one coordinate at a value of the other. */
export type Lay = SectionFile['kind'];

export interface StraightedgeInHand {
  /** Draws on to a point, which may lie beyond the edges of the face. */
  drawTo(point: FacePoint): void;
  /** As it lies, in our units; null while it is no longer than a tap. */
  section(): Section | null;
  /** The same in the file's units. */
  finish(): SectionFile | null;
}

/** A line shorter than this was a tap. */
const SHORTEST: Mm = 1;

/** Lays it down at a point of the face. What is seen while it is drawn is rounded as the file will spell it. */
export function layStraightedge(face: Face, lay: Lay, at: FacePoint): StraightedgeInHand {
  const first = placed(face, at);
  let last = first;
  const finish = (): SectionFile | null => {
    if (lay !== 'line') {
      const fixed = lay === 'along-first' ? 1 : 0;
      return { kind: lay, face: face.name, at: onFace(face, fixed, last[fixed]) };
    }
    const isTap = flatDistance(face, ownPoint(face, first), ownPoint(face, last)) < SHORTEST;
    return isTap ? null : { kind: 'line', face: face.name, from: [...first], to: [...last] };
  };
  return {
    drawTo(point) {
      last = placed(face, point);
    },
    section() {
      const file = finish();
      return file === null ? null : ownSection(face, file);
    },
    finish,
  };
}

/** A section in our own units: the same step as reading the file makes. */
export function ownSection(face: Face, section: SectionFile): Section {
  if (section.kind === 'line') {
    const { kind, face: name, from, to } = section;
    return { kind, face: name, from: ownPoint(face, from), to: ownPoint(face, to) };
  }
  const { kind, face: name, at } = section;
  const [first, second] = ownPoint(face, [at, at]);
  return { kind, face: name, at: kind === 'along-first' ? second : first };
}

/** As the file spells it, as near as a rule is laid by hand; no radius is below 0. */
function placed(face: Face, point: FacePoint): readonly [number, number] {
  const [first, second] = filePoint(face, point);
  return [tenths(face, 0, first), tenths(face, 1, second)];
}

/** A value of a coordinate within the face's range: drawn past its edge it stays on it. */
function onFace(face: Face, which: 0 | 1, value: number): number {
  const { isAngle, from, to } = face.coordinates[which];
  return isAngle ? value : Math.min(Math.floor(to * 10) / 10, Math.max(Math.ceil(from * 10) / 10, value));
}

function tenths(face: Face, which: 0 | 1, value: number): number {
  // The + 0 turns -0 into 0: the file knows only one.
  const rounded = Math.round(value * 10) / 10 + 0;
  const { label, isAngle } = face.coordinates[which];
  if (isAngle) return rounded >= 360 ? rounded - 360 : rounded;
  return label === 'radius' ? Math.max(0, rounded) : rounded;
}
