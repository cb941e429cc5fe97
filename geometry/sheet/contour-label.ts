import { type Deg, type Mm, toDegrees } from '../units.ts';
import type { FlatPoint } from './flat-frame.ts';

/** Where the number of a contour line stands: its middle, and the slope of the line there, never upside down. */
export interface ContourLabel {
  readonly x: Mm;
  readonly y: Mm;
  /** Clockwise on the page, from more than -90 to 90. */
  readonly angle: Deg;
}

/** Places along a run that are tried, as shares of its length: from its middle outward. */
const TRIED = Array.from({ length: 23 }, (_, i) => 0.5 + (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * 0.04);

/**
 * Finds a place for the number of a contour line on each of its runs that is long enough, the longest first: near the middle of the
 * run, and clear of the numbers already set.
 * @param runs   the parts of the line that lie on the face
 * @param taken  labels already set
 * @param size   width of a number in the picture, mm; runs shorter than twice that carry none
 * @param isOpen false where a number would say nothing: where lines lie on each other
 * @param most   as many at most
 * @returns none when every run is too short, or has no room
 */
export function contourLabels(
  runs: readonly (readonly FlatPoint[])[],
  taken: readonly ContourLabel[],
  size: Mm,
  isOpen: (x: Mm, y: Mm) => boolean,
  most: number,
): ContourLabel[] {
  const longest = runs
    .map((run) => ({ run, length: lengthOf(run) }))
    .filter(({ length }) => length > 2 * size)
    .sort((a, b) => b.length - a.length);
  const found: ContourLabel[] = [];
  for (const { run, length } of longest) {
    if (found.length >= most) break;
    for (const share of TRIED) {
      const label = labelAt(run, share * length, size);
      const isClear = ({ x, y }: ContourLabel) => Math.hypot(x - label.x, y - label.y) > 1.5 * size;
      if (!isOpen(label.x, label.y) || !taken.every(isClear) || !found.every(isClear)) continue;
      found.push(label);
      break;
    }
  }
  return found;
}

/** The slope is taken over the width of the number, so that a kink under it does not turn it. */
function labelAt(run: readonly FlatPoint[], at: Mm, size: Mm): ContourLabel {
  const [x, y] = pointAt(run, at);
  const [x0, y0] = pointAt(run, at - size / 2);
  const [x1, y1] = pointAt(run, at + size / 2);
  return { x, y, angle: upright(toDegrees(Math.atan2(y1 - y0, x1 - x0))) };
}

/** The same slope, never upside down. */
export function upright(angle: Deg): Deg {
  return angle > 90 ? angle - 180 : angle <= -90 ? angle + 180 : angle;
}

function pointAt(run: readonly FlatPoint[], at: Mm): FlatPoint {
  let left = Math.max(0, at);
  for (let i = 1; i < run.length; i++) {
    const [a, b] = [run[i - 1], run[i]];
    const step = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (left <= step && step > 0) {
      return [a[0] + ((b[0] - a[0]) * left) / step, a[1] + ((b[1] - a[1]) * left) / step];
    }
    left -= step;
  }
  return run[run.length - 1];
}

function lengthOf(run: readonly FlatPoint[]): Mm {
  let length = 0;
  for (let i = 1; i < run.length; i++)
    length += Math.hypot(run[i][0] - run[i - 1][0], run[i][1] - run[i - 1][1]);
  return length;
}
