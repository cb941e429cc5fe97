import { type Balance, balance } from './balance/balance.ts';
import { type ClearanceEstimate, clearanceOf } from './clearance/clearance.ts';
import { clearanceWarnings } from './clearance/clearance-warnings.ts';
import type { RunningFace } from './clearance/face-residuals.ts';
import { otherRepairCautions, otherRepairWarnings } from './clearance/other-repair.ts';
import { type ServiceLife, serviceLife } from './clearance/service-life.ts';
import { markWarnings } from './depth/mark-warnings.ts';
import { survey } from './depth/survey.ts';
import { estimatePart, type FaceEstimate, type PartEstimate, type SurveyOf } from './estimate-part.ts';
import { estimateReadings, type ReadingsEstimate } from './estimate-readings.ts';
import { fillWarnings } from './fill/fill-warnings.ts';
import { type FlowTestEstimate, flowTestOf } from './flow-test/flow-test.ts';
import type { Clearance, Job, Rotor } from './job/job.ts';
import type { Caution, Warning } from './job/warning.ts';
import { cautions } from './material/cautions.ts';
import { type CoatNeed, coatNeed } from './material/coat.ts';
import { type FillerNeed, type FillRun, fillerNeed } from './material/filler.ts';
import { type ReadingEnough, readingEnough } from './material/reading-enough.ts';
import { adviceWarnings, type PuttyAdvice, puttyAdvice } from './material/severity.ts';
import { materialWarnings } from './material/warnings.ts';
import { runBins } from './moments/fill-run.ts';
import { partOf } from './part/part-of.ts';
import { middleOf, solidVolume } from './part/solid.ts';
import { wrapWarnings } from './part/wrap.ts';
import { type ClimateVerdict, climateWarnings, judgeClimate } from './plan/climate.ts';
import type { DayPlan } from './plan/day-plan.ts';
import type { DayWork } from './plan/day-work.ts';
import { planDay } from './plan/plan-day.ts';
import { planWarnings } from './plan/plan-warnings.ts';
import { readingWarnings } from './reading-warnings.ts';
import type { Celsius, Density, Mm, Mm3 } from './units.ts';

/** Every stage's answer in our own units, the maps included, so that a screen can draw any of them. */
export interface Estimate {
  readonly job: Job;
  readonly parts: readonly PartEstimate[];
  readonly filler: FillerNeed;
  readonly coat: CoatNeed;
  /** Part by part, what gauge readings leave open. */
  readonly readings: readonly ReadingsEstimate[];
  /** One standard deviation of the net volume of putty that they leave, mm3. */
  readonly fillError: Mm3;
  /** Whether another reading would change the order; null when no putty rests on readings. */
  readonly enough: ReadingEnough | null;
  /** null when the job asks for no balance. */
  readonly balance: Balance | null;
  /** null when the job asks for none, or when plate and tips share no radius. */
  readonly clearance: ClearanceEstimate | null;
  /** null when the job has no flow test. */
  readonly flowTest: FlowTestEstimate | null;
  /** How fast the parts wear; null when the job tells neither hours nor earlier repairs. */
  readonly life: ServiceLife | null;
  /** Which class of putty the service asks for; null when the job does not say enough of it. */
  readonly advice: PuttyAdvice | null;
  /** null when air, surface and humidity are not all known. */
  readonly climate: ClimateVerdict | null;
  /** No steps when there is nothing to fill and nothing to coat. */
  readonly day: DayPlan;
  /** The same job with the part at other temperatures. */
  readonly elsewhere: readonly DayElsewhere[];
  readonly warnings: readonly Warning[];
  readonly cautions: readonly Caution[];
}

/** What the day comes to in a colder or a warmer shop. */
export interface DayElsewhere {
  readonly surface: Celsius;
  readonly mixes: number;
  readonly day: DayPlan;
}

/** Shops in winter and in summer. */
const ELSEWHERE: readonly Celsius[] = [10, 30];

/**
 * The whole estimate of a job: each stage called once, in the order the data goes.
 * @param cell      map cell size, mm; null chooses it from the size of each face
 * @param surveyOf  judges gauge readings; another one may know them already, or say how far it is
 * Throws RangeError when `cell` makes a face of more than 16 million cells.
 */
