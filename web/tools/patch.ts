/** The patch: a box in a face's two coordinates, drawn from one corner to the opposite one. */
import { stepAlong } from '../../geometry/depth/chart.ts';
import type { MarkFile } from '../../geometry/job/job-file.ts';
import { type Face, toFacePoint, toGridPoint } from '../../geometry/part/face.ts';
import { type FacePoint, type Mm, toDegrees, toRadians } from '../../geometry/units.ts';
import { boxOutline } from './box-outline.ts';
import type { BrushSettings } from './brush.ts';
import { fileCoordinate, roundAngle, roundLength } from './file-point.ts';

export interface PatchInHand {
  /** Draws the opposite corner on to a point. An angle counts on round the turn. */
  drawTo(point: FacePoint): void;
  /** The edge of the box as it stands: closed lines of points in our units; none while it has no width. */
  outline(): readonly (readonly FacePoint[])[];
  /** The mark, in the file's units; null when the box is thinner than a stroke of chalk. */
  finish(): MarkFile | null;
}

/** A box thinner than this was a tap. */
const THINNEST: Mm = 0.5;

/** Starts a box at one corner; it snaps to the face's own edges when drawn past them. */
export function startPatch(face: Face, brush: BrushSettings, corner: FacePoint): PatchInHand {
  const [startU, startV] = toGridPoint(face, corner);
  let u = startU;
  let v = startV;

  const ranges = (): readonly [Range, Range] => {
    const [firstA, secondA] = toFacePoint(face, startU, startV);
    const [firstB, secondB] = toFacePoint(face, u, v);
    return [rangeOf(face, 0, firstA, firstB), rangeOf(face, 1, secondA, secondB)];
  };
  const isThin = ([first, second]: readonly [Range, Range]) =>
    width(face, 0, first, u) < THINNEST || width(face, 1, second, u) < THINNEST;

  return {
    drawTo(point) {
      const [nextU, nextV] = toGridPoint(face, point);
      v += stepAlong(face, v, nextV);
      u = nextU;
    },
    outline() {
      const box = ranges();
      if (isThin(box)) return [];
      const [first, second] = box.map((range, which) => ownRange(face, which as 0 | 1, range));
      return boxOutline(face, first, second);
    },
    finish() {
      const box = ranges();
      if (isThin(box)) return null;
      const [first, second] = box;
      return {
        kind: 'patch',
        face: face.name,
        first: [...first],
        second: [...second],
        depth: brush.depth,
        blend: 'deepest',
      };
    },
  };
}

/** From and to in the file's units. */
type Range = readonly [number, number];

function rangeOf(face: Face, which: 0 | 1, a: number, b: number): Range {
  const { isAngle, from, to } = face.coordinates[which];
  const [low, high] = a < b ? [a, b] : [b, a];
  if (!isAngle) {
    const within = (value: number) => Math.min(to, Math.max(from, value));
    return [roundLength(within(low)), roundLength(within(high))];
  }
  const span = roundAngle(toDegrees(high - low));
  if (span >= 360) return [0, 360];
  const start = fileCoordinate(face, which, low);
  const end = roundAngle(start + span);
  return [start, end > 360 ? roundAngle(end - 360) : end];
}

/** How wide a range is on the face, mm, at `u` where it is an angle. */
function width(face: Face, which: 0 | 1, range: Range, u: number): Mm {
  const span = face.coordinates[which].isAngle ? turnedFrom(range) : range[1] - range[0];
  if (!face.coordinates[which].isAngle) return span;
  const radius = face.picture.kind === 'polar' ? Math.max(u, face.grid.u0) : face.picture.columnScale;
  return toRadians(span) * radius;
}

/** Degrees from the first angle counter-clockwise to the second. */
const turnedFrom = ([from, to]: Range): number => (to > from ? to - from : to < from ? to - from + 360 : 0);

/** A range of the file in our units; an angle runs on from its first value. */
function ownRange(face: Face, which: 0 | 1, range: Range): Range {
  if (!face.coordinates[which].isAngle) return range;
  return [toRadians(range[0]), toRadians(range[0] + turnedFrom(range))];
}
