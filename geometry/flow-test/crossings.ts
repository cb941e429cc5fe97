import { type MonotoneCurve, valueAt } from './monotone-curve.ts';

/** Pieces a stretch between two knots is looked at in, and halvings that follow: far finer than any gauge. */
const PIECES = 16;
const HALVINGS = 50;

/**
 * Where a curve meets the line y = level + slope x.
 * @returns  every x, rising; none where they do not meet within the ends of the curve
 * Accuracy: 1e-12 of a stretch; two meetings closer than a sixteenth of a stretch may be missed
 */
export function crossings(curve: MonotoneCurve, level: number, slope = 0): number[] {
  const over = (x: number): number => (valueAt(curve, x) ?? Number.NaN) - level - slope * x;
  const places = curve.flatMap(({ x }, i) => {
    const next = curve[i + 1];
    if (next === undefined) return [x];
    return Array.from({ length: PIECES }, (_, k) => x + ((next.x - x) * k) / PIECES);
  });
  return places.flatMap((from, i) => {
    const to = places[i + 1];
    const start = over(from);
    if (start === 0) return [from];
    if (to === undefined || start * over(to) >= 0) return [];
    return [halved(over, from, to)];
  });
}

function halved(over: (x: number) => number, from: number, to: number): number {
  let [low, high] = [from, to];
  const sign = Math.sign(over(low));
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (Math.sign(over(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