export function estimate(
  job: Job,
  { cell = null, surveyOf = survey }: { readonly cell?: Mm | null; readonly surveyOf?: SurveyOf } = {},
): Estimate {
  const parts = job.parts.map((worn) => estimatePart(partOf(worn, cell), worn, job, surveyOf));
  const faces = parts.flatMap((part) => part.faces);

  const demand = {
    netVolume: sum(parts, (part) => part.filled.volume),
    filledArea: sum(faces, (face) => face.filledArea),
    deepestFill: Math.max(0, ...faces.map((face) => face.tally.deepestFill)),
    runs: fillRuns(parts),
  };
  const coated = faces.filter((face) => face.coated);
  const coating = {
    area: sum(coated, ({ face }) => face.area),
    leftVolume: sum(parts, ({ left }) => left.volume),
  };
  const fillerAt = (surface: Celsius | null) => fillerNeed(demand, job.filler, job.repair, surface);
  const coatAt = (surface: Celsius | null) =>
    coatNeed(coating, job.coat, job.repair, surface, job.plan.coatRate);
  const filler = fillerAt(job.surface);
  const coat = coatAt(job.surface);

  const readings = parts.map((part, i) =>
    estimateReadings(part, {
      metal: job.parts[i].density,
      filler: filler.density,
      coat: coat.density,
    }),
  );

  // Where nothing is filled, the next reading tells of metal lost and not of the order.
  const moves = readings.flatMap(({ each }) =>
    each.map(({ error }) => (error.filled > 0 ? (error.next?.moves ?? 0) : 0)),
  );
  const fillError = Math.hypot(...readings.map(({ filled }) => filled));

  const advice = job.service && puttyAdvice(job.service);
  const climate = judgeClimate(job.climate, [
    ...(filler.volume > 0 ? [{ what: 'putty', material: job.filler }] : []),
    ...(coat.volume > 0 ? [{ what: 'coat', material: job.coat }] : []),
  ]);
  const day = planDay(dayWork(job, parts, filler, coat), job.plan);
  const elsewhere = ELSEWHERE.map((surface): DayElsewhere => {
    const need = fillerAt(surface);
    return {
      surface,
      mixes: need.batches.length,
      day: planDay(dayWork(job, parts, need, coatAt(surface)), job.plan),
    };
  });

  const clearance = job.clearance && clearanceIn(job, job.clearance, parts);
  const life = lifeOf(job, parts, clearance);
  const wallWarnings = parts.flatMap(otherRepairWarnings);
  const flowTest = job.flowTest && flowTestOf(job.flowTest);
  const balanced = job.rotor && balanceOf(job, job.rotor, parts, readings, filler.density, coat.density);

  return {
    job,
    parts,
    filler,
    coat,
    readings,
    fillError,
    enough: fillError > 0 ? readingEnough(Math.max(...moves), job.filler, job.repair, filler.density) : null,
    balance: balanced,
    clearance,
    flowTest,
    life,
    advice,
    climate,
    day,
    elsewhere,
    warnings: [
      ...job.unsupported.map(notWorkedOut),
      ...job.parts.flatMap((part) => (part.kind === 'impeller' ? wrapWarnings(part) : [])),
      ...wallWarnings,
      ...parts.flatMap(({ landed }, i) => markWarnings(job, i, landed)),
      ...parts.flatMap((part, i) => readingWarnings(job, i, part, readings[i])),
      ...fillWarnings(
        job.repair,
        parts.flatMap(({ id, faces }) => faces.map(({ face, fill }) => ({ part: id, face, fill }))),
      ),
      ...faces.flatMap(leftBareWarning),
      ...(balanced?.warnings ?? []),
      ...(job.clearance === null ? [] : clearanceWarnings(job.clearance, clearance)),
      ...(flowTest?.warnings ?? []),
      ...materialWarnings(
        job,
        faces.map((face) => face.fill),
        filler,
        coat,
      ),
      ...adviceWarnings(advice, job.filler.largestGrain, demand.deepestFill),
      ...climateWarnings(job.climate, climate, job.plan.start),
      ...planWarnings(day),
    ],
    cautions: [
      ...cautions({ mixes: filler.volume > 0 || coat.volume > 0, fills: filler.volume > 0 }),
      ...otherRepairCautions(wallWarnings),
    ],
  };
}

