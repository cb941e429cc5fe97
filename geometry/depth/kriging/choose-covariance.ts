/**
 * Which covariance the readings speak for: the likelihood of every shape, length and sill on a grid, times what one may expect of
 * a worn face before it is measured.
 */
import type { Covariance, CovarianceShape, GivenCovariance } from '../../job/job.ts';
import type { Fraction, Mm } from '../../units.ts';
import { blocksOf } from './blocks.ts';
import { factor, logDeterminant, solveLower } from './cholesky.ts';
import { correlation } from './correlation.ts';
import type { Observed } from './kriging.ts';

export interface Candidate {
  readonly covariance: Covariance;
  /** How far the readings speak for it; all of them add up to 1. */
  readonly belief: Fraction;
}

/** Tried when the person names none: an even surface and a smooth one. Rougher ones would be pulled about by each reading. */
const SHAPES: readonly CovarianceShape[] = ['matern-3/2', 'matern-5/2'];
const LENGTHS = 12;
const SILLS = 14;
/** More readings than this are judged in blocks of neighbours: the likelihood of blocks costs far less and is as telling of a length. */
const BLOCK = 80;
/** So many blocks tell enough. */
const MOST_BLOCKS = 8;
/** One standard deviation of what is expected beforehand, in natural logarithms: a factor of about three either way. Our judgement. */
const EXPECTED = 1.1;
/** A length to expect, as a share of how far the face reaches. Our judgement. */
const USUAL_LENGTH: Fraction = 1 / 4;
/** How much of its mean depth a worn face commonly goes up and down by, one standard deviation. Our judgement. */
const USUAL_SPREAD: Fraction = 1 / 2;
/** A face is never taken for more even than this, mm. */
const LEAST_SPREAD: Mm = 0.02;

/**
 * The candidates with a say, the one the readings speak for most first.
 * @param reach  how far the readings' part of the face reaches, mm
 * @param given  what the person fixed: those values are taken as they are
 * Source: restricted likelihood with an unknown mean, Rasmussen and Williams, Gaussian Processes for Machine Learning (2006), eq. 2.45
 * (from memory); tests/geometry/depth/kriging/choose-covariance.test.ts.
 */
export function candidates(
  observed: Observed,
  reach: Mm,
  given: GivenCovariance,
): readonly [Candidate, ...Candidate[]] {
  const spreadNow = Math.max(LEAST_SPREAD, USUAL_SPREAD * meanOf(observed.depth));
  const usual = { length: USUAL_LENGTH * reach, sill: spreadNow * spreadNow };
  const lengths = given.length ? [given.length] : lengthsFor(observed, reach);
  const sills = given.sill ? [given.sill] : sillsFor(observed, usual.sill);
  const shapes = given.shape ? [given.shape] : SHAPES;
  const blocks = everyFew(blocksOf(observed, BLOCK), MOST_BLOCKS);
  const tried: { covariance: Covariance; score: number }[] = [];
  for (const shape of shapes) {
    for (const length of lengths) {
      const alike = blocks.map((block) => correlations(block, shape, length));
      for (const sill of sills) {
        const covariance = { shape, length, sill };
        const likely = blocks.reduce((sum, block, b) => sum + likelihood(block, alike[b], sill), 0);
        const expected =
          square(Math.log(length / usual.length) / EXPECTED) +
          square(Math.log(sill / usual.sill) / (2 * EXPECTED));
        tried.push({ covariance, score: likely - expected / 2 });
      }
    }
  }
  return weighed(tried);
}

/** From closer than readings commonly stand to as far as they reach. */
function lengthsFor(observed: Observed, reach: Mm): readonly Mm[] {
  const least = Math.min(reach / 8, Math.max(reach / 200, usualStep(observed) / 2));
  return steps(least, reach, LENGTHS);
}

