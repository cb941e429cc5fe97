/**
 * Ordinary kriging: the depth between gauge readings, and how far it may be off, when the mean depth is not known.
 * A reading's own error stands on the diagonal alone, so what comes out is the surface and not what a gauge would read there.
 */
import type { Covariance } from '../../job/job.ts';
import type { Mm, Mm2 } from '../../units.ts';
import { factor, solveLower, solveUpper } from './cholesky.ts';
import { correlationTable, tableScale } from './correlation.ts';

/** Places in a space where distances are true, three numbers each, mm. */
export type Places = Float64Array;

/** Readings to krige from: no two at one place. */
export interface Observed {
  readonly places: Places;
  /** mm. */
  readonly depth: Float64Array;
  /** Variance of each reading's own error, mm2. */
  readonly error: Float64Array;
}

export interface Kriging {
  readonly observed: Observed;
  readonly covariance: Covariance;
  /** Number of readings. */
  readonly count: number;
  /** Cholesky factor of the covariance of the readings, count x count. */
  readonly lower: Float64Array;
  /** The covariance solved for a column of ones, and the sum of that. */
  readonly ones: Float64Array;
  readonly onesSum: number;
  /** Mean depth the readings speak for, mm. */
  readonly mean: Mm;
  /** What the covariances with a place are multiplied by to give its depth over the mean. */
  readonly weights: Float64Array;
  readonly table: Float64Array;
}

/** Readings this share of the sill better than said: what keeps a factor from failing where readings stand close, mm2 per mm2. */
const JITTER = 1e-9;

/** Throws when the readings are none, or two stand at one place without an error. */
export function krige(observed: Observed, covariance: Covariance): Kriging {
  const { depth } = observed;
  const count = depth.length;
  if (count === 0) throw new Error('krige: needs at least one reading, got none');
  const table = correlationTable(covariance.shape);
  const lower = factored(observed, covariance, table);
  const ones = new Float64Array(count).fill(1);
  solve(lower, count, ones);
  const onesSum = total(ones);
  let mean = 0;
  for (let i = 0; i < count; i++) mean += ones[i] * depth[i];
  mean /= onesSum;
  const weights = depth.map((value) => value - mean);
  solve(lower, count, weights);
  return { observed, covariance, count, lower, ones, onesSum, mean, weights, table };
}

function factored({ places, error }: Observed, covariance: Covariance, table: Float64Array): Float64Array {
  const count = error.length;
  // A smooth covariance of close readings without an error is singular to the last bit: a little more on the diagonal each time.
  for (let jitter = JITTER; jitter < 1; jitter *= 10) {
    const matrix = new Float64Array(count * count);
    for (let i = 0; i < count; i++) {
      covariancesWith(places, i, places, covariance, table, matrix.subarray(i * count, i * count + i));
      matrix[i * count + i] = covariance.sill * (1 + jitter) + error[i];
    }
    if (factor(matrix, count)) return matrix;
  }
  throw new Error(`krige: needs readings at places of their own, got ${count} with some at one place`);
}

/** Covariances of place `of` in `from` with the first places of `to`, as many as `out` has. Writes into `out`. */
export function covariancesWith(
  from: Places,
  of: number,
  to: Places,
  { length, sill }: Covariance,
  table: Float64Array,
  out: Float64Array,
): void {
  const x = from[3 * of];
  const y = from[3 * of + 1];
  const z = from[3 * of + 2];
  const scale = tableScale(length);
  const last = table.length - 2;
  for (let k = 0; k < out.length; k++) {
    const dx = to[3 * k] - x;
    const dy = to[3 * k + 1] - y;
    const dz = to[3 * k + 2] - z;
    const at = Math.sqrt(dx * dx + dy * dy + dz * dz) * scale;
    if (at >= last) {
      out[k] = 0;
      continue;
    }
    const i = at | 0;
    out[k] = sill * (table[i] + (at - i) * (table[i + 1] - table[i]));
  }
}

/** Depth at each of the places, mm. May lie below 0. */
export function depthsAt(kriging: Kriging, places: Places, onProgress: Progress = () => {}): Float64Array {
  const { observed, covariance, table, weights, mean, count } = kriging;
  const depths = new Float64Array(places.length / 3);
  const with_ = new Float64Array(count);
  for (let k = 0; k < depths.length; k++) {
    if (k % PROGRESS_EVERY === 0) onProgress(k / depths.length);
    covariancesWith(places, k, observed.places, covariance, table, with_);
    let sum = mean;
    for (let i = 0; i < count; i++) sum += weights[i] * with_[i];
    depths[k] = sum;
  }
  return depths;
}

/** Share done, 0 to 1. */
export type Progress = (share: number) => void;
const PROGRESS_EVERY = 1024;

/** Variance of the surface at one of the places, mm2: of the true depth, a gauge's own error not counted. */
export function varianceAt(kriging: Kriging, places: Places, of: number): Mm2 {
  const { observed, covariance, table, count, lower, ones, onesSum } = kriging;
  const half = new Float64Array(count);
  covariancesWith(places, of, observed.places, covariance, table, half);
  let mean = 1;
  for (let i = 0; i < count; i++) mean -= ones[i] * half[i];
  solveLower(lower, count, half);
  let known = 0;
  for (let i = 0; i < count; i++) known += half[i] * half[i];
  return Math.max(0, covariance.sill - known + (mean * mean) / onesSum);
}

/** Solves for one column with the whole factor. Writes into `vector`. */
export function solve(lower: Float64Array, count: number, vector: Float64Array): void {
  solveLower(lower, count, vector);
  solveUpper(lower, count, vector);
}

export function total(values: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i];
  return sum;
}
