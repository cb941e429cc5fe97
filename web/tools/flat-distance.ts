import { chartAt, stepAlong } from '../../geometry/depth/chart.ts';
import { type Face, toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';

/** Distance of two points of a face in its flat picture, the short way round, mm. Exact. */
export function flatDistance(face: Face, from: FacePoint, to: FacePoint): Mm {
  const [u0, v0] = toGridPoint(face, from);
  const [u1, v1] = toGridPoint(face, to);
  const chart = chartAt(face, v0);
  const [x0, y0] = chart.place(u0, v0);
  const [x1, y1] = chart.place(u1, v0 + stepAlong(face, v0, v1));
  return Math.hypot(x1 - x0, y1 - y0);
}
