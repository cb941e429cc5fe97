import type { PlanChoices, StepTimes } from '../job/job.ts';
import type { Cover } from '../material/share-out.ts';
import type { Minute } from '../units.ts';
import type { CoatChain } from './coat-chain.ts';
import type { DayWork } from './day-work.ts';
import type { Dressing } from './fill-and-dress.ts';
import { type ShopHours, shopHours } from './shop-hours.ts';

/** The day's work cut into pieces with their minutes, waits and windows, before any of it has its place. */
export interface DayTask {
  readonly hours: ShopHours;
  readonly times: StepTimes;
  /** Those something goes on, in the job's order. */
  readonly parts: readonly TaskPart[];
  readonly mixes: readonly TaskMix[];
  /** Of every mix of filler. */
  readonly dressing: Dressing;
  /** null when there is no coat. */
  readonly coats: CoatChain | null;
  /** From the end of the last coat, or of the last filler where there is no coat; null when the data sheet does not say. */
  readonly hard: Minute | null;
  /** Of the filler, from the end of its last mix; 0 when there is none, or when the data sheet does not say. */
  readonly fillerHard: Minute;
  /** How long the filler and the coat stay workable, mixing included. */
  readonly fillWithin: Minute;
  readonly coatWithin: Minute;
}

export interface TaskPart {
  readonly id: string;
  readonly tips: boolean;
  readonly filled: boolean;
  readonly coated: boolean;
}

/** One mix of filler. */
export interface TaskMix {
  readonly number: number;
  readonly minutes: Minute;
  /** ids of the parts it goes on, in the job's order. */
  readonly parts: readonly string[];
  readonly covers: readonly Cover[];
  /** Mixes, by their place in the list, that hold the layer under this one on the same face. */
  readonly on: readonly number[];
  /** Whether another mix lays the next layer on the same face. */
  readonly isCovered: boolean;
  /** `part: face` of a face on which it holds two layers. */
  readonly twice: readonly string[];
}

/** To mix A and B where the data sheet names no time, min (common practice). */
const USUAL_MIX_TIME: Minute = 2;

/** @returns null when there is nothing to fill and nothing to coat, or so much that its mixes are not listed */
export function dayTask(work: DayWork, choices: PlanChoices): DayTask | null {
  const { filler, coat } = work;
  if (filler.volume === 0 && coat.volume === 0) return null;
  if (filler.volume > 0 && filler.batches.length === 0) return null;
  const mixes = taskMixes(work);
  const filled = new Set(mixes.flatMap(({ parts }) => parts));
  const parts = work.parts
    .map(({ id, tips, coated }) => ({
      id,
      tips,
      filled: filled.has(id),
      coated: coat.volume > 0 && coated !== false,
    }))
    .filter((part) => part.filled || part.coated);
  const mixTime = work.coatMixTime ?? USUAL_MIX_TIME;
  return {
    hours: shopHours(choices),
    times: choices.minutes,
    parts,
    mixes,
    dressing: {
      opens: filler.firmsUp?.from ?? filler.workingTime,
      closes: filler.firmsUp?.to ?? null,
      minutes: choices.minutes.dress,
    },
    coats:
      coat.volume > 0
        ? {
            coats: coat.perCoat.map((layer) => layer.mixes.map(({ placing }) => mixTime + placing)),
            touchTest: choices.minutes.touchTest,
            opens: coat.overcoat?.from ?? coat.workingTime,
            closes: coat.overcoat?.to ?? null,
          }
        : null,
    hard: coat.volume > 0 ? coat.hard : filler.hard,
    fillerHard: filler.volume > 0 ? (filler.hard ?? 0) : 0,
    fillWithin: filler.workingTime,
    coatWithin: coat.workingTime,
  };
}

/** Mixes come layer by layer, so what lies under one has a lower number. */
function taskMixes({ parts, filler, mixTime }: DayWork): TaskMix[] {
  const laid = new Map<string, number[]>();
  const covered = new Set<number>();
  const under = filler.batches.map(({ covers }, i) => {
    const on = new Set<number>();
    for (const { part, face, pass } of covers) {
      for (const below of laid.get(layerName(part, face, pass - 1)) ?? []) on.add(below);
    }
    for (const { part, face, pass } of covers) {
      const name = layerName(part, face, pass);
      const same = laid.get(name);
      if (same === undefined) laid.set(name, [i]);
      else if (same.at(-1) !== i) same.push(i);
    }
    for (const below of on) covered.add(below);
    return [...on].sort((a, b) => a - b);
  });
  return filler.batches.map(({ number, placing, covers }, i) => {
    const named = new Set(covers.map(({ part }) => part));
    return {
      number,
      minutes: (mixTime ?? USUAL_MIX_TIME) + placing,
      parts: parts.map(({ id }) => id).filter((id) => named.size === 0 || named.has(id)),
      covers,
      on: under[i],
      isCovered: covered.has(i),
      twice: twoLayered(covers),
    };
  });
}

function twoLayered(covers: readonly Cover[]): string[] {
  const passes = new Map<string, Set<number>>();
  for (const { part, face, pass } of covers) {
    const name = `${part}: ${face}`;
    passes.set(name, (passes.get(name) ?? new Set()).add(pass));
  }
  return [...passes].filter(([, each]) => each.size > 1).map(([name]) => name);
}

const layerName = (part: string, face: string, pass: number): string => `${part}:${face}:${pass}`;
