/**
 * The result in the file's units: mm, deg in [0, 360), cm2, cm3 (= mL), g, g/cm3, um for films. What the command prints and the
 * screen reads. Sections that are not worked out are null, never zero.
 */
import type { Estimate } from '../estimate.ts';
import type { FaceEstimate } from '../estimate-part.ts';
import type { LogEntry } from '../job/job.ts';
import type { Caution } from '../job/warning.ts';
import type { CoatMix } from '../material/coat.ts';
import type { WeighedBatch } from '../material/filler.ts';
import type { Portion } from '../material/mix.ts';
import type { PackCount } from '../material/pack.ts';
import type { PuttyAdvice } from '../material/severity.ts';
import type { Cover } from '../material/share-out.ts';
import type { WeighedOut } from '../material/weigh-out.ts';
import { type Weighing, weighingOf } from '../material/weighing.ts';
import type { Coordinate } from '../part/face.ts';
import type { ClimateVerdict } from '../plan/climate.ts';
import { type Deg, type FacePoint, type Rad, TURN, toDegrees, wrapTurn } from '../units.ts';
import { type BalanceResult, balanceResult } from './balance-result.ts';
import { balanceCautions } from './balance-text.ts';
import { type ClearanceResult, clearanceResult } from './clearance-result.ts';
import { type DayResult, dayResult, type PlanStepResult, planResult } from './day-result.ts';
import { deepFinite } from './deep-finite.ts';
import { type FlowTestResult, flowTestResult } from './flow-result.ts';
import { type HistoryResult, historyResult } from './history-result.ts';
import { type EnoughResult, enoughResult, type ReadingsResult, readingsResult } from './readings-result.ts';
import { type WallResult, wallsResult } from './wall-result.ts';

export interface Result {
  readonly parts: readonly PartResult[];
  readonly filler: FillerResult;
  readonly coat: CoatResult;
  /** null when the job asks for none. */
  readonly balance: BalanceResult | null;
  /** null when the job asks for none, or when plate and tips share no radius. */
  readonly clearance: ClearanceResult | null;
  /** How fast the parts wear; null when the job tells neither hours nor earlier repairs. */
  readonly history: HistoryResult | null;
  /** null when air, surface and humidity are not all known. */
  readonly climate: ClimateVerdict | null;
  /** Which class of putty the service asks for; null when the job does not say enough of it. */
  readonly advice: PuttyAdvice | null;
  /** By start; no steps when there is nothing to do. */
  readonly plan: readonly PlanStepResult[];
  readonly day: DayResult;
  /** What was done when, as it was noted. */
  readonly log: readonly LogEntry[];
  /** null when the job has none. */
  readonly flowTest: FlowTestResult | null;
  readonly warnings: readonly WarningResult[];
  readonly cautions: readonly Caution[];
}

export interface PartResult {
  readonly id: string;
  readonly faces: readonly FaceResult[];
  /** Of all faces, deepest first. */
  readonly regions: readonly RegionResult[];
  readonly lostVolume: number;
  readonly lostMass: number;
  readonly fillVolume: number;
  readonly fillMass: number;
  /** Left for the coat, on coated faces; like the others it holds a corner that two faces share once. */
  readonly leftVolume: number;
  /** Part frame, mm; null when nothing is filled. */
  readonly fillCentroid: readonly [number, number, number] | null;
  /** Of fillVolume, cm3, from gauge error and sampling; 0 when nothing was estimated. */
  readonly standardError: number;
  /** Of lostVolume, likewise. */
  readonly lostError: number;
  readonly readings: readonly ReadingsResult[];
  readonly thinnest: { readonly face: string; readonly at: FacePoint; readonly remaining: number };
  /** Each wall once. */
  readonly walls: readonly WallResult[];
}

export interface FaceResult {
  readonly face: string;
  readonly area: number;
  readonly wornArea: number;
  readonly deepest: number;
  readonly lostVolume: number;
  readonly fillVolume: number;
  readonly leftVolume: number;
}

export interface RegionResult {
  readonly id: string;
  readonly face: string;
  /** The deepest point. */
  readonly at: FacePoint;
  readonly area: number;
  readonly deepest: number;
  readonly lostVolume: number;
  readonly fillVolume: number;
  readonly action: 'fill' | 'leave';
  /** The person chose the action. */
  readonly overruled: boolean;
}

