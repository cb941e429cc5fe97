import { type Mm, type Rad, TURN } from '../units.ts';
import type { VaneShape } from './vane-shape.ts';

const PIECES = 256;

/**
 * Whether a place of the plane z = 0 lies under a vane, for many questions: at its radius only the vane whose camber passes nearby is
 * looked at closely. Exact.
 */
export function underVanes(vanes: readonly VaneShape[]): (x: Mm, y: Mm) => boolean {
  const [first] = vanes;
  const radii = new Float64Array(PIECES + 1);
  const turned = new Float64Array(PIECES + 1);
  let last = first.angle;
  let flattest = 1;
  for (let i = 0; i <= PIECES; i++) {
    const { x, y, tx, ty } = first.camber((first.length * i) / PIECES);
    const angle = Math.atan2(y, x);
    last += angle - last - TURN * Math.round((angle - last) / TURN);
    radii[i] = Math.hypot(x, y);
    turned[i] = last - first.angle;
    flattest = Math.min(flattest, Math.abs(x * tx + y * ty) / radii[i]);
  }
  /** Angle from a vane's leading edge to where its camber passes a radius; at its ends past them. */
  const angleAt = (r: Mm): Rad => {
    let [low, high] = [0, PIECES];
    if (r <= radii[0]) return 0;
    if (r >= radii[PIECES]) return turned[PIECES];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (radii[middle] <= r) low = middle;
      else high = middle;
    }
    return turned[low] + ((r - radii[low]) / (radii[high] - radii[low])) * (turned[high] - turned[low]);
  };
  // No place of a vane is further from its camber than half its thickness, nor its camber's own place further round than that much radius takes it.
  const half = Math.max(first.thickness(0), first.thickness(first.length)) / 2;
  const reach = half * (1 + 1.2 / flattest) + 0.5;
  return (x, y) => {
    const r = Math.hypot(x, y);
    if (r < radii[0] - half - 0.5 || r > radii[PIECES] + half + 0.5) return false;
    const off = Math.atan2(y, x) - angleAt(r);
    for (const vane of vanes) {
      const apart = off - vane.angle;
      if (r * Math.abs(apart - TURN * Math.round(apart / TURN)) > reach) continue;
      const { s, n } = vane.locate([x, y, 0]);
      if (s >= 0 && s <= vane.length && Math.abs(n) < vane.halfThickness(s)) return true;
    }
    return false;
  };
}