/** From hardly any unevenness to more than the readings show. */
function sillsFor({ depth }: Observed, usual: number): readonly number[] {
  const mean = meanOf(depth);
  const variance = depth.reduce((sum, value) => sum + square(value - mean), 0) / depth.length;
  const least = square(LEAST_SPREAD);
  return steps(least, 20 * Math.max(variance, usual, least), SILLS);
}

/** Numbers from the first to the last, each the same factor over the one before. */
function steps(from: number, to: number, count: number): readonly number[] {
  return Array.from({ length: count }, (_, i) => from * (to / from) ** (i / (count - 1)));
}

/** The middle of the distances from each reading to the one next to it, mm. */
function usualStep({ places, depth }: Observed): Mm {
  const sample = everyFew(
    Array.from(depth, (_, i) => i),
    200,
  );
  const nearest = sample.map((i) => {
    let least = Number.POSITIVE_INFINITY;
    for (let j = 0; j < depth.length; j++) {
      const distance = Math.hypot(
        places[3 * i] - places[3 * j],
        places[3 * i + 1] - places[3 * j + 1],
        places[3 * i + 2] - places[3 * j + 2],
      );
      if (i !== j && distance < least) least = distance;
    }
    return least;
  });
  return nearest.sort((a, b) => a - b)[Math.floor(nearest.length / 2)];
}

/** Correlations between the readings of a block, row-major, the lower half. */
function correlations({ places, depth }: Observed, shape: CovarianceShape, length: Mm): Float64Array {
  const count = depth.length;
  const alike = new Float64Array(count * count);
  for (let i = 0; i < count; i++) {
    for (let j = 0; j <= i; j++) {
      const distance = Math.hypot(
        places[3 * i] - places[3 * j],
        places[3 * i + 1] - places[3 * j + 1],
        places[3 * i + 2] - places[3 * j + 2],
      );
      alike[i * count + j] = correlation(shape, distance / length);
    }
  }
  return alike;
}

/** Just enough on the diagonal to factor a smooth covariance of readings without an error, as a share of the sill. */
const NUGGET: Fraction = 1e-8;

/** Logarithm of the restricted likelihood of a block's readings, its mean not known; a constant is left out. */
function likelihood({ depth, error }: Observed, alike: Float64Array, sill: number): number {
  const count = depth.length;
  const matrix = new Float64Array(count * count);
  for (let i = 0; i < matrix.length; i++) matrix[i] = sill * alike[i];
  for (let i = 0; i < count; i++) matrix[i * count + i] += sill * NUGGET + error[i];
  if (!factor(matrix, count)) return Number.NEGATIVE_INFINITY;
  const ones = new Float64Array(count).fill(1);
  const values = depth.slice();
  solveLower(matrix, count, ones);
  solveLower(matrix, count, values);
  let [onesSum, both, squares] = [0, 0, 0];
  for (let i = 0; i < count; i++) {
    onesSum += ones[i] * ones[i];
    both += ones[i] * values[i];
    squares += values[i] * values[i];
  }
  return -(logDeterminant(matrix, count) + Math.log(onesSum) + squares - (both * both) / onesSum) / 2;
}

function weighed(
  tried: readonly { readonly covariance: Covariance; readonly score: number }[],
): readonly [Candidate, ...Candidate[]] {
  const best = Math.max(...tried.map(({ score }) => score));
  if (!Number.isFinite(best)) throw new Error('candidates: needs readings at places of their own');
  const shares = tried.map(({ score }) => Math.exp(score - best));
  const sum = shares.reduce((all, share) => all + share, 0);
  const [first, ...rest] = tried
    .map(({ covariance }, i) => ({ covariance, belief: shares[i] / sum }))
    .sort((a, b) => b.belief - a.belief);
  return [first, ...rest];
}

/** At most so many of a list, evenly spread over it. */
function everyFew<T>(list: readonly T[], most: number): readonly T[] {
  if (list.length <= most) return list;
  return Array.from({ length: most }, (_, i) => list[Math.floor(((i + 0.5) * list.length) / most)]);
}

function meanOf(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function square(value: number): number {
  return value * value;
}
