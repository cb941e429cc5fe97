import type { VaneShape } from '../part/vane-shape.ts';
import type { Mm, Rad } from '../units.ts';
import { heading, turnBetween } from './vector.ts';

/** In which direction a vane's camber crosses a circle, or its nearest end; found by halving, to 1e-9 of its length. */
export function vaneAngle(vane: VaneShape, radius: Mm): Rad {
  let low = 0;
  let high = vane.length;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    const { x, y } = vane.camber(middle);
    if (Math.hypot(x, y) < radius) low = middle;
    else high = middle;
  }
  const { x, y } = vane.camber((low + high) / 2);
  return heading(Math.atan2(y, x));
}

export interface VaneDirection {
  readonly vane: number;
  readonly angle: Rad;
}

/** The vanes that a direction lies between on a circle: the last one passed going counter-clockwise, and the next. null with fewer than 2. */
export function vanesBeside(
  vanes: readonly VaneShape[],
  radius: Mm,
  direction: Rad,
): readonly [before: VaneDirection, after: VaneDirection] | null {
  if (vanes.length < 2) return null;
  const at = vanes.map((vane) => ({ vane: vane.number, angle: vaneAngle(vane, radius) }));
  const ahead = ({ angle }: VaneDirection): Rad => heading(angle - direction);
  const sorted = at.toSorted((a, b) => ahead(a) - ahead(b));
  const [next] = sorted;
  // A vane right on the direction, give or take float dust, is the one passed.
  if (Math.abs(turnBetween(direction, next.angle)) < 1e-9) return [next, sorted[1]];
  return [sorted[sorted.length - 1], next];
}

/** True when the root of a vane stands over a place. */
export function isUnder(vane: VaneShape, radius: Mm, direction: Rad): boolean {
  const { s, n } = vane.locate([radius * Math.cos(direction), radius * Math.sin(direction), 0]);
  return s >= 0 && s <= vane.length && Math.abs(n) <= vane.halfThickness(s);
}
