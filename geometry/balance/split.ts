import type { GramMm, Rad } from '../units.ts';
import { turnBetween, type Vector } from './vector.ts';

/**
 * One vector as two, along the directions a and b on either side of it: M_a = M sin(b - t) / sin(b - a), M_b = M sin(t - a) / sin(b - a).
 * @returns  null when the directions are half a turn or more apart, or the vector does not lie between them
 * Source: M_a e^ia + M_b e^ib = M e^it; tests/geometry/balance/split.test.ts.
 */
export function splitOnto({ amount, angle }: Vector, a: Rad, b: Rad): readonly [a: GramMm, b: GramMm] | null {
  const past = turnBetween(a, angle);
  const ahead = turnBetween(angle, b);
  const whole = past + ahead;
  // On one of the two it may miss them by float dust.
  if (past * ahead < -1e-12 || Math.abs(whole) >= Math.PI || whole === 0) return null;
  const scale = amount / Math.sin(whole);
  return [scale * Math.sin(ahead), scale * Math.sin(past)];
}
