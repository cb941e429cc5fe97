import { type WallEstimate, wallsLeft } from './clearance/thin-places.ts';
import { thinnestOf, type WallLeft } from './clearance/wall-left.ts';
import { type DepthMap, deepestOf } from './depth/depth-map.ts';
import { type Reach, reachOf } from './depth/reach.ts';
import type { ReadTrace } from './depth/read-trace.ts';
import { replay } from './depth/replay.ts';
import type { Survey } from './depth/survey.ts';
import { decideFill, type FillMap, isListed } from './fill/fill-map.ts';
import type { Region } from './fill/region.ts';
import type { Job, Mark, Readings, WornPart } from './job/job.ts';
import { added, combined, lostMetal, metalOf } from './moments/integrate.ts';
import { sharedMetal } from './moments/shared-metal.ts';
import { type Tally, tallyFace } from './moments/tally.ts';
import type { Face } from './part/face.ts';
import { type Metal, NO_METAL } from './part/metal.ts';
import type { Corner, Part } from './part/part.ts';
import type { Mm, Mm2, Mm3 } from './units.ts';

export interface PartEstimate {
  readonly id: string;
  readonly part: Part;
  readonly faces: readonly FaceEstimate[];
  /** The marks that touch a cell of a face. */
  readonly landed: ReadonlySet<Mark>;
  /** What each mark of readings says; null where none of its readings lies on the face. */
  readonly surveys: ReadonlyMap<Readings, Survey | null>;
  /** Of all faces, deepest first. */
  readonly regions: readonly MeasuredRegion[];
  /** A corner that two worn faces share counts once, here and in what is filled. */
  readonly lost: Metal;
  readonly filled: Metal;
  /** Wear left to the coat, on coated faces. */
  readonly left: Metal;
  readonly thinnest: WallLeft;
  /** Each wall once: of a vane or a shroud both sides together. */
  readonly walls: readonly WallEstimate[];
}

export interface MeasuredRegion extends Region {
  readonly lostVolume: Mm3;
  readonly fillVolume: Mm3;
}

export interface FaceEstimate {
  readonly face: Face;
  readonly map: DepthMap;
  readonly fill: FillMap;
  readonly tally: Tally;
  readonly wornArea: Mm2;
  readonly filledArea: Mm2;
  readonly deepest: Mm;
  /** The greatest depth of its map, damage or not. */
  readonly reach: Mm;
  /** The same place by place. */
  readonly near: Reach;
  /** Of this face alone; a corner shared with another face counts here in full. */
  readonly lost: Metal;
  readonly filled: Metal;
  readonly left: Metal;
  readonly coated: boolean;
  /** Where readings decide its depth. */
  readonly traces: readonly ReadTrace[];
}

/** What gauge readings say of a face; the faces of a mark for every vane are alike, and so is what it says of them. */
export type SurveyOf = (face: Face, mark: Readings) => Survey | null;

/** Everything one part asks for: its marks replayed, its regions decided, its metal added up with corners counted once. */
export function estimatePart(
  part: Part,
  worn: WornPart,
  { repair, filler }: Pick<Job, 'repair' | 'filler'>,
  surveyOf: SurveyOf,
): PartEstimate {
  const landed = new Set<Mark>();
  const surveys = new Map<Readings, Survey | null>();
  const faces = part.faces.map((face) => {
    const traces: ReadTrace[] = [];
    const surfaceOf = (mark: Readings) => {
      if (!surveys.has(mark)) surveys.set(mark, surveyOf(face, mark));
      return surveys.get(mark)?.surface ?? null;
    };
    const map = replay(face, worn.marks, { surfaceOf, landed, traces });
    return estimateFace(part.id, face, map, traces, { repair, filler });
  });
  const walls = wallsLeft(part, (face) => estimateOf(faces, face), worn.leastThickness);
  const coated = faces.filter((face) => face.coated);
  const shared = part.corners.map((corner) => sharedAt(corner, faces));
  const once = (pieces: readonly Metal[], twice: readonly Metal[]): Metal =>
    combined(added(pieces), added(twice), -1);
  return {
    id: part.id,
    part,
    faces,
    landed,
    surveys,
    regions: faces.flatMap(measuredRegions).sort((a, b) => b.deepest - a.deepest),
    lost: once(
      faces.map(({ lost }) => lost),
      shared.map(({ lost }) => lost),
    ),
    filled: once(
      faces.map(({ filled }) => filled),
      shared.map(({ filled }) => filled),
    ),
    left: once(
      coated.map(({ left }) => left),
      shared.map(({ left }) => left),
    ),
    thinnest: thinnestOf(walls),
    walls,
  };
}

