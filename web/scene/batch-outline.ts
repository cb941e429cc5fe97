import type { Cover } from '../../geometry/material/share-out.ts';
import { type Face, toGridPoint } from '../../geometry/part/face.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import type { BatchResult } from '../../geometry/sheet/result.ts';
import { type FacePoint, type Mm, type Mm2, toRadians, wrapTurn } from '../../geometry/units.ts';
import { boxOutline } from '../tools/box-outline.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import type { SightedPlace } from './reading-sight.ts';

/** A stretch of a face that takes putty of one mix, as it is drawn. */
export interface BatchOutline {
  /** Number of the mix. */
  readonly batch: number;
  readonly live: LiveFace;
  /** Its edge: one closed line, or two where it runs the whole turn. */
  readonly lines: readonly (readonly SightedPlace[])[];
  /** Places within it where its number may stand, the best first. */
  readonly within: readonly SightedPlace[];
  /** Of the box, in the flat picture; says which of several is the largest. */
  readonly area: Mm2;
}

/** Shares of both ranges: the middle first, then about it. */
const WITHIN = [
  [0.5, 0.5],
  [0.5, 0.3],
  [0.5, 0.7],
  [0.5, 0.15],
  [0.5, 0.85],
  [0.25, 0.5],
  [0.75, 0.5],
] as const;

/** The stretches of all mixes on the faces of one part. @param covers  in the file's units */
export function batchOutlines(
  part: string,
  faces: readonly LiveFace[],
  batches: readonly Pick<BatchResult, 'number' | 'covers'>[],
): readonly BatchOutline[] {
  return batches.flatMap(({ number, covers }) =>
    covers.flatMap((cover) => {
      const live = faces.find(({ face }) => cover.part === part && face.name === cover.face);
      return live === undefined ? [] : [outlineOf(number, live, cover)];
    }),
  );
}

function outlineOf(batch: number, live: LiveFace, cover: Cover): BatchOutline {
  const { face } = live;
  const [first, second] = ownRanges(face, cover);
  const sighted = (point: FacePoint): SightedPlace => ({ live, place: toGridPoint(face, point) });
  const between = ([from, to]: OwnRange, share: number) => from + share * (to - from);
  return {
    batch,
    live,
    lines: boxOutline(face, first, second).map((line) => thinned(face, line).map(sighted)),
    within: WITHIN.map(([a, b]) => sighted([between(first, a), between(second, b)])),
    area: boxArea(face, first, second),
  };
}

type OwnRange = readonly [from: number, to: number];

/** The ranges in our own units; an angle whose end is the smaller number runs on past the whole turn. */
function ownRanges({ coordinates }: Face, { first, second }: Cover): readonly [OwnRange, OwnRange] {
  const own = ([from, to]: OwnRange, isAngle: boolean): OwnRange =>
    isAngle ? [toRadians(from), toRadians(to < from ? to + 360 : to)] : [from, to];
  return [own(first, coordinates[0].isAngle), own(second, coordinates[1].isAngle)];
}

/** mm in the flat picture from point to point: finer cannot be told from it, and hundreds of small stretches stay cheap to turn. */
const SPACING: Mm = 2.5;
/** Every so manieth point may be kept: these divide the 48 of a side, so that corners stay. */
const EVERY = [12, 8, 6, 4, 3, 2] as const;

function thinned(face: Face, line: readonly FacePoint[]): readonly FacePoint[] {
  const frame = flatFrame(face);
  const flat = line.map((point) => frame.toFlat(...toGridPoint(face, point)));
  const widest = flat.reduce((most, [x, y], i) => {
    const [nx, ny] = flat[(i + 1) % flat.length];
    return Math.max(most, Math.hypot(nx - x, ny - y));
  }, 0);
  const every = EVERY.find((step) => step * widest <= SPACING) ?? 1;
  return line.filter((_, i) => i % every === 0);
}

function boxArea(face: Face, first: OwnRange, second: OwnRange): Mm2 {
  const { picture } = face;
  const [[u0, v0], [u1, v1]] = [
    toGridPoint(face, [first[0], second[0]]),
    toGridPoint(face, [first[1], second[1]]),
  ];
  const width = picture.kind === 'polar' ? (u0 + u1) / 2 : picture.columnScale;
  return Math.abs((u1 - u0) * (v1 - v0) * width);
}

/** Number of the mix that goes to a place of a face, the one laid first; null where none does. @param point  in our own units */
export function batchAt(
  batches: readonly Pick<BatchResult, 'number' | 'covers'>[],
  part: string,
  face: Face,
  point: FacePoint,
): number | null {
  const found = batches.find(({ covers }) =>
    covers.some(
      (cover) =>
        cover.part === part &&
        cover.face === face.name &&
        ownRanges(face, cover).every((range, i) => isIn(range, point[i], face.coordinates[i].isAngle)),
    ),
  );
  return found?.number ?? null;
}

function isIn([from, to]: OwnRange, value: number, isAngle: boolean): boolean {
  return isAngle ? wrapTurn(value - from) <= to - from : value >= from && value <= to;
}
