import type { Area } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import { polygonHolds } from '../part/polygon.ts';
import type { FacePoint } from '../units.ts';
import { blockWithin, stepAlong } from './chart.ts';
import { cellAt } from './depth-at.ts';
import type { DepthMap } from './depth-map.ts';
import { pressImprint } from './press.ts';

/** The outline is walked in steps of this share of a cell to find the cells it cuts; corners it clips by less do not count. */
const WALK = 0.2;

/**
 * A closed polygon in the face's flat picture, of one depth. Writes into `map`.
 * Accuracy: edges true to 1/32 cell. Source: job format, "Mark"; tests/geometry/depth/area.test.ts
 */
export function applyArea(map: DepthMap, face: Face, area: Area): void {
  const { grid } = map;
  const flat = flatPicture(face, area.outline);
  const corners = flat.corners;
  const walk = walkOutline(face, flat);
  const cut = new Set<number>();
  let [u0, u1, v0, v1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [u, v] of walk) {
    u0 = Math.min(u0, u);
    u1 = Math.max(u1, u);
    v0 = Math.min(v0, v);
    v1 = Math.max(v1, v);
    const cell = cellAt(face, u, v);
    if (cell >= 0) cut.add(cell);
  }
  // Round the axis the polygon holds every radius down to the bore, whatever its own corners reach.
  if (face.picture.kind === 'polar' && polygonHolds(corners, 0, 0)) u0 = grid.u0;
  const block = blockWithin(face, u0, u1, v0, v1);
  if (block === null) return;
  const inside = (u: number, v: number): boolean => {
    const [x, y] = flat.place(u, v);
    return polygonHolds(corners, x, y);
  };
  pressImprint(map, face, {
    block,
    blend: area.blend,
    peak: null,
    reaches: (row, column) => {
      if (cut.has(row * grid.columns + column)) return 'cut';
      return inside(grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv) ? 'all' : 'none';
    },
    depthAt: (u, v) => (inside(u, v) ? area.depth : -1),
  });
}

interface Flat {
  readonly corners: readonly FacePoint[];
  place(u: number, v: number): FacePoint;
  /** Back from the picture to u, and to v counted on from `v`, so that a walk round the axis keeps counting. */
  back(x: number, y: number, v: number): readonly [u: number, v: number];
}

/** The face's flat picture, unrolled about the outline so that no edge is torn by the 0/360 line. */
function flatPicture(face: Face, outline: readonly FacePoint[]): Flat {
  const points = outline.map((point) => toGridPoint(face, point));
  const { picture } = face;
  if (picture.kind === 'polar') {
    const place = (u: number, v: number): FacePoint => [u * Math.cos(v), u * Math.sin(v)];
    return {
      corners: points.map(([u, v]) => place(u, v)),
      place,
      back: (x, y, v) => [Math.hypot(x, y), v + stepAlong(face, v, Math.atan2(y, x))],
    };
  }
  const scale = picture.columnScale;
  let [, v] = points[0];
  const unrolled = points.map(([u, next]): FacePoint => {
    v += stepAlong(face, v, next);
    return [v * scale, u];
  });
  const middle = unrolled.reduce((sum, [x]) => sum + x, 0) / unrolled.length / scale;
  return {
    corners: unrolled,
    place: (u, at) => [(middle + stepAlong(face, middle, at)) * scale, u],
    back: (x, y) => [y, x / scale],
  };
}

/** Points along the closed outline, a fraction of a cell apart, in grid coordinates. */
function walkOutline(face: Face, flat: Flat): (readonly [number, number])[] {
  const { grid, picture } = face;
  const along = picture.kind === 'polar' ? grid.u0 * grid.dv : picture.columnScale * grid.dv;
  const pace = WALK * Math.min(grid.du, Math.max(along, grid.du / 4));
  const walk: (readonly [number, number])[] = [];
  let v = picture.kind === 'polar' ? Math.atan2(flat.corners[0][1], flat.corners[0][0]) : 0;
  for (let i = 0; i < flat.corners.length; i++) {
    const [ax, ay] = flat.corners[i];
    const [bx, by] = flat.corners[(i + 1) % flat.corners.length];
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / pace));
    for (let k = 0; k < steps; k++) {
      const point = flat.back(ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps, v);
      v = point[1];
      walk.push(point);
    }
  }
  return walk;
}
