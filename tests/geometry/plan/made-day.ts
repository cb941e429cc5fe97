/** Days made to order: parts, mixes and coats by their minutes alone. */
import { USUAL_STEP_TIMES } from '../../../geometry/job/defaults.ts';
import type { PlanChoices, StepTimes } from '../../../geometry/job/job.ts';
import type { CoatNeed } from '../../../geometry/material/coat.ts';
import type { FillerNeed } from '../../../geometry/material/filler.ts';
import type { DayPlan, PlanStep } from '../../../geometry/plan/day-plan.ts';
import type { DayWork } from '../../../geometry/plan/day-work.ts';
import { planDay } from '../../../geometry/plan/plan-day.ts';
import type { Minute } from '../../../geometry/units.ts';

/** `plate/face` or `plate/face/2`: part, face, layer. */
export type Ground = string;

export interface MadeDay {
  readonly parts: readonly string[];
  /** id of a part that the coat leaves out. */
  readonly uncoated?: string;
  /** Minutes of mixing and placing, and the ground, of each mix of filler. */
  readonly mixes: readonly { readonly minutes: Minute; readonly on: readonly Ground[] }[];
  readonly firmsUp?: FillerNeed['firmsUp'];
  readonly fillerHard?: Minute | null;
  /** Minutes of mixing and brushing of each mix of each coat. */
  readonly coats?: readonly (readonly Minute[])[];
  readonly overcoat?: CoatNeed['overcoat'];
  readonly coatHard?: Minute | null;
}

export interface MadeChoices {
  readonly start?: string | null;
  readonly shift?: PlanChoices['shift'];
  readonly breaks?: PlanChoices['breaks'];
  readonly minutes?: Partial<StepTimes>;
}

/** All of it is mixed in this time, so that the rest of a mix is placing. */
const MIXING: Minute = 2;
const WORKING_TIME: Minute = 20;
const NONE = { volume: 0, mass: 0 };

export function workOf(made: MadeDay): DayWork {
  const { parts, mixes, coats = [], uncoated } = made;
  const { firmsUp = { from: 30, to: 45 }, fillerHard = 480 } = made;
  const { overcoat = { from: 60, to: 240 }, coatHard = 960 } = made;
  const material = { density: 1, partA: NONE, partB: NONE, selfMixing: false, packs: [] };
  return {
    parts: parts.map((id) => ({
      id,
      tips: id === 'impeller',
      ...(id === uncoated ? { coated: false } : {}),
    })),
    mixTime: MIXING,
    coatMixTime: MIXING,
    filler: {
      ...material,
      netVolume: mixes.length,
      volume: mixes.length,
      mass: mixes.length,
      passes: 1,
      workingTime: WORKING_TIME,
      firmsUp,
      hard: fillerHard,
      largestBatch: 1,
      batches: mixes.map(({ minutes, on }, i) => ({
        number: i + 1,
        volume: 1,
        partA: NONE,
        partB: NONE,
        minutes: WORKING_TIME,
        placing: minutes - MIXING,
        weigh: null,
        covers: on.map((ground) => {
          const [part, face, pass = '1'] = ground.split('/');
          return { part, face, pass: Number(pass), first: [0, 1], second: [0, 1] };
        }),
      })),
    },
    coat: {
      ...material,
      area: coats.length,
      leftVolume: 0,
      netVolume: coats.length,
      volume: coats.length,
      mass: coats.length,
      wetFilm: 0.25,
      workingTime: 25,
      overcoat,
      hard: coatHard,
      perCoat: coats.map((each, c) => ({
        number: c + 1,
        volume: 1,
        partA: NONE,
        partB: NONE,
        mixes: each.map((minutes, m) => ({
          number: m + 1,
          volume: 1,
          partA: NONE,
          partB: NONE,
          placing: minutes - MIXING,
          weigh: null,
        })),
      })),
    },
  };
}

export function choicesOf({
  start = null,
  shift = null,
  breaks = [],
  minutes = {},
}: MadeChoices): PlanChoices {
  return { start, shift, breaks, coatRate: 40_000, minutes: { ...USUAL_STEP_TIMES, ...minutes } };
}

export function dayOf(made: MadeDay, choices: MadeChoices = {}): DayPlan {
  return planDay(workOf(made), choicesOf(choices));
}

/** A step by its id; throws when the day has none. */
export function stepIn({ steps }: DayPlan, id: string): PlanStep {
  const step = steps.find((each) => each.id === id);
  if (step === undefined) throw new Error(`no step ${id} among ${steps.map((each) => each.id).join(' ')}`);
  return step;
}

/** `id start-end`, hands alone, in the order of the day. */
export function handsIn({ steps }: DayPlan): string[] {
  return steps
    .filter(({ hands }) => hands)
    .map(({ id, start, minutes }) => `${id} ${start}-${start + minutes}`);
}
