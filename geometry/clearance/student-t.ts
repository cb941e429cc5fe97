/**
 * How many standard errors to either side hold the truth 95 times in 100, when the scatter itself is known from few values.
 * @param freedom  degrees of freedom, a whole number from 1
 * Accuracy: 1e-9, from the closed form of the distribution. Source: Abramowitz & Stegun, Handbook of Mathematical Functions, 1964,
 * 26.7.3 and 26.7.4, from memory; tests/geometry/clearance/wear-rate.test.ts against printed quantiles
 */
export function studentT95(freedom: number): number {
  if (!Number.isInteger(freedom) || freedom < 1)
    throw new RangeError(`studentT95: needs a whole number of degrees of freedom from 1, got ${freedom}`);
  let [low, high] = [0, 13];
  while (high - low > 1e-12 * high) {
    const middle = (low + high) / 2;
    if (within(middle, freedom) < 0.95) low = middle;
    else high = middle;
    if (middle === low && middle === high) break;
  }
  return (low + high) / 2;
}

/** Beyond this many the sums give way to their limit, whose error is far below a last digit. */
const MANY = 10_000;

/** Chance that |t| is at most `t`. */
function within(t: number, freedom: number): number {
  const n = Math.min(freedom, MANY);
  const angle = Math.atan(t / Math.sqrt(n));
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  if (n === 1) return (2 * angle) / Math.PI;
  const isOdd = n % 2 === 1;
  let term = isOdd ? cos : 1;
  let sum = term;
  for (let k = isOdd ? 3 : 2; k < n; k += 2) {
    term *= (cos * cos * (k - 1)) / k;
    sum += term;
  }
  return isOdd ? (2 / Math.PI) * (angle + sin * sum) : sin * sum;
}
