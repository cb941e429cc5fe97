import type { VectorResult } from '../../../geometry/sheet/balance-result.ts';
import { type Deg, toRadians } from '../../../geometry/units.ts';

/** Where a vector ends on a polar plot: 0 deg to the right, counter-clockwise, y down the page. */
export function polarPoint(amount: number, angle: Deg, scale: number): readonly [x: number, y: number] {
  const turned = toRadians(angle);
  return [amount * scale * Math.cos(turned), -amount * scale * Math.sin(turned)];
}

/** A round number of g.mm for the outermost ring: 1, 2 or 5 times a power of ten, with every vector and the limit inside. */
export function ringStep(most: number, rings: number): number {
  const least = most / rings;
  const power = 10 ** Math.floor(Math.log10(least));
  return power * ([1, 2, 5, 10].find((times) => times * power >= least) ?? 10);
}

/** The longest of some vectors and a limit. */
export function longest(vectors: readonly VectorResult[], limit: number): number {
  return vectors.reduce((most, { amount }) => Math.max(most, amount), limit);
}
