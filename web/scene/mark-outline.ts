import { stepAlong } from '../../geometry/depth/chart.ts';
import type { Mark } from '../../geometry/job/job.ts';
import { type Face, toGridPoint } from '../../geometry/part/face.ts';
import { type FlatFrame, flatFrame } from '../../geometry/sheet/flat-frame.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import { boxOutline } from '../tools/box-outline.ts';
import { divided, faceRing, type GridPlace } from './face-ring.ts';
import { type FlatPlace, traced } from './traced.ts';

/** The edge of a mark as closed lines on its face: exact for boxes, edges, areas and pits; to half a percent of its size for strokes. */
export function markOutline(face: Face, mark: Mark): readonly (readonly GridPlace[])[] {
  const placed = (points: readonly FacePoint[]) => points.map((point) => toGridPoint(face, point));
  switch (mark.kind) {
    case 'patch':
      return boxOutline(face, mark.first, mark.second).map(placed);
    case 'area':
      return closed(face, placed(mark.outline));
    case 'readings':
      return mark.within === null ? [] : closed(face, placed(mark.within));
    case 'pit':
      return [faceRing(face, ...toGridPoint(face, mark.at), mark.radius)];
    case 'edge': {
      const [, { from, to }] = face.coordinates;
      const [start, end] = [mark.profile[0][0], mark.profile[mark.profile.length - 1][0]];
      return boxOutline(face, [start, end], [from, to]).map(placed);
    }
    default:
      return pathOutline(face, placed(mark.path), mark.radius);
  }
}

function closed(face: Face, corners: readonly GridPlace[]): readonly (readonly GridPlace[])[] {
  return [divided(face, [...corners, corners[0]])];
}

/** All places within a radius of a path. */
function pathOutline(face: Face, path: readonly GridPlace[], radius: Mm): readonly (readonly GridPlace[])[] {
  const frame = flatFrame(face);
  const points = unrolled(face, frame, path);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const box = {
    x0: Math.min(...xs) - radius,
    x1: Math.max(...xs) + radius,
    y0: Math.min(...ys) - radius,
    y1: Math.max(...ys) + radius,
  };
  const lines = traced(box, (x, y) => radius - distanceTo(points, x, y));
  return lines.map((line) => line.map(([x, y]) => frame.toGrid(x, y)));
}

/** The path in the flat picture, counted on where it crosses the 0/360 line. */
function unrolled(face: Face, frame: FlatFrame, path: readonly GridPlace[]): readonly FlatPlace[] {
  let v = path[0][1];
  return path.map(([u, next]) => {
    v += stepAlong(face, v, next);
    return frame.toFlat(u, v);
  });
}

function distanceTo(points: readonly FlatPlace[], x: Mm, y: Mm): Mm {
  let least = Math.hypot(points[0][0] - x, points[0][1] - y);
  for (let i = 1; i < points.length; i++) {
    const [ax, ay] = points[i - 1];
    const [dx, dy] = [points[i][0] - ax, points[i][1] - ay];
    const length2 = dx * dx + dy * dy;
    const share = length2 > 0 ? Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / length2)) : 0;
    least = Math.min(least, Math.hypot(ax + share * dx - x, ay + share * dy - y));
  }
  return least;
}
