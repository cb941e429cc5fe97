import { type Face, toGridPoint } from '../part/face.ts';
import { polygonIndex } from '../part/polygon-index.ts';
import type { FacePoint } from '../units.ts';
import { stepAlong } from './chart.ts';
import type { OutlinePicture } from './walk-outline.ts';

/** An outline in the flat picture of its face. */
export interface OutlineOnFace extends OutlinePicture {
  place(u: number, v: number): FacePoint;
  /** v of the line opposite the outline along which an unrolled face is cut open; null where there is none. */
  readonly tear: number | null;
}

/** The face's flat picture, unrolled about the outline so that no edge is torn by the 0/360 line. */
export function outlinePicture(face: Face, outline: readonly FacePoint[]): OutlineOnFace {
  const points = outline.map((point) => toGridPoint(face, point));
  const { grid, picture } = face;
  if (picture.kind === 'polar') {
    const place = (u: number, v: number): FacePoint => [u * Math.cos(v), u * Math.sin(v)];
    return {
      corners: points.map(([u, v]) => place(u, v)),
      place,
      back: (x, y, v) => [Math.hypot(x, y), v + stepAlong(face, v, Math.atan2(y, x))],
      tear: null,
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
    tear: grid.wraps ? middle + (grid.columns * grid.dv) / 2 : null,
  };
}

/** Whether an outline in a face's flat picture holds a grid place. */
export function heldBy(face: Face, outline: readonly FacePoint[]): (u: number, v: number) => boolean {
  const flat = outlinePicture(face, outline);
  const polygon = polygonIndex(flat.corners);
  return (u, v) => polygon.holds(...flat.place(u, v));
}
