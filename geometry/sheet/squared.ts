import type { Mm } from '../units.ts';
import type { FlatPoint } from './flat-frame.ts';

/**
 * Puts back the corners that tracing an outline cuts off: a short side between two long ones gives way to the point where those meet.
 * @param ring  closed, last point not repeated, without points on straight stretches
 * @param step  mm between the samples it was traced from: a cut is no longer than the diagonal of one
 */
export function squared(ring: readonly FlatPoint[], step: Mm): FlatPoint[] {
  const at = (i: number) => ring[(i + ring.length) % ring.length];
  const long = 4 * step;
  const corners = ring.map((point, i) => {
    const isCut =
      distance(point, at(i + 1)) < 1.5 * step &&
      distance(at(i - 1), point) > long &&
      distance(at(i + 1), at(i + 2)) > long;
    const meeting = isCut ? meetingOf(at(i - 1), point, at(i + 1), at(i + 2)) : null;
    return meeting !== null && distance(meeting, point) < 1.5 * step ? meeting : null;
  });
  return ring.flatMap((point, i) => {
    const corner = corners[i];
    if (corner !== null) return [corner];
    return corners[(i - 1 + ring.length) % ring.length] === null ? [point] : [];
  });
}

/** Where the line through a and b meets the line through c and d; null when they are parallel. */
function meetingOf(a: FlatPoint, b: FlatPoint, c: FlatPoint, d: FlatPoint): FlatPoint | null {
  const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
  const [vx, vy] = [d[0] - c[0], d[1] - c[1]];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-6 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return null;
  const t = ((c[0] - a[0]) * vy - (c[1] - a[1]) * vx) / cross;
  return [a[0] + t * ux, a[1] + t * uy];
}

const distance = (a: FlatPoint, b: FlatPoint): Mm => Math.hypot(a[0] - b[0], a[1] - b[1]);
