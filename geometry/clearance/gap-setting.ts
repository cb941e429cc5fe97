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
