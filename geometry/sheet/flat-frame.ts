import { type Face, toGridPoint } from '../part/face.ts';
import { type FacePoint, type Mm, wrapTurn } from '../units.ts';

/** A place in the drawn picture of a face: mm, x to the right, y down the page as SVG counts it. */
export type FlatPoint = readonly [x: Mm, y: Mm];

export interface FlatBox {
  readonly x: Mm;
  readonly y: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/**
 * How a face lies in its drawn picture. A round face is drawn in plan as seen from +z, the reference mark to the right and angles
 * counter-clockwise (a dished one foreshortened); a bore is unrolled from angle 0, its edge at the face on top;
 * a face in x, y has y up. Sides and tip of a vane lie with the leading edge on the left, height and pressure side up: the two sides
 * lie over each other, place by place. Its edges stand upright, pressure side on the right.
 */
export interface FlatFrame {
  readonly box: FlatBox;
  toFlat(u: number, v: number): FlatPoint;
  /** The grid point drawn at a place; also beyond the face's edges. */
  toGrid(x: Mm, y: Mm): readonly [u: number, v: number];
}

export function flatFrame(face: Face): FlatFrame {
  const { grid, picture } = face;
  const uEnd = grid.u0 + grid.rows * grid.du;
  if (picture.kind === 'polar') {
    return {
      box: { x: -uEnd, y: -uEnd, width: 2 * uEnd, height: 2 * uEnd },
      toFlat: (u, v) => [u * Math.cos(v), -u * Math.sin(v)],
      toGrid: (x, y) => [Math.sqrt(x * x + y * y), grid.v0 + wrapTurn(Math.atan2(-y, x) - grid.v0)],
    };
  }
  const scale = picture.columnScale;
  if (face.coordinates[0].label === 'along') {
    const vEnd = grid.v0 + grid.columns * grid.dv;
    return {
      box: { x: grid.u0, y: -vEnd * scale, width: grid.rows * grid.du, height: (vEnd - grid.v0) * scale },
      toFlat: (u, v) => [u, -v * scale],
      toGrid: (x, y) => [x, -y / scale],
    };
  }
  const along = face.coordinates[face.columnsAre === 'first' ? 1 : 0];
  const down = along.label === 'below' ? 1 : -1;
  const height = grid.rows * grid.du;
  return {
    box: {
      x: grid.v0 * scale,
      y: down > 0 ? grid.u0 : -uEnd,
      width: grid.columns * grid.dv * scale,
      height,
    },
    toFlat: (u, v) => [v * scale, down * u],
    toGrid: (x, y) => [down * y, x / scale],
  };
}

/** Where a point given in the face's own two coordinates is drawn. */
export function flatPoint(face: Face, frame: FlatFrame, point: FacePoint): FlatPoint {
  const [u, v] = toGridPoint(face, point);
  return frame.toFlat(u, v);
}
