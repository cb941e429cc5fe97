import type { Correction } from '../job/job.ts';
import type { Density, Gram, GramMm, Minute, Mm, Rad } from '../units.ts';
import { TURN } from '../units.ts';
import type { ShroudRoom } from './shroud-room.ts';
import type { Spot } from './spots.ts';
import type { Vector } from './vector.ts';

/** What a way of correcting is asked for. */
export interface Task {
  /** The unbalance to take out: its angle is the heavy side. */
  readonly target: Vector;
  /** How much of it may be left over, g.mm. */
  readonly aim: GramMm;
  readonly room: ShroudRoom;
  readonly density: Density;
}

/** One way worked out: what to do and what it takes out. */
export interface Plan {
  readonly corrections: readonly Correction[];
  /** The pull it takes out by the closed formulas: as `target`, so the residual is target - taken. */
  readonly taken: Vector;
  readonly removed: Gram;
  readonly added: Gram;
  /** Hands-on time, in size only: it ranks the ways and is not shown. */
  readonly minutes: Minute;
  /** Least wall left under it, mm; null where it goes into no wall. */
  readonly leaves: Mm | null;
  /** What it stands on, seen along the shaft. */
  readonly spots: readonly Spot[];
}

/** The plan with the least work that does the task; or the one that comes nearest, if any, and why none does. */
export type Attempt = { readonly plan: Plan } | { readonly nearest: Plan | null; readonly reason: string };

/** The usual drills, diameter mm. Common practice. */
export const DRILLS: readonly Mm[] = [4, 5, 6, 8, 10, 12, 16, 20];
export const MOST_HOLES = 8;
/** A drill press holds this, mm; a mill and a skimmed face hold the finer one. From memory. */
export const DRILL_STEP: Mm = 0.1;
export const SKIM_STEP: Mm = 0.05;
/** A protractor is read to half a degree. */
export const ANGLE_STEP: Rad = TURN / 720;

/** Hands-on time of each way; from memory, order of size only. */
export const HOLE_MINUTES: Minute = 5;
export const RIM_HOLE_MINUTES: Minute = 7;
export const SKIM_MINUTES: Minute = 20;
export const POCKET_MINUTES: Minute = 20;
/** g of iron that a drill or a mill takes in a minute. */
export const GRAMS_A_MINUTE = 5;

/** Metal between two holes, and between a hole and an edge: half a drill and no less than this, mm. Common practice. */
const LEAST_WEB: Mm = 3;
export const webOf = (drill: Mm): Mm => Math.max(LEAST_WEB, drill / 2);

export const toStep = (value: number, step: number): number => clean(Math.round(value / step) * step);
/** Not above the value; a value on the step stays there, give or take what a depth map of 32 bits loses. */
export const downToStep = (value: number, step: number): number =>
  clean(Math.floor(value / step + 1e-5) * step);
export const upToStep = (value: number, step: number): number => clean(Math.ceil(value / step - 1e-9) * step);
/** Without float dust: 46 steps of 0.1 are 4.6. */
const clean = (value: number): number => Number(value.toPrecision(14));

/** Figures in a reason: whole g.mm, mm to a tenth. */
export const inGramMm = (amount: GramMm): string => `${Math.round(amount)} g.mm`;
export const inMm = (length: Mm): string => `${Number(length.toFixed(1))} mm`;
