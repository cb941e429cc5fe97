/** A point of a curve with the slope the curve has there. */
export interface Knot {
  readonly x: number;
  readonly y: number;
  readonly slope: number;
}

/** A curve through measured points, known from the first to the last and nowhere else. */
export type MonotoneCurve = readonly Knot[];

/** Two flows nearer to each other than this share of the greatest are one: no gauge tells them apart. */
const SAME = 1e-9;

/**
 * A piecewise cubic through the points that rises where they rise, falls where they fall and never passes their extremes.
 * @param points  in any order; those of one x are taken at their mean
 * @returns       knots by x, x apart; none without points
 * Source: Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300, end slopes by three points kept to the shape;
 * tests/geometry/flow-test/monotone-curve.test.ts
 */
export function monotoneCurve(points: readonly { readonly x: number; readonly y: number }[]): MonotoneCurve {
  const merged = mergedPoints(points);
  if (merged.length < 2) return merged.map(({ x, y }) => ({ x, y, slope: 0 }));
  const steps = merged.slice(1).map(({ x }, i) => x - merged[i].x);
  const rises = merged.slice(1).map(({ y }, i) => (y - merged[i].y) / steps[i]);
  const last = rises.length - 1;
  return merged.map(({ x, y }, i) => {
    if (last === 0) return { x, y, slope: rises[0] };
    if (i === 0) return { x, y, slope: endSlope(steps[0], steps[1], rises[0], rises[1]) };
    if (i > last)
      return { x, y, slope: endSlope(steps[last], steps[last - 1], rises[last], rises[last - 1]) };
    return { x, y, slope: innerSlope(steps[i - 1], steps[i], rises[i - 1], rises[i]) };
  });
}

/** The value at x, or null beyond the ends of the curve: it is never drawn on. */
export function valueAt(curve: MonotoneCurve, x: number): number | null {
  if (!isCovered(curve, x)) return null;
  const after = curve.findIndex((knot) => knot.x >= x);
  if (after === 0) return curve[0].y;
  if (after < 0) return curve[curve.length - 1].y;
  return between(curve[after - 1], curve[after], x);
}

export function isCovered(curve: MonotoneCurve, x: number): boolean {
  if (curve.length === 0) return false;
  const [first, last] = [curve[0].x, curve[curve.length - 1].x];
  const dust = SAME * Math.max(Math.abs(first), Math.abs(last));
  return x >= first - dust && x <= last + dust;
}

function mergedPoints(points: readonly { readonly x: number; readonly y: number }[]) {
  const sorted = points.toSorted((a, b) => a.x - b.x);
  const dust = SAME * Math.max(0, ...sorted.map(({ x }) => Math.abs(x)));
  const groups: { readonly x: number; readonly ys: number[] }[] = [];
  for (const { x, y } of sorted) {
    const group = groups.at(-1);
    if (group !== undefined && x - group.x <= dust) group.ys.push(y);
    else groups.push({ x, ys: [y] });
  }
  return groups.map(({ x, ys }) => ({ x, y: ys.reduce((sum, y) => sum + y, 0) / ys.length }));
}

/** Weighed harmonic mean of the rises on both sides; flat where the points turn. */
function innerSlope(before: number, after: number, riseBefore: number, riseAfter: number): number {
  if (riseBefore * riseAfter <= 0) return 0;
  const [w1, w2] = [2 * after + before, after + 2 * before];
  return (w1 + w2) / (w1 / riseBefore + w2 / riseAfter);
}

/** Of the parabola through three points, kept from turning the curve round. */
function endSlope(own: number, next: number, rise: number, riseNext: number): number {
  const slope = ((2 * own + next) * rise - own * riseNext) / (own + next);
  if (Math.sign(slope) !== Math.sign(rise)) return 0;
  if (Math.sign(rise) !== Math.sign(riseNext) && Math.abs(slope) > 3 * Math.abs(rise)) return 3 * rise;
  return slope;
}

/** Cubic of Hermite; what rounding puts beyond the two ends is taken off. */
function between(from: Knot, to: Knot, x: number): number {
  const step = to.x - from.x;
  const t = (x - from.x) / step;
  const y =
    (1 + 2 * t) * (1 - t) ** 2 * from.y +
    t * (1 - t) ** 2 * step * from.slope +
    t * t * (3 - 2 * t) * to.y -
    t * t * (1 - t) * step * to.slope;
  return Math.min(Math.max(from.y, to.y), Math.max(Math.min(from.y, to.y), y));
}
