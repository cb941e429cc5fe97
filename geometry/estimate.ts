import { thinnestWall, type WallLeft } from './clearance/wall-left.ts';
import type { DepthMap } from './depth/depth-map.ts';
import { replay } from './depth/replay.ts';
import { decideFill, type FillMap, isListed } from './fill/fill-map.ts';
import type { Region } from './fill/region.ts';
import type { Job, Repair, WearPlate } from './job/job.ts';
import type { Caution, Warning } from './job/warning.ts';
import { cautions } from './material/cautions.ts';
import { type CoatNeed, coatNeed } from './material/coat.ts';
import { type FillerNeed, type FillRun, fillerNeed } from './material/filler.ts';
import { materialWarnings } from './material/warnings.ts';
import { runBins } from './moments/fill-run.ts';
import { filmOn } from './moments/film.ts';
import { added, combined, lostMetal, metalOf } from './moments/integrate.ts';
import type { Metal } from './moments/metal.ts';
import { sharedMetal } from './moments/shared-metal.ts';
import { type Tally, tallyFace } from './moments/tally.ts';
import type { Face } from './part/face.ts';
import type { Corner, Part } from './part/part.ts';
import { wearPlate } from './part/wear-plate.ts';
import type { Mm, Mm2, Mm3 } from './units.ts';

/** Every stage's answer in our own units, the maps included, so that a screen can draw any of them. */
export interface Estimate {
  readonly job: Job;
  readonly parts: readonly PartEstimate[];
  readonly filler: FillerNeed;
  readonly coat: CoatNeed;
  readonly warnings: readonly Warning[];
  readonly cautions: readonly Caution[];
}

export interface PartEstimate {
  readonly id: string;
  readonly faces: readonly FaceEstimate[];
  /** Of all faces, deepest first. */
  readonly regions: readonly MeasuredRegion[];
  /** A corner that two worn faces share counts once, here and in what is filled. */
  readonly lost: Metal;
  readonly filled: Metal;
  /** What the coat puts on its faces: wear left to it, and its films on the nominal faces. */
  readonly left: Metal;
  readonly film: Metal;
  readonly thinnest: WallLeft;
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
  /** Of this face alone; a corner shared with another face counts here in full. */
  readonly lost: Metal;
  readonly filled: Metal;
  readonly left: Metal;
  readonly coated: boolean;
}

/**
 * The whole estimate of a job: each stage called once, in the order the data goes.
 * @param cell  map cell size, mm; null chooses it from the size of each face
 * Throws RangeError when `cell` makes a face of more than 16 million cells.
 */
export function estimate(job: Job, { cell = null }: { readonly cell?: Mm | null } = {}): Estimate {
  const parts = job.parts.map((plate) => estimatePart(wearPlate(plate, cell), plate, job));
  const faces = parts.flatMap((part) => part.faces);

  const filler = fillerNeed(
    {
      netVolume: sum(parts, (part) => part.filled.volume),
      filledArea: sum(faces, (face) => face.filledArea),
      deepestFill: Math.max(0, ...faces.map((face) => face.tally.deepestFill)),
      runs: parts.flatMap(fillRuns),
    },
    job.filler,
    job.repair,
    job.surface,
  );
  const coated = faces.filter((face) => face.coated);
  const coat = coatNeed(
    { area: sum(coated, ({ face }) => face.area), leftVolume: sum(parts, ({ left }) => left.volume) },
    job.coat,
    job.repair,
    job.surface,
  );

  return {
    job,
    parts,
    filler,
    coat,
    warnings: [
      ...job.unsupported.map(notWorkedOut),
      ...parts.flatMap((part, i) => wallWarnings(part, job.parts[i])),
      ...faces.flatMap(leftBareWarning),
      ...materialWarnings(
        job,
        faces.map((face) => face.fill),
        filler,
      ),
    ],
    cautions: cautions({ mixes: filler.volume > 0 || coat.volume > 0, fills: filler.volume > 0 }),
  };
}

