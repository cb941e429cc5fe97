import { chartAt, stepAlong } from '../../geometry/depth/chart.ts';
import type { Face } from '../../geometry/part/face.ts';
import { flatFrame } from '../../geometry/sheet/flat-frame.ts';
import { type Mm, TURN } from '../../geometry/units.ts';

/** A point of a face's grid. */
export type GridPlace = readonly [u: number, v: number];

/** A circle on a face about (u, v), as the brush measures it: in the flat picture, mm. It may reach past the edges of the face. */
export function faceRing(face: Face, u: number, v: number, radius: Mm, points = 72): readonly GridPlace[] {
  const { picture } = face;
  const [x0, y0] = chartAt(face, v).place(u, v);
  return Array.from({ length: points }, (_, i): GridPlace => {
    const angle = (TURN * i) / points;
    const x = x0 + radius * Math.cos(angle);
    const y = y0 + radius * Math.sin(angle);
    if (picture.kind === 'plane') return [y, v + x / picture.columnScale];
    return [Math.hypot(x, y) * picture.slant, v + Math.atan2(y, x) / picture.slant];
  });
}

/** Points along each side: a straight side in the flat picture is curved in radius and angle. */
const PIECES = 16;

/** A line of corners with points along its sides, which are straight in the flat picture; unrolled the short way round. */
export function divided(face: Face, corners: readonly GridPlace[]): readonly GridPlace[] {
  const frame = flatFrame(face);
  return corners.flatMap(([u, v], i): GridPlace[] => {
    const next = corners.at(i + 1);
    if (next === undefined) return [[u, v]];
    const [x0, y0] = frame.toFlat(u, v);
    const [x1, y1] = frame.toFlat(next[0], v + stepAlong(face, v, next[1]));
    return Array.from({ length: PIECES }, (_, k) => {
      const share = k / PIECES;
      return frame.toGrid(x0 + share * (x1 - x0), y0 + share * (y1 - y0));
    });
  });
}
