import type { Mm } from '../../units.ts';
import { covariancesWith, type Kriging, type Places, solve, total } from './kriging.ts';

/** A sum of weight x depth over places: a volume where the weights are areas, an unbalance where they are areas times a lever. */
export interface WeighedSums {
  readonly places: Places;
  /** One array a sum, a number a place. */
  readonly weights: readonly Float64Array[];
}

export interface SumsKnown {
  /** Of each sum, its unit times mm. The depth may lie below 0 in it. */
  readonly means: readonly number[];
  /** Covariances between the sums, their units times mm2; symmetric. */
  readonly covariances: readonly (readonly number[])[];
  /** Per sum, what tells how a further reading bears on it, see `bearing`. */
  readonly solved: readonly Solved[];
}

/** The covariances of a sum with the readings, solved, and with the mean that is not known. */
export interface Solved {
  readonly readings: Float64Array;
  readonly mean: number;
}

/**
 * What is known of sums over a kriged surface: block kriging with an unknown mean, w = [z; A] solved with the readings' covariances.
 * Exact for sums over the places given; mean and variance use the same places.
 * Source: Rasmussen and Ghahramani, Bayesian Monte Carlo (2003); tests/geometry/depth/kriging/weighed-sum.test.ts.
 */
export function sumsOver(kriging: Kriging, { places, weights }: WeighedSums): SumsKnown {
  const { observed, covariance, count, lower, ones, onesSum, table } = kriging;
  const size = places.length / 3;
  const sums = weights.length;
  const withReadings = weights.map(() => new Float64Array(count));
  const between = new Float64Array(count);
  for (let k = 0; k < size; k++) {
    covariancesWith(places, k, observed.places, covariance, table, between);
    for (let s = 0; s < sums; s++) {
      const weight = weights[s][k];
      const out = withReadings[s];
      if (weight !== 0) for (let i = 0; i < count; i++) out[i] += weight * between[i];
    }
  }
  const amounts = weights.map(total);
  const prior = priorCovariances(kriging, places, weights);
  const solved = withReadings.map((column, s): Solved => {
    const readings = column.slice();
    solve(lower, count, readings);
    // Lagrange: the weights of the readings add up to the whole amount.
    const mean = (total(readings) - amounts[s]) / onesSum;
    for (let i = 0; i < count; i++) readings[i] -= mean * ones[i];
    return { readings, mean };
  });
  return {
    means: solved.map(({ readings }) => dot(readings, observed.depth)),
    covariances: solved.map(({ readings, mean }, s) =>
      amounts.map((amount, t) => prior[s][t] - dot(readings, withReadings[t]) - mean * amount),
    ),
    solved,
  };
}

/** Covariances of the sums before anything was read. */
function priorCovariances(
  { covariance, table }: Kriging,
  places: Places,
  weights: readonly Float64Array[],
): number[][] {
  const size = places.length / 3;
  const sums = weights.length;
  const prior = weights.map(() => weights.map(() => 0));
  const row = new Float64Array(size);
  const from = new Float64Array(sums);
  for (let k = 0; k < size; k++) {
    if (weights.every((weight) => weight[k] === 0)) continue;
    covariancesWith(places, k, places, covariance, table, row.subarray(0, k));
    for (let t = 0; t < sums; t++) {
      const weight = weights[t];
      let sum = 0;
      for (let j = 0; j < k; j++) sum += weight[j] * row[j];
      from[t] = sum;
    }
    for (let s = 0; s < sums; s++) {
      for (let t = 0; t < sums; t++) {
        // Both orders of the pair (k, j), and the place with itself.
        prior[s][t] +=
          weights[s][k] * from[t] + weights[t][k] * from[s] + covariance.sill * weights[s][k] * weights[t][k];
      }
    }
  }
  return prior;
}

/**
 * Covariance of the first sum with the depth at one of its places, given the readings; in the unit of the sum times mm2.
 * Reading there with an error of variance e takes bearing^2 / (variance there + e) off the variance of the sum.
 */
export function bearing(
  kriging: Kriging,
  { places, weights }: WeighedSums,
  { readings, mean }: Solved,
  at: Places,
  of: number,
): number {
  const { observed, covariance, table, count } = kriging;
  const [weight] = weights;
  const size = places.length / 3;
  const row = new Float64Array(Math.max(size, count));
  covariancesWith(at, of, places, covariance, table, row.subarray(0, size));
  let sum = 0;
  for (let k = 0; k < size; k++) sum += weight[k] * row[k];
  covariancesWith(at, of, observed.places, covariance, table, row.subarray(0, count));
  for (let i = 0; i < count; i++) sum -= readings[i] * row[i];
  return sum - mean;
}

/** Square root that takes a rounding below 0 for 0. */
export function spread(variance: number): number {
  return Math.sqrt(Math.max(0, variance));
}

function dot(a: Float64Array, b: Float64Array): Mm {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i] * b[i];
  return sum;
}
