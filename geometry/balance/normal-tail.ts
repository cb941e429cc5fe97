/** Below this the series for erf is quick, above it the continued fraction for erfc. */
const SERIES_TO = 2.5;
const FRACTION_TERMS = 80;

/**
 * The chance that a standard normal number lies above x. Relative accuracy 1e-13 in the upper tail, absolute 1e-16 elsewhere.
 * Source: Abramowitz & Stegun, 7.1.6 and 7.1.14; tests/geometry/balance/normal-tail.test.ts.
 */
export function normalTail(x: number): number {
  const z = Math.abs(x) / Math.SQRT2;
  const above = (z < SERIES_TO ? 1 - erf(z) : erfcFar(z)) / 2;
  return x < 0 ? 1 - above : above;
}

/** 2/sqrt(pi) exp(-z^2) sum of 2^n z^(2n+1) / (1 3 5 .. (2n+1)): all terms positive. */
function erf(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (2 * z * z) / (2 * n + 1);
    sum += term;
  }
  return (2 / Math.sqrt(Math.PI)) * Math.exp(-z * z) * sum;
}

/** exp(-z^2) / sqrt(pi) over z + (1/2)/(z + 1/(z + (3/2)/(z + ...))). */
function erfcFar(z: number): number {
  if (!Number.isFinite(z)) return 0;
  let below = z;
  for (let k = FRACTION_TERMS; k >= 1; k--) below = z + k / 2 / below;
  return Math.exp(-z * z) / (Math.sqrt(Math.PI) * below);
}
