import type { FacePoint, Mm2 } from '../units.ts';

/** Signed area by the shoelace sum, mm2; positive when the corners run counter-clockwise. Exact. */
export function polygonArea(corners: readonly FacePoint[]): Mm2 {
  let twice = 0;
  for (let i = 0; i < corners.length; i++) {
    const [x0, y0] = corners[i];
    const [x1, y1] = corners[(i + 1) % corners.length];
    twice += x0 * y1 - x1 * y0;
  }
  return twice / 2;
}

/** True when (x, y) lies inside the closed polygon: a ray to +x crosses its edges an odd number of times. */
export function polygonHolds(corners: readonly FacePoint[], x: number, y: number): boolean {
  let inside = false;
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i, i++) {
    const [xi, yi] = corners[i];
    const [xj, yj] = corners[j];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) inside = !inside;
  }
  return inside;
}
