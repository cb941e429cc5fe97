import type { Smooth, Stroke } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import { beginPath, drawTo, endPath } from './brush-path.ts';
import type { DepthMap } from './depth-map.ts';

/** False when a brush passes by the face without touching a cell; one that passes within half a cell of it touches. */
export function brushTouches(
  map: DepthMap,
  face: Face,
  brush: Pick<Stroke | Smooth, 'path' | 'radius'>,
): boolean {
  const points = brush.path.map((point) => toGridPoint(face, point));
  if (points.some(([u, v]) => face.holds(u, v))) return true;
  const path = beginPath(map, face, brush.radius, 'whole-cells');
  for (const [u, v] of points) drawTo(path, u, v, false);
  const touches = path.touchedCount > 0;
  endPath(path);
  return touches;
}