function estimatePart(part: Part, plate: WearPlate, job: Job): PartEstimate {
  const faces = part.faces.map((face) => estimateFace(part.id, face, replay(face, plate.marks), job.repair));
  const coated = faces.filter((face) => face.coated);
  const shared = part.corners.map((corner) => sharedAt(corner, faces));
  const once = (pieces: readonly Metal[], twice: readonly Metal[]): Metal =>
    combined(added(pieces), added(twice), -1);
  return {
    id: part.id,
    faces,
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
    film: added(coated.map(({ face }) => filmOn(face, job.coat.coats * job.coat.dryFilm))),
    thinnest: faces
      .map(({ face, map }) => thinnestWall(face, map))
      .reduce((a, b) => (b.remaining < a.remaining ? b : a)),
  };
}

function estimateFace(part: string, face: Face, map: DepthMap, repair: Repair): FaceEstimate {
  const fill = decideFill(part, face, map, repair);
  const tally = tallyFace(face, map, fill);
  return {
    face,
    map,
    fill,
    tally,
    wornArea: sum(fill.regions, (region) => region.area),
    filledArea: sum(fill.regions, (region) => (region.action === 'fill' ? region.area : 0)),
    deepest: fill.regions.reduce((most, region) => Math.max(most, region.deepest), 0),
    lost: lostMetal(face, map),
    filled: metalOf(face, map, fill, 'fill'),
    left: metalOf(face, map, fill, 'leave'),
    coated: isListed(repair.coatedFaces, part, face.name),
  };
}

/** What two faces of a corner share: of the metal lost, of the filler, and of what is left to the coat but counted twice or filled. */
function sharedAt(corner: Corner, faces: readonly FaceEstimate[]): Record<'lost' | 'filled' | 'left', Metal> {
  const [over, side] = [corner.over, corner.side].map(
    (face) => faces.find((known) => known.face === face) as FaceEstimate,
  );
  const all = ({ map }: FaceEstimate) => ({ map, from: 0, holds: () => true });
  const of = ({ map, fill }: FaceEstimate, action: Region['action']) => ({
    map,
    from: action === 'fill' ? fill.allowance : 0,
    holds: (cell: number) => fill.label[cell] > 0 && fill.regions[fill.label[cell] - 1].action === action,
  });
  const both = (a: Region['action'], b: Region['action']) => sharedMetal(corner, of(over, a), of(side, b));
  const left = [
    ...(over.coated && side.coated ? [both('leave', 'leave')] : []),
    ...(over.coated ? [both('leave', 'fill')] : []),
    ...(side.coated ? [both('fill', 'leave')] : []),
  ];
  return { lost: sharedMetal(corner, all(over), all(side)), filled: both('fill', 'fill'), left: added(left) };
}

function measuredRegions({ fill, tally }: FaceEstimate): MeasuredRegion[] {
  return fill.regions.map((region, i) => ({
    ...region,
    lostVolume: tally.lost[i],
    fillVolume: tally.fill[i],
  }));
}

function fillRuns(part: PartEstimate): FillRun[] {
  return part.faces.map(({ face, tally }) => ({ part: part.id, face: face.name, ...runBins(face, tally) }));
}

function wallWarnings(part: PartEstimate, plate: WearPlate): Warning[] {
  const { remaining, face } = part.thinnest;
  if (remaining === 0) {
    return [
      {
        code: 'worn-through',
        field: null,
        text: `${part.id}: ${face} is worn through. Filler alone does not replace a wall; repair it by other means first.`,
      },
    ];
  }
  if (plate.leastThickness === null || remaining >= plate.leastThickness) return [];
  return [
    {
      code: 'wall-thin',
      field: null,
      text: `${part.id}: ${face} has ${remaining.toFixed(2)} mm of metal left at its thinnest, less than the least of ${plate.leastThickness} mm.`,
    },
  ];
}

function leftBareWarning({ face, fill, coated }: FaceEstimate): Warning[] {
  const left = fill.regions.filter((region) => region.action === 'leave');
  if (coated || left.length === 0) return [];
  return [
    {
      code: 'left-uncoated',
      field: 'repair.coatedFaces',
      text: `${left[0].part}: ${left.length === 1 ? 'one worn patch' : `${left.length} worn patches`} of ${face.name} left to the coat, but that face is not coated. Fill it, or coat the face.`,
    },
  ];
}

function notWorkedOut({ field, what }: { field: string; what: string }): Warning {
  return {
    code: 'not-worked-out',
    field,
    text: `This version does not work out ${what} yet; the figures are without it.`,
  };
}

function sum<T>(items: readonly T[], amount: (item: T) => number): number {
  return items.reduce((total, item) => total + amount(item), 0);
}
