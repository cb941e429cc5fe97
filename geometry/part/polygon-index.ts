/**
 * A closed polygon that is asked many times whether it holds a point. Its sides are kept in a tree over y: each node spans a strip of
 * y and carries the sides that run right through it, ordered from left to right, so a question takes a few steps however many corners
 * there are.
 */
import type { FacePoint } from '../units.ts';
import { polygonHolds } from './polygon.ts';

export interface PolygonIndex {
  /** What `polygonHolds` answers. */
  holds(x: number, y: number): boolean;
}

/** Below this many corners going through all of them is as quick. */
const FEW_CORNERS = 24;

/**
 * Accuracy: gives the answer of `polygonHolds`, whose sum it takes side by side; a point nearer to a side than numbers can tell may fall
 * either way. Cost: n log n to build, log n squared a question; a polygon that crosses itself is asked more slowly.
 */
export function polygonIndex(corners: readonly FacePoint[]): PolygonIndex {
  if (corners.length < FEW_CORNERS) return { holds: (x, y) => polygonHolds(corners, x, y) };
  const sides = sidesOf(corners);
  const levels = Float64Array.from(new Set(corners.map(([, y]) => y))).sort();
  const strips = levels.length - 1;
  const nodes = strips > 0 ? sidesByNode(sides, levels, strips) : [];
  return {
    holds: (x, y) => {
      // Also false for a place that is no number.
      if (!(y >= levels[0] && y < levels[strips])) return false;
      let inside = false;
      for (let node = strips + stripOf(levels, y); node >= 1; node >>= 1) {
        const held = nodes[node];
        if (held === undefined) continue;
        const { list, ordered } = held;
        const right = ordered ? rightInOrder(sides, list, x, y) : rightOf(sides, list, x, y);
        if (right % 2 === 1) inside = !inside;
      }
      return inside;
    },
  };
}

/** Corners of the sides that are not level, four numbers each: from x, y to x, y as `polygonHolds` takes them. */
type Sides = Float64Array;

interface Node {
  /** Where each side begins in `Sides`. */
  readonly list: Int32Array;
  /** The sides do not cross within the strip and stand from left to right. */
  readonly ordered: boolean;
}

function sidesOf(corners: readonly FacePoint[]): Sides {
  const sides = new Float64Array(4 * corners.length);
  for (let i = 0, j = corners.length - 1; i < corners.length; j = i, i++) {
    sides.set([corners[i][0], corners[i][1], corners[j][0], corners[j][1]], 4 * i);
  }
  return sides;
}

/** A tree in an array: node n has the children 2 n and 2 n + 1, strip k is node `strips` + k. */
function sidesByNode(sides: Sides, levels: Float64Array, strips: number): (Node | undefined)[] {
  const lists: (number[] | undefined)[] = new Array(2 * strips);
  const put = (node: number, at: number): void => {
    const list = lists[node];
    if (list === undefined) lists[node] = [at];
    else list.push(at);
  };
  for (let at = 0; at < sides.length; at += 4) {
    const low = Math.min(sides[at + 1], sides[at + 3]);
    const high = Math.max(sides[at + 1], sides[at + 3]);
    if (low === high) continue;
    let from = strips + stripOf(levels, low);
    let to = strips + (high < levels[strips] ? stripOf(levels, high) : strips);
    for (; from < to; from >>= 1, to >>= 1) {
      if (from % 2 === 1) put(from++, at);
      if (to % 2 === 1) put(--to, at);
    }
  }
  const spans = spansOfNodes(levels, strips);
  return lists.map((list, node) =>
    list === undefined ? undefined : settled(sides, list, spans[2 * node], spans[2 * node + 1]),
  );
}

/** Lowest and highest y of each node, two numbers each. (Nodes whose strips are not in one piece never carry a side.) */
function spansOfNodes(levels: Float64Array, strips: number): Float64Array {
  const spans = new Float64Array(4 * strips);
  for (let k = 0; k < strips; k++) spans.set([levels[k], levels[k + 1]], 2 * (strips + k));
  for (let node = strips - 1; node >= 1; node--) {
    spans[2 * node] = Math.min(spans[4 * node], spans[4 * node + 2]);
    spans[2 * node + 1] = Math.max(spans[4 * node + 1], spans[4 * node + 3]);
  }
  return spans;
}

/** Puts a node's sides in order, if they have one all through its strip. */
function settled(sides: Sides, list: number[], low: number, high: number): Node {
  const middle = (low + high) / 2;
  const sorted = Int32Array.from(
    list.sort((a, b) => crossing(sides, a, middle) - crossing(sides, b, middle)),
  );
  let ordered = true;
  for (let k = 1; k < sorted.length && ordered; k++) {
    for (const y of [low, high]) {
      const [left, right] = [crossing(sides, sorted[k - 1], y), crossing(sides, sorted[k], y)];
      // Sides that meet at a corner there may differ by a rounding.
      if (left > right + 1e-12 * (Math.abs(left) + Math.abs(right))) ordered = false;
    }
  }
  return { list: sorted, ordered };
}

/** Where a side crosses y; the very sum `polygonHolds` takes. */
function crossing(sides: Sides, at: number, y: number): number {
  return ((sides[at + 2] - sides[at]) * (y - sides[at + 1])) / (sides[at + 3] - sides[at + 1]) + sides[at];
}

/** How many sides of an ordered node lie right of (x, y). */
function rightInOrder(sides: Sides, list: Int32Array, x: number, y: number): number {
  let left = 0;
  let right = list.length;
  while (left < right) {
    const middle = (left + right) >> 1;
    if (x < crossing(sides, list[middle], y)) right = middle;
    else left = middle + 1;
  }
  return list.length - left;
}

function rightOf(sides: Sides, list: Int32Array, x: number, y: number): number {
  let count = 0;
  for (const at of list) if (x < crossing(sides, at, y)) count += 1;
  return count;
}

/** The strip y lies in: the last level that is not above it. */
function stripOf(levels: Float64Array, y: number): number {
  let low = 0;
  let high = levels.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (levels[middle] <= y) low = middle;
    else high = middle;
  }
  return low;
}
