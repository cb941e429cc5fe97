import type { Fraction, Gram } from '../units.ts';
import type { Mix } from './mix.ts';

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
