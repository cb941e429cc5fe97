import type { Clearance, Coat } from '../job/job.ts';
import type { Mm } from '../units.ts';

/** What the gap is worked out with beside the wear: as the job has it, or as a lever would. */
export interface GapSetting {
  readonly shim: Mm;
  readonly dressTips: Mm;
  readonly coats: number;
  readonly dryFilm: Mm;
  /** Left uncoated although the job coats them. */
  readonly barePlate: boolean;
  readonly bareTips: boolean;
  /** How far under the surface the fill stops on both running faces: by all coats together, by so many mm, or as each face has it. */
  readonly allowance: 'the film' | 'as it is' | Mm;
  readonly fillsLeft: boolean;
}

/** As the job has it. */
export function settingOf(
  { shim, dressTips }: Pick<Clearance, 'shim' | 'dressTips'>,
  { coats, dryFilm }: Pick<Coat, 'coats' | 'dryFilm'>,
): GapSetting {
  return {
    shim,
    dressTips,
    coats,
    dryFilm,
    barePlate: false,
    bareTips: false,
    allowance: 'as it is',
    fillsLeft: false,
  };
}

/** All coats together. */
export const filmOf = ({ coats, dryFilm }: Pick<Coat, 'coats' | 'dryFilm'>): Mm => coats * dryFilm;

/** The allowances that any setting of a job can ask for beside none, the job's own first. */
export function allowancesOf(own: Mm, { coats, dryFilm }: Pick<Coat, 'coats' | 'dryFilm'>): Mm[] {
  const all = [own, filmOf({ coats, dryFilm }), filmOf({ coats: coats - 1, dryFilm })];
  return [...new Set(all)].filter((allowance) => allowance > 0);
}

/** Finer than this nobody dresses a vane tip by hand, mm (common practice). */
export const DRESS_STEP: Mm = 0.1;

/** The planes that tips may be dressed to, the job's own among them, short of the deepest place: beyond it a plane takes all. */
export function planesOf(own: Mm, deepest: Mm): Mm[] {
  const first = own - Math.floor(own / DRESS_STEP + 1e-9) * DRESS_STEP;
  const count = Math.max(0, Math.ceil((deepest - first) / DRESS_STEP));
  return [...Array.from({ length: count }, (_, i) => first + i * DRESS_STEP), own].filter(
    (plane) => plane > 1e-9,
  );
}