function estimateFace(
  part: string,
  face: Face,
  map: DepthMap,
  traces: readonly ReadTrace[],
  { repair, filler }: Pick<Job, 'repair' | 'filler'>,
): FaceEstimate {
  const reach = deepestOf(map);
  const fill = decideFill(part, face, map, repair);
  const tally = tallyFace(face, map, fill, filler.mostBuild);
  return {
    face,
    map,
    fill,
    tally,
    wornArea: sum(fill.regions, (region) => region.area),
    filledArea: sum(fill.regions, (region) => (region.action === 'fill' ? region.area : 0)),
    deepest: fill.regions.reduce((most, region) => Math.max(most, region.deepest), 0),
    reach,
    near: reachOf(map),
    lost: reach > 0 ? lostMetal(face, map) : NO_METAL,
    filled: metalOf(face, map, fill, 'fill'),
    left: metalOf(face, map, fill, 'leave'),
    coated: isListed(repair.coatedFaces, part, face.name),
    traces,
  };
}

/** What the faces of a corner share: of the metal lost, of the filler, and of what is left to the coat but counted twice or filled. */
function sharedAt(corner: Corner, faces: readonly FaceEstimate[]): Record<'lost' | 'filled' | 'left', Metal> {
  const over = estimateOf(faces, corner.over);
  const all = ({ map, reach, near }: FaceEstimate) => ({ map, from: 0, reach, near, holds: () => true });
  const of = ({ map, fill, near }: FaceEstimate, action: Region['action']) => ({
    map,
    near,
    reach: fill.regions.reduce(
      (most, region) => (region.action === action ? Math.max(most, region.deepest) : most),
      0,
    ),
    from: action === 'fill' ? fill.allowance : 0,
    holds: (cell: number) => fill.label[cell] > 0 && fill.regions[fill.label[cell] - 1].action === action,
  });
  const both = (a: Region['action'], b: Region['action'], counts: (side: FaceEstimate) => boolean) =>
    sharedMetal(corner, of(over, a), (face) => {
      const side = estimateOf(faces, face);
      return counts(side) ? of(side, b) : null;
    });
  const left = [
    ...(over.coated
      ? [both('leave', 'leave', ({ coated }) => coated), both('leave', 'fill', () => true)]
      : []),
    both('fill', 'leave', ({ coated }) => coated),
  ];
  return {
    lost: sharedMetal(corner, all(over), (face) => all(estimateOf(faces, face))),
    filled: both('fill', 'fill', () => true),
    left: added(left),
  };
}

function estimateOf(faces: readonly FaceEstimate[], face: Face): FaceEstimate {
  const found = faces.find((known) => known.face === face);
  if (!found) throw new Error(`estimate: needs a face of the part, got ${face.name}`);
  return found;
}

function measuredRegions({ fill, tally }: FaceEstimate): MeasuredRegion[] {
  return fill.regions.map((region, i) => ({
    ...region,
    lostVolume: tally.lost[i],
    fillVolume: tally.fill[i],
  }));
}

function sum<T>(items: readonly T[], amount: (item: T) => number): number {
  return items.reduce((total, item) => total + amount(item), 0);
}
