import { type FlatMap, isOpen } from '../../geometry/sheet/flat-map.ts';
import type { Mm } from '../../geometry/units.ts';
import type { Screen } from './camera.ts';
import type { FlatLay } from './flat-view.ts';

/** The number of a contour line on the screen, px from the top left. */
export interface ContourPlace {
  readonly depth: Mm;
  readonly x: number;
  readonly y: number;
}

/** The contours of a face as far as numbers on them need them. */
export type NumberedContours = Pick<FlatMap, 'spacingAt'> & {
  readonly lines: readonly Pick<FlatMap['lines'][number], 'depth' | 'runs'>[];
};

/** px: a line shorter than this on the screen carries no number, and every so often a long one carries another. */
const SHORTEST = 64;
const AGAIN = 320;
/** px between the places that are tried. */
const PACE = 12;
/** px between two numbers, between the lines about one (half the height of one), and off the picture's edge. */
const APART = 34;
const ROOM = 4;
const EDGE = 16;

/**
 * Where the numbers of the contour lines stand while a part of the face is looked at: on every line that is in sight and long enough
 * there, near the middle of what is seen of it, the deepest first. Closer by, short lines get theirs and long ones more.
 */
export function contourPlaces(
  { lines, spacingAt }: NumberedContours,
  { scale, x: left, y: top }: FlatLay,
  { width, height }: Screen,
  most: number,
): ContourPlace[] {
  const placed: ContourPlace[] = [];
  const isClear = (x: number, y: number, depth: Mm) =>
    placed.every((other) => {
      const apart = Math.hypot(other.x - x, other.y - y);
      return apart > APART && (other.depth !== depth || apart > AGAIN / 2);
    });
  for (const { depth, runs } of lines.toReversed()) {
    for (const run of runs) {
      const seen = walked(run, scale, left, top, width, height);
      if (seen.length * PACE < SHORTEST) continue;
      const stretches = Math.max(1, Math.round((seen.length * PACE) / AGAIN));
      for (let i = 0; i < stretches; i++) {
        const middle = Math.floor(((i + 0.5) * seen.length) / stretches);
        const reach = Math.floor(seen.length / stretches / 2);
        for (let step = 0; step <= 2 * reach; step++) {
          const at = seen[middle + (step % 2 === 0 ? step / 2 : -(step + 1) / 2)];
          if (at === undefined) continue;
          const [x, y] = at;
          if (!isClear(x, y, depth)) continue;
          if (!isOpen(spacingAt, (x - left) / scale, (y - top) / scale, ROOM / scale)) continue;
          placed.push({ depth, x, y });
          if (placed.length >= most) return placed;
          break;
        }
      }
    }
  }
  return placed;
}

/** Places along a line every PACE px, those in sight. */
function walked(
  run: readonly (readonly [Mm, Mm])[],
  scale: number,
  left: number,
  top: number,
  width: number,
  height: number,
): (readonly [x: number, y: number])[] {
  const seen: (readonly [number, number])[] = [];
  let over = PACE / 2;
  for (let i = 1; i < run.length; i++) {
    const [x0, y0] = [run[i - 1][0] * scale + left, run[i - 1][1] * scale + top];
    const [dx, dy] = [run[i][0] * scale + left - x0, run[i][1] * scale + top - y0];
    const length = Math.hypot(dx, dy);
    for (; over < length; over += PACE) {
      const [x, y] = [x0 + (dx * over) / length, y0 + (dy * over) / length];
      if (x > EDGE && x < width - EDGE && y > EDGE && y < height - EDGE) seen.push([x, y]);
    }
    over -= length;
  }
  return seen;
}