function balanceOf(
  job: Job,
  rotor: Rotor,
  parts: readonly PartEstimate[],
  readings: readonly ReadingsEstimate[],
  fillerDensity: Density,
  coatDensity: Density,
): Balance {
  const i = job.parts.findIndex(({ id }) => id === rotor.part);
  if (i < 0) throw new Error(`estimate: needs a job whose rotor.part is one of its parts, got ${rotor.part}`);
  const { part, faces, lost, filled, left } = parts[i];
  const { density, leastThickness } = job.parts[i];
  const worn = (name: string) => faces.find(({ face }) => face.name === name);
  const [front, back] = [worn('shroud/front'), worn('shroud/back')];
  const impeller = part.body.kind === 'impeller' ? part.body : null;
  const [outermost] = part.faces;
  return balance({
    rotor,
    mass: rotor.mass ?? solidVolume(part) * density,
    isMassEstimated: rotor.mass === null,
    middle: middleOf(part),
    outerRadius: impeller?.shape.outerRadius ?? outermost.grid.u0 + outermost.grid.rows * outermost.grid.du,
    lost,
    filled,
    left,
    metalDensity: density,
    fillerDensity,
    coatDensity,
    readError: readings[i].net,
    vanes: impeller?.vanes ?? [],
    shroud: front && back && part.rim ? { front, back, rim: part.rim, leastThickness } : null,
  });
}

function clearanceIn(job: Job, ask: Clearance, parts: readonly PartEstimate[]): ClearanceEstimate | null {
  const running = (part: string, isRunning: (face: string) => boolean): RunningFace[] =>
    parts
      .filter(({ id }) => id === part)
      .flatMap(({ faces }) => faces)
      .filter(({ face }) => isRunning(face.name))
      .map(({ face, map, fill, coated }) => ({ face, map, fill, coated }));
  const [plate] = running(ask.plate, (face) => face === 'face');
  if (plate === undefined)
    throw new Error(`estimate: needs a job whose clearance.plate is one of its plates, got ${ask.plate}`);
  return clearanceOf(
    plate,
    running(ask.impeller, (face) => face.endsWith('/tip')),
    ask,
    job.coat,
  );
}

function lifeOf(
  job: Job,
  parts: readonly PartEstimate[],
  clearance: ClearanceEstimate | null,
): ServiceLife | null {
  const present = parts.map(({ id, faces, lost }) => {
    const wornArea = sum(faces, (face) => face.wornArea);
    return {
      part: id,
      deepest: Math.max(0, ...faces.map(({ deepest }) => deepest)),
      mean: wornArea > 0 ? lost.volume / wornArea : 0,
      volume: lost.volume,
    };
  });
  const repaired = parts.map(({ id, walls }, i) => ({
    id,
    walls,
    leastThickness: job.parts[i].leastThickness,
  }));
  const gap = clearance && {
    most: clearance.gap.coated.most,
    limit: clearance.ask.most,
    plate: clearance.ask.plate,
    impeller: clearance.ask.impeller,
  };
  return serviceLife(job.history, present, repaired, gap);
}

function dayWork(job: Job, parts: readonly PartEstimate[], filler: FillerNeed, coat: CoatNeed): DayWork {
  return {
    parts: parts.map(({ id, part, faces }) => ({
      id,
      tips: part.body.kind === 'impeller',
      coated: faces.some((face) => face.coated),
    })),
    filler,
    mixTime: job.filler.mixTime,
    coatMixTime: job.coat.mixTime,
    coat,
  };
}

/** Layer by layer: what lies deepest goes on every part before any of them gets the next. */
function fillRuns(parts: readonly PartEstimate[]): FillRun[] {
  const faces = parts.flatMap(({ id, faces }) => faces.map(({ face, tally }) => ({ id, face, tally })));
  const passes = Math.max(0, ...faces.map(({ tally }) => tally.layers.length));
  return Array.from({ length: passes }, (_, i) =>
    faces.flatMap(({ id, face, tally: { layers } }): FillRun[] => {
      // Faces that take fewer layers join in at the last ones.
      const layer = layers.at(layers.length - passes + i);
      const hasOne = layers.length - passes + i >= 0;
      return hasOne && layer !== undefined
        ? [{ part: id, face: face.name, pass: i + 1, ...runBins(face, layer) }]
        : [];
    }),
  ).flat();
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
