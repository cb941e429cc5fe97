import type { Fraction, Gram } from '../units.ts';
import type { Mix, Portion } from './mix.ts';
import { RATIO_LIMIT } from './weigh-out.ts';

/** Component densities that differ by less than this make weighing and measuring the same thing on a kitchen scale. */
const WORTH_SAYING: Fraction = 0.02;

/** What a scale needs to know about a ratio that is stated by volume. */
export interface Weighing {
  /** Grams of B that go with 100 g of A. */
  readonly partBPer100: Gram;
  /** How much too much B (negative: too little) someone gets who weighs out the volume ratio, as a share of the right amount. */
  readonly error: Fraction;
}

/**
 * How to weigh a mix whose ratio is by volume; null when A or B has no density, or the two are within 2 % of each other.
 * Weighing 2 : 1 with A at 2.4 and B at 2.1 g/cm3 puts in 2.4 / 2.1 - 1 = 14 % too much B.
 */
export function weighingOf({ ratioByVolume: [a, b], densityA, densityB }: Mix): Weighing | null {
  if (densityA === null || densityB === null) return null;
  const error = densityA / densityB - 1;
  if (Math.abs(error) <= WORTH_SAYING) return null;
  return { partBPer100: (100 * b * densityB) / (a * densityA), error };
}

/** A and B of a mix as they should be: only how they stand to each other counts, so any unit of volume does. */
export interface RightParts {
  readonly partA: Portion;
  readonly partB: Portion;
}

/** How a mix that was weighed differs from the right one. */
export interface WeighedAmiss {
  /** `by-volume`: the masses stand to each other as the data sheet's volumes do, so the scale was used for a ratio by volume. */
  readonly kind: 'by-volume' | 'off';
  /** How much too much B (negative: too little), as a share of the right amount. */
  readonly error: Fraction;
}

/** A share that is 2 % but for float dust is not more than 2 %. */
const DUST = 1e-9;

/**
 * What is wrong with a mix as it was weighed; null when B is within 2 % of right for that A.
 * Throws when a mass is not more than 0: nothing was weighed then.
 * Source: tests/geometry/material/weighing.test.ts
 */
export function weighedAmiss(massA: Gram, massB: Gram, { partA, partB }: RightParts): WeighedAmiss | null {
  if (!(massA > 0 && massB > 0)) {
    throw new Error(`weighedAmiss: needs two masses of more than 0 g, got ${massA} and ${massB}`);
  }
  const error = (massB * partA.mass) / (massA * partB.mass) - 1;
  if (Math.abs(error) <= RATIO_LIMIT + DUST) return null;
  const fromVolumes = (massB * partA.volume) / (massA * partB.volume) - 1;
  return { kind: Math.abs(fromVolumes) <= RATIO_LIMIT + DUST ? 'by-volume' : 'off', error };
}

/**
 * B that makes the right mix with the A that is in the bowl, as the scale can show it.
 * @param step  of the scale, g
 * @returns     null when the scale is too coarse: its nearest step is more than 2 % off
 */
export function partBFor(massA: Gram, { partA, partB }: RightParts, step: Gram): Gram | null {
  const right = (massA * partB.mass) / partA.mass;
  const shown = Number((Math.round(right / step) * step).toPrecision(12));
  return shown > 0 && Math.abs(shown / right - 1) <= RATIO_LIMIT + DUST ? shown : null;
}
