import type { Mm } from '../../units.ts';
import { solveLower } from './cholesky.ts';
import type { Kriging } from './kriging.ts';

/** A reading against what the others say of its place. */
export interface LeftOut {
  /** How much deeper it is than the others say, mm. */
  readonly off: Mm;
  /** One standard deviation of that, its own error counted, mm. */
  readonly error: Mm;
}

/**
 * Leaves each reading out in turn and kriges its place from the others: all from the one factor. At least two readings.
 * Source: Dubrule, Mathematical Geology 15 (1983), cross validation of kriging (from memory); tests leave each out by hand.
 */
export function leaveEachOut({
  observed,
  count,
  lower,
  ones,
  onesSum,
  weights,
}: Kriging): readonly LeftOut[] {
  return Array.from(observed.depth, (_, i): LeftOut => {
    const column = new Float64Array(count);
    column[i] = 1;
    solveLower(lower, count, column);
    // The i-th entry of the inverse's diagonal, less what the mean that is not known takes.
    let inverse = 0;
    for (let k = i; k < count; k++) inverse += column[k] * column[k];
    inverse -= (ones[i] * ones[i]) / onesSum;
    return { off: weights[i] / inverse, error: 1 / Math.sqrt(inverse) };
  });
}