export interface FillerResult {
  readonly netVolume: number;
  /** With waste and overbuild. */
  readonly volume: number;
  /** Of volume, from gauge error and sampling; 0 when nothing was estimated. */
  readonly standardError: number;
  readonly mass: number;
  readonly density: number;
  readonly partA: Portion;
  readonly partB: Portion;
  readonly passes: number;
  readonly workingTime: number;
  /** At the part's temperature; null when the data sheet does not say. */
  readonly firmsUp: { readonly from: number; readonly to: number } | null;
  readonly hard: number | null;
  /** Every pack to buy mixes itself: nothing to weigh. */
  readonly selfMixing: boolean;
  readonly largestBatch: number;
  readonly batches: readonly BatchResult[];
  readonly packs: readonly PackCount[];
  /** How to weigh the ratio, when weighing it as it stands would go wrong. */
  readonly weighing: Weighing | null;
  /** Whether another gauge reading would change the order; null when nothing rests on readings. */
  readonly readings: EnoughResult | null;
}

export interface BatchResult {
  readonly number: number;
  readonly volume: number;
  readonly partA: Portion;
  readonly partB: Portion;
  /** The working time. */
  readonly minutes: number;
  /** How long it takes to fill and level, mixing apart. */
  readonly placing: number;
  /** For the scale; null when a cartridge mixes it, A or B has no density, or the scale is too coarse for so small a mix. */
  readonly weigh: WeighedOut | null;
  /** Angle ranges run counter-clockwise from the first to the second value, past 360 when the second is the smaller. */
  readonly covers: readonly Cover[];
}

export interface CoatResult {
  readonly area: number;
  /** Wear left for the coat to fill. */
  readonly leftVolume: number;
  readonly netVolume: number;
  readonly volume: number;
  readonly mass: number;
  readonly density: number;
  /** Volume to mix for each coat. */
  readonly perCoat: readonly number[];
  readonly layers: readonly CoatLayerResult[];
  /** Nominal area and volume of mix, by face. */
  readonly faces: readonly {
    readonly part: string;
    readonly face: string;
    readonly area: number;
    readonly volume: number;
  }[];
  /** The waste as a share of what is mixed: p on top of the need is p / (1 + p) of the mix. */
  readonly lostShare: number;
  /** Teeth of a wet film comb in steps of 25 um: the last that is wetted and the first that stays dry. */
  readonly comb: { readonly wet: number; readonly dry: number };
  /** um. */
  readonly wetFilm: number;
  readonly partA: Portion;
  readonly partB: Portion;
  readonly workingTime: number;
  readonly overcoat: { readonly from: number; readonly to: number } | null;
  readonly hard: number | null;
  readonly selfMixing: boolean;
  readonly packs: readonly PackCount[];
  readonly weighing: Weighing | null;
}

export interface CoatLayerResult {
  readonly number: number;
  readonly volume: number;
  readonly partA: Portion;
  readonly partB: Portion;
  readonly mixes: readonly CoatMixResult[];
}

export interface CoatMixResult {
  readonly number: number;
  readonly volume: number;
  readonly partA: Portion;
  readonly partB: Portion;
  readonly placing: number;
  readonly weigh: WeighedOut | null;
}

export interface WarningResult {
  readonly code: string;
  readonly field?: string;
  readonly text: string;
}

const MM2_PER_CM2 = 100;
const MM3_PER_CM3 = 1000;
const UM_PER_MM = 1000;

/**
 * An estimate as the result a program may rely on.
 * Throws when a number in it is NaN or infinite, naming the place: JSON would write null there without a word.
 */
