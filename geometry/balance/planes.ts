import type { Mm } from '../units.ts';
import { type Vector, vectorOf } from './vector.ts';

/**
 * An unbalance and its couple as two vectors in the planes A (z = 0) and B (z = spacing), by moments about each.
 * @param net     g.mm
 * @param couple  g.mm2, about the plane halfway between A and B
 * Source: statics; tests/geometry/balance/planes.test.ts.
 */
export function atPlanes(net: Vector, couple: Vector, spacing: Mm): readonly [a: Vector, b: Vector] {
  const [x, y] = [(net.amount * Math.cos(net.angle)) / 2, (net.amount * Math.sin(net.angle)) / 2];
  const [cx, cy] = [
    (couple.amount * Math.cos(couple.angle)) / spacing,
    (couple.amount * Math.sin(couple.angle)) / spacing,
  ];
  return [vectorOf(x - cx, y - cy), vectorOf(x + cx, y + cy)];
}
