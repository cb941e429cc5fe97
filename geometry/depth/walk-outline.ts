import type { Face } from '../part/face.ts';
import type { FacePoint, Fraction, Mm } from '../units.ts';
import { cellAt } from './depth-at.ts';

/** The outline is walked in steps of this share of a cell to find the cells it cuts; corners it clips by less do not count. */
const WALK: Fraction = 0.2;

/** A closed outline in a flat picture. */
export interface OutlinePicture {
  readonly corners: readonly FacePoint[];
  /** Back from the picture to u, and to v counted on from `v`, so that a walk round the axis keeps counting. */
  back(x: Mm, y: Mm, v: number): readonly [u: number, v: number];
}

export interface OutlineWalk {
  /** Cells the outline passes; the same cell may stand there more than once. */
  readonly cells: readonly number[];
  /** A range of the grid that holds the outline. */
  readonly u0: number;
  readonly u1: number;
  readonly v0: number;
  readonly v1: number;
}

/**
 * Walks along a closed outline. Stretches beyond the face are passed over: a corner may lie any distance away.
 * Accuracy: finds every cell the outline runs through for more than a step.
 */
export function walkOutline(face: Face, { corners, back }: OutlinePicture): OutlineWalk {
  const pace = outlinePace(face);
  const box = faceBox(face, pace);
  const cells: number[] = [];
  let [u0, u1, v0, v1] = [Infinity, -Infinity, Infinity, -Infinity];
  let last = -1;
  let v = face.picture.kind === 'polar' ? Math.atan2(corners[0][1], corners[0][0]) : 0;
  const reach = (x: Mm, y: Mm): number => {
    const point = back(x, y, v);
    v = point[1];
    u0 = Math.min(u0, point[0]);
    u1 = Math.max(u1, point[0]);
    v0 = Math.min(v0, v);
    v1 = Math.max(v1, v);
    return point[0];
  };
  const visit = (x: Mm, y: Mm): void => {
    const cell = cellAt(face, reach(x, y), v);
    if (cell >= 0 && cell !== last) cells.push(cell);
    last = cell;
  };
  for (let i = 0; i < corners.length; i++) {
    const [ax, ay] = corners[i];
    const [bx, by] = corners[(i + 1) % corners.length];
    const steps = Math.max(1, Math.ceil(Math.hypot(bx - ax, by - ay) / pace));
    visit(ax, ay);
    const [from, to] = sharesWithin(box, ax, ay, bx, by);
    const end = Math.min(steps - 1, Math.ceil(to * steps) + 1);
    for (let k = Math.max(1, Math.floor(from * steps) - 1); k <= end; k++) {
      visit(ax + ((bx - ax) * k) / steps, ay + ((by - ay) * k) / steps);
    }
  }
  // Closes the round: the last side may have been passed over.
  reach(...corners[0]);
  return { cells, u0, u1, v0, v1 };
}

/** Length of a step along an outline on this face. */
export function outlinePace({ grid, picture }: Face): Mm {
  const along = picture.kind === 'polar' ? grid.u0 * grid.dv : picture.columnScale * grid.dv;
  return WALK * Math.min(grid.du, Math.max(along, grid.du / 4));
}

/** A box of the flat picture: x0, x1, y0, y1. */
type PictureBox = readonly [x0: Mm, x1: Mm, y0: Mm, y1: Mm];

/** A box that holds the face in its flat picture, a step wider on all sides. */
function faceBox({ grid, picture }: Face, pace: Mm): PictureBox {
  const uEnd = grid.u0 + grid.rows * grid.du;
  if (picture.kind === 'polar') return [-uEnd - pace, uEnd + pace, -uEnd - pace, uEnd + pace];
  const scale = picture.columnScale;
  const [x0, x1] = grid.wraps
    ? [-Infinity, Infinity]
    : [grid.v0 * scale - pace, (grid.v0 + grid.columns * grid.dv) * scale + pace];
  return [x0, x1, grid.u0 - pace, uEnd + pace];
}

/** From which to which share of the way from a to b the way lies in a box; from more than to where it misses the box. */
function sharesWithin([x0, x1, y0, y1]: PictureBox, ax: Mm, ay: Mm, bx: Mm, by: Mm): [Fraction, Fraction] {
  let [from, to] = [0, 1];
  const clip = (a: Mm, b: Mm, low: Mm, high: Mm): void => {
    if (a === b) {
      if (a < low || a > high) to = -1;
      return;
    }
    const [s, t] = [(low - a) / (b - a), (high - a) / (b - a)];
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  };
  clip(ax, bx, x0, x1);
  clip(ay, by, y0, y1);
  return from <= to ? [from, to] : [1, -1];
}