export function toResult(estimate: Estimate): Result {
  const { job, filler, coat } = estimate;
  const faces = new Map(
    estimate.parts.flatMap(({ id, faces }) =>
      faces.map((known) => [`${id}:${known.face.name}`, known] as const),
    ),
  );
  const balance = estimate.balance && balanceResult(estimate.balance);
  const result: Result = {
    parts: estimate.parts.map((_, i) => partResult(estimate, i)),
    filler: {
      netVolume: filler.netVolume / MM3_PER_CM3,
      volume: filler.volume / MM3_PER_CM3,
      standardError: (estimate.fillError * (1 + job.repair.fillerWaste)) / MM3_PER_CM3,
      mass: filler.mass,
      density: filler.density * MM3_PER_CM3,
      partA: portionResult(filler.partA),
      partB: portionResult(filler.partB),
      passes: filler.passes,
      workingTime: filler.workingTime,
      firmsUp: filler.firmsUp,
      hard: filler.hard,
      selfMixing: filler.selfMixing,
      largestBatch: filler.largestBatch / MM3_PER_CM3,
      batches: filler.batches.map((batch) => batchResult(batch, faces)),
      packs: filler.packs,
      weighing: weighingOf(job.filler),
      readings: estimate.enough && enoughResult(estimate.enough),
    },
    coat: {
      area: coat.area / MM2_PER_CM2,
      leftVolume: coat.leftVolume / MM3_PER_CM3,
      netVolume: coat.netVolume / MM3_PER_CM3,
      volume: coat.volume / MM3_PER_CM3,
      mass: coat.mass,
      density: coat.density * MM3_PER_CM3,
      perCoat: coat.perCoat.map(({ volume }) => volume / MM3_PER_CM3),
      layers: coat.perCoat.map((layer) => ({
        ...mixResult(layer),
        mixes: layer.mixes.map((mix) => ({ ...mixResult(mix), placing: mix.placing, weigh: mix.weigh })),
      })),
      faces: coatFaces(estimate),
      lostShare: job.repair.coatWaste / (1 + job.repair.coatWaste),
      comb: combTeeth(coat.wetFilm * UM_PER_MM),
      wetFilm: coat.wetFilm * UM_PER_MM,
      partA: portionResult(coat.partA),
      partB: portionResult(coat.partB),
      workingTime: coat.workingTime,
      overcoat: coat.overcoat,
      hard: coat.hard,
      selfMixing: coat.selfMixing,
      packs: coat.packs,
      weighing: weighingOf(job.coat),
    },
    balance,
    clearance:
      estimate.clearance &&
      clearanceResult(estimate.clearance, (part, face, at) =>
        pointResult(faces.get(`${part}:${face}`) ?? faceNamed([], face), at),
      ),
    history: estimate.life && historyResult(estimate.life),
    climate: estimate.climate,
    advice: estimate.advice,
    plan: planResult(estimate),
    day: dayResult(estimate),
    log: job.log,
    flowTest: flowTestResult(estimate),
    warnings: estimate.warnings.map(({ code, field, text }) =>
      field === null ? { code, text } : { code, field, text },
    ),
    cautions: [...estimate.cautions, ...(balance === null ? [] : balanceCautions(balance))],
  };
  return deepFinite(result, 'toResult');
}

function partResult({ job, parts, readings, filler }: Estimate, i: number): PartResult {
  const part = parts[i];
  const { lost, filled, thinnest } = part;
  const pointOn = (face: string, at: FacePoint): FacePoint => pointResult(faceNamed(part.faces, face), at);
  return {
    id: part.id,
    faces: part.faces.map((known) => ({
      face: known.face.name,
      area: known.face.area / MM2_PER_CM2,
      wornArea: known.wornArea / MM2_PER_CM2,
      deepest: known.deepest,
      lostVolume: known.lost.volume / MM3_PER_CM3,
      fillVolume: known.filled.volume / MM3_PER_CM3,
      leftVolume: known.left.volume / MM3_PER_CM3,
    })),
    regions: part.regions.map(
      ({ id, face, at, area, deepest, lostVolume, fillVolume, action, overruled }) => ({
        id,
        face,
        at: pointOn(face, at),
        area: area / MM2_PER_CM2,
        deepest,
        lostVolume: lostVolume / MM3_PER_CM3,
        fillVolume: fillVolume / MM3_PER_CM3,
        action,
        overruled,
      }),
    ),
    lostVolume: lost.volume / MM3_PER_CM3,
    lostMass: lost.volume * job.parts[i].density,
    fillVolume: filled.volume / MM3_PER_CM3,
    fillMass: filled.volume * filler.density,
    leftVolume: part.left.volume / MM3_PER_CM3,
    fillCentroid:
      filled.volume > 0
        ? [filled.x / filled.volume, filled.y / filled.volume, filled.z / filled.volume]
        : null,
    standardError: readings[i].filled / MM3_PER_CM3,
    lostError: readings[i].lost / MM3_PER_CM3,
    readings: readingsResult(job, i, readings[i], pointOn),
    thinnest: { face: thinnest.face, at: pointOn(thinnest.face, thinnest.at), remaining: thinnest.remaining },
    walls: wallsResult(part.walls, pointOn),
  };
}

