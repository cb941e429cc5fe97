/** The area: a polygon of one depth, corner by corner. */
import type { MarkFile } from '../../geometry/job/job-file.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import type { BrushSettings } from './brush.ts';
import { filePoint, ownPoint } from './file-point.ts';
import { flatDistance } from './flat-distance.ts';

export interface AreaInHand {
  readonly face: Face;
  /**
   * Sets a corner. Back at the first one it closes instead.
   * @param closeWithin  how near the first corner counts as back at it, mm
   * @returns the mark when it closed, in the file's units
   */
  tap(point: FacePoint, closeWithin: Mm): MarkFile | null;
  /** Takes the last corner back. */
  takeBack(): void;
  /** The corners so far, in our units. */
  corners(): readonly FacePoint[];
  /** Closes it: the mark, or null while it has fewer than three corners. */
  finish(): MarkFile | null;
}

const FEWEST_CORNERS = 3;
/** A second tap within this of the last corner is the other half of a double tap. */
const SAME_CORNER: Mm = 0.2;

export function startArea(face: Face, brush: BrushSettings): AreaInHand {
  const corners: FacePoint[] = [];
  const apart = (a: FacePoint, b: FacePoint) => flatDistance(face, ownPoint(face, a), ownPoint(face, b));
  const finish = (): MarkFile | null =>
    corners.length < FEWEST_CORNERS
      ? null
      : {
          kind: 'area',
          face: face.name,
          outline: corners.map(([first, second]): [number, number] => [first, second]),
          depth: brush.depth,
          blend: 'deepest',
        };
  return {
    face,
    tap(at, closeWithin) {
      const point = filePoint(face, at);
      if (corners.length >= FEWEST_CORNERS && apart(corners[0], point) <= closeWithin) return finish();
      const last = corners.at(-1);
      if (last === undefined || apart(last, point) > SAME_CORNER) corners.push(point);
      return null;
    },
    takeBack() {
      corners.pop();
    },
    corners: () => corners.map((corner) => ownPoint(face, corner)),
    finish,
  };
}
