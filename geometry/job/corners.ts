/** Closed polygons as lists of corners: cleaning them, and what must hold before one encloses an area. */
export type Corner = readonly [x: number, y: number];

/** The corners without repeats: neither twice in a row nor the first once more at the end. */
export function distinctCorners(corners: readonly Corner[]): readonly Corner[] {
  const inTurn = corners.filter((corner, i) => i === 0 || !isSame(corner, corners[i - 1]));
  return inTurn.length > 1 && isSame(inTurn[0], inTurn[inTurn.length - 1]) ? inTurn.slice(0, -1) : inTurn;
}

function isSame(a: Corner, b: Corner): boolean {
  return a[0] === b[0] && a[1] === b[1];
}

/** True when the polygon is as good as a line: its area is below a billionth of its girth squared. */
export function isFlat(corners: readonly Corner[]): boolean {
  let twiceArea = 0;
  let girth = 0;
  for (let i = 0; i < corners.length; i++) {
    const [x, y] = corners[i];
    const [nextX, nextY] = corners[(i + 1) % corners.length];
    twiceArea += x * nextY - nextX * y;
    girth += Math.hypot(nextX - x, nextY - y);
  }
  return Math.abs(twiceArea) <= 2e-9 * girth * girth;
}

/** True when all corners lie on one line, to a billionth of its length. */
export function isLine(corners: readonly Corner[]): boolean {
  const [x0, y0] = corners[0];
  const away = ([x, y]: Corner) => Math.hypot(x - x0, y - y0);
  const far = corners.reduce((a, b) => (away(b) > away(a) ? b : a));
  const [dx, dy] = [far[0] - x0, far[1] - y0];
  const least = 1e-9 * (dx * dx + dy * dy);
  return corners.every(([x, y]) => Math.abs((x - x0) * dy - (y - y0) * dx) <= least);
}

/** True when the point lies inside the polygon (even-odd; a point on a side may fall either way). */
export function isInside([x, y]: Corner, corners: readonly Corner[]): boolean {
  let inside = false;
  for (let i = 0; i < corners.length; i++) {
    const [x1, y1] = corners[i];
    const [x2, y2] = corners[(i + 1) % corners.length];
    if (y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  }
  return inside;
}

/** A side of one of several polygons, from corner `from` to the next. */
export interface Side {
  readonly polygon: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The first two sides found that cross or touch though they do not share a corner in turn, null when there are none.
 * Sides are swept in x, so the work is near n log n for drawn outlines.
 */
export function meetingSides(polygons: readonly (readonly Corner[])[]): readonly [Side, Side] | null {
  const sides = polygons.flatMap((corners, polygon) =>
    corners.map((start, from) => {
      const to = (from + 1) % corners.length;
      const end = corners[to];
      return {
        polygon,
        from,
        to,
        start,
        end,
        left: Math.min(start[0], end[0]),
        right: Math.max(start[0], end[0]),
      };
    }),
  );
  sides.sort((a, b) => a.left - b.left);
  for (let i = 0; i < sides.length; i++) {
    const a = sides[i];
    for (let j = i + 1; j < sides.length && sides[j].left <= a.right; j++) {
      const b = sides[j];
      const inTurn = a.polygon === b.polygon && (a.to === b.from || b.to === a.from);
      if (inTurn ? foldsBack(a, b) : touch(a, b)) return a.from <= b.from ? [a, b] : [b, a];
    }
  }
  return null;
}

/**
 * True when a side of the one list crosses or touches a side of the other. Swept in x like `meetingSides`: near n log n for drawn
 * outlines.
 */
export function crossingSides(ones: readonly Segment[], others: readonly Segment[]): boolean {
  const sides = [...ones.map((side) => reaching(side, 0)), ...others.map((side) => reaching(side, 1))];
  sides.sort((a, b) => a.left - b.left);
  for (let i = 0; i < sides.length; i++) {
    const a = sides[i];
    for (let j = i + 1; j < sides.length && sides[j].left <= a.right; j++) {
      if (a.of !== sides[j].of && touch(a, sides[j])) return true;
    }
  }
  return false;
}

function reaching({ start, end }: Segment, of: 0 | 1) {
  return { start, end, of, left: Math.min(start[0], end[0]), right: Math.max(start[0], end[0]) };
}

export interface Segment {
  readonly start: Corner;
  readonly end: Corner;
}

interface Line extends Segment {
  readonly from: number;
  readonly to: number;
}

/** Two sides that follow each other lie on one another. */
function foldsBack(a: Line, b: Line): boolean {
  const [first, second] = a.to === b.from ? [a, b] : [b, a];
  const back = [first.start[0] - first.end[0], first.start[1] - first.end[1]];
  const on = [second.end[0] - second.start[0], second.end[1] - second.start[1]];
  return back[0] * on[1] === back[1] * on[0] && back[0] * on[0] + back[1] * on[1] > 0;
}

function touch(a: Segment, b: Segment): boolean {
  const lowA = Math.min(a.start[1], a.end[1]);
  const lowB = Math.min(b.start[1], b.end[1]);
  if (lowA > Math.max(b.start[1], b.end[1]) || lowB > Math.max(a.start[1], a.end[1])) return false;
  const aSplitsB = turn(a.start, a.end, b.start) * turn(a.start, a.end, b.end) <= 0;
  return aSplitsB && turn(b.start, b.end, a.start) * turn(b.start, b.end, a.end) <= 0;
}

/** Above 0 when c lies to the left of the line from a to b. */
function turn(a: Corner, b: Corner, c: Corner): number {
  return Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
}