function faceNamed(faces: readonly FaceEstimate[], name: string): FaceEstimate {
  const found = faces.find(({ face }) => face.name === name);
  if (!found) throw new Error(`toResult: needs a face of the part, got ${name}`);
  return found;
}

function portionResult({ volume, mass }: Portion): Portion {
  return { volume: volume / MM3_PER_CM3, mass };
}

function mixResult({ number, volume, partA, partB }: Pick<CoatMix, 'number' | 'volume' | 'partA' | 'partB'>) {
  return {
    number,
    volume: volume / MM3_PER_CM3,
    partA: portionResult(partA),
    partB: portionResult(partB),
  };
}

/** Film and profile by the area of each face; wear that is left to the coat by where it lies. Corners that two faces share are counted on both. */
function coatFaces({ parts, coat, job }: Estimate): CoatResult['faces'] {
  const coated = parts.flatMap(({ id, faces }) =>
    faces.filter((face) => face.coated).map((face) => ({ part: id, ...face })),
  );
  const left = coated.reduce((sum, face) => sum + face.left.volume, 0);
  const share = (1 + job.repair.coatWaste) / job.coat.solidsByVolume;
  return coated.map(({ part, face, left: own }) => {
    const alike = coat.volume - coat.leftVolume * share;
    const volume =
      (alike * face.area) / coat.area + (left > 0 ? (own.volume / left) * coat.leftVolume * share : 0);
    return {
      part,
      face: face.name,
      area: face.area / MM2_PER_CM2,
      volume: coat.volume > 0 ? volume / MM3_PER_CM3 : 0,
    };
  });
}

/** Steps of the teeth of a comb; finer ones exist, this is the common one. */
const COMB_STEP = 25;

/** @param film  wet, um */
function combTeeth(film: number): CoatResult['comb'] {
  const wet = Math.floor(film / COMB_STEP + 1e-9) * COMB_STEP;
  return { wet, dry: wet + COMB_STEP };
}

function batchResult(batch: WeighedBatch, faces: ReadonlyMap<string, FaceEstimate>): BatchResult {
  return {
    number: batch.number,
    volume: batch.volume / MM3_PER_CM3,
    partA: portionResult(batch.partA),
    partB: portionResult(batch.partB),
    minutes: batch.minutes,
    placing: batch.placing,
    weigh: batch.weigh,
    covers: batch.covers.map((cover) => {
      const [first, second] = (faces.get(`${cover.part}:${cover.face}`) ?? faceNamed([], cover.face)).face
        .coordinates;
      return { ...cover, first: rangeResult(first, cover.first), second: rangeResult(second, cover.second) };
    }),
  };
}

function pointResult({ face }: FaceEstimate, [first, second]: FacePoint): FacePoint {
  const [a, b] = face.coordinates;
  return [a.isAngle ? degrees(first) : first, b.isAngle ? degrees(second) : second];
}

/** A whole turn stays one: its end is 360 on from its start, where any other end is in (0, 360]. */
function rangeResult(
  { isAngle }: Coordinate,
  [from, to]: readonly [number, number],
): readonly [number, number] {
  if (!isAngle) return [from, to];
  const start = degrees(from);
  if (to - from > TURN - 1e-9) return [start, start + 360];
  const end = degrees(to);
  return [start, end === 0 ? 360 : end];
}

/** In [0, 360), rounded to 1e-9 deg: an end on the mark must not read 359.9999999999. */
function degrees(angle: Rad): Deg {
  const rounded = Math.round(toDegrees(wrapTurn(angle)) * 1e9) / 1e9;
  return rounded >= 360 ? 0 : rounded;
}
