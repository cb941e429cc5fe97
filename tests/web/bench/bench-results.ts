import type { JobFile, LogFile } from '../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import type { StepKind } from '../../../geometry/plan/day-plan.ts';
import type { PlanStepResult } from '../../../geometry/sheet/day-result.ts';
import type { BatchResult } from '../../../geometry/sheet/result.ts';
import type { BenchResult } from '../../../web/bench/bench-plan.ts';

/** 7:00 of a day in December, UTC, ms since 1970. */
export const SEVEN = Date.UTC(2026, 11, 1, 7);
export const MIN = 60_000;

/** So many minutes after seven, as the log keeps it. */
export function at(minutes: number): string {
  return new Date(SEVEN + minutes * MIN).toISOString().replace('.000Z', '+00:00');
}

function step(
  id: string,
  kind: StepKind,
  start: number,
  given: Partial<PlanStepResult> = {},
): PlanStepResult {
  return {
    id,
    kind,
    step: id,
    parts: ['plate'],
    batch: null,
    coat: null,
    coatMix: null,
    start,
    minutes: 10,
    hands: true,
    window: null,
    after: [],
    note: '',
    trouble: null,
    cautions: [],
    ...given,
  };
}

/** 150 mL of 2 : 1 by volume, A 2.4 and B 2.1 g/cm3: 240 g and 105 g. */
export const MIX: BatchResult = {
  number: 1,
  volume: 150,
  partA: { volume: 100, mass: 240 },
  partB: { volume: 50, mass: 105 },
  minutes: 20,
  placing: 15,
  weigh: { partA: 240, partB: 105, ratioError: 0 },
  covers: [],
};

const PORTION = { volume: 0, mass: 0 };

/** Wipe, two mixes that are dressed, two coats of which the first takes two mixes. Round made-up times: arithmetic is all that is tested. */
export const BENCH: BenchResult = {
  plan: [
    step('wipe:plate', 'wipe', 0),
    step('flash-off', 'flash-off', 10, { hands: false, after: ['wipe:plate'], minutes: 15 }),
    step('fill:1', 'fill', 25, { batch: 1, after: ['flash-off'] }),
    step('fill:2', 'fill', 50, { batch: 2 }),
    step('dress:1', 'dress', 100, { batch: 1 }),
    step('dress:2', 'dress', 125, { batch: 2 }),
    step('coat:1.1', 'coat', 200, { coat: 1, coatMix: 1 }),
    step('coat:1.2', 'coat', 220, { coat: 1, coatMix: 2 }),
    step('coat:2.1', 'coat', 460, { coat: 2, coatMix: 1 }),
    step('harden', 'harden', 480, { hands: false, after: ['coat:2.1'], minutes: 1440 }),
    step('test', 'test', 1920, { after: ['harden'] }),
  ],
  day: { start: '2026-12-01T07:00', end: 2000, handsOn: 200, elsewhere: [] },
  cautions: [],
  filler: {
    netVolume: 270,
    volume: 300,
    standardError: 0,
    mass: 690,
    density: 2.3,
    partA: { volume: 200, mass: 480 },
    partB: { volume: 100, mass: 210 },
    passes: 1,
    workingTime: 20,
    firmsUp: { from: 60, to: 120 },
    hard: 960,
    selfMixing: false,
    largestBatch: 200,
    batches: [MIX, { ...MIX, number: 2 }],
    packs: [],
    weighing: null,
    readings: null,
  },
  coat: {
    area: 1000,
    leftVolume: 0,
    netVolume: 50,
    volume: 60,
    mass: 102,
    density: 1.7,
    perCoat: [30, 30],
    layers: [1, 2].map((number) => ({
      number,
      volume: 30,
      partA: PORTION,
      partB: PORTION,
      mixes: (number === 1 ? [1, 2] : [1]).map((mix) => ({
        number: mix,
        volume: 15,
        partA: { volume: 10, mass: 17.5 },
        partB: { volume: 5, mass: 8 },
        placing: 10,
        weigh: null,
      })),
    })),
    faces: [],
    lostShare: 0.1,
    comb: { wet: 200, dry: 225 },
    wetFilm: 200,
    partA: PORTION,
    partB: PORTION,
    workingTime: 30,
    overcoat: { from: 240, to: 1440 },
    hard: 1440,
    selfMixing: false,
    packs: [],
    weighing: null,
  },
};

/** A job with that log. */
export function jobWith(log: LogFile): JobFile {
  return { ...newPlateJob(), log };
}
