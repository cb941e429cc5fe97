import type { CovarianceShape } from '../../job/job.ts';

/**
 * How alike the depths of two places are, 1 at no distance, against their distance in lengths.
 * Every shape stays a valid covariance for places in space. Source: Rasmussen and Williams, Gaussian Processes for Machine Learning
 * (2006), eq. 4.9 and 4.17 (from memory); tests/geometry/depth/kriging/correlation.test.ts.
 */
export function correlation(shape: CovarianceShape, lengths: number): number {
  switch (shape) {
    case 'exponential':
      return Math.exp(-lengths);
    case 'gaussian':
      return Math.exp((-lengths * lengths) / 2);
    case 'matern-3/2': {
      const a = Math.sqrt(3) * lengths;
      return (1 + a) * Math.exp(-a);
    }
    case 'matern-5/2': {
      const a = Math.sqrt(5) * lengths;
      return (1 + a + (a * a) / 3) * Math.exp(-a);
    }
  }
}

/** Entries a length: a straight line between two of them is off by less than 1e-6. */
const FINENESS = 1024;
/** Lengths beyond which two depths tell nothing of each other: every shape is below 1e-6 there, the exponential at 1e-6. */
const FURTHEST = 14;

/**
 * The same from a table, for the loops that ask it by the million. Accuracy: 1e-6 of the sill.
 * @returns  value at k / FINENESS lengths, and two more entries at its end
 */
export function correlationTable(shape: CovarianceShape): Float64Array {
  const table = new Float64Array(FURTHEST * FINENESS + 2);
  for (let k = 0; k < FURTHEST * FINENESS; k++) table[k] = correlation(shape, k / FINENESS);
  return table;
}

/** What a distance in mm is multiplied by to stand at its place in the table. */
export function tableScale(length: number): number {
  return FINENESS / length;
}
