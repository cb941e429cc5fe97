/**
 * Which words have room beside their points, and on which side. Lengths in whatever the points are in: mm of a picture, px of a screen.
 */
export interface LabelledPoint {
  readonly x: number;
  readonly y: number;
  /** Of its word. */
  readonly width: number;
}

export interface ClearLabel {
  /** Place of its point in the list. */
  readonly index: number;
  /** Which end of the word stands at (x, y), its middle height. */
  readonly anchor: 'start' | 'end';
  readonly x: number;
  readonly y: number;
}

/**
 * Gives words places beside their points, right or left, the first in the list first; a word that would lie on another word or on
 * another point gets none.
 * @param height  of a word
 * @param away    of a word from its point; no other point lies nearer to a word than that above and below
 * @param most    as many words at most
 * Cost: about the number of points.
 */
export function clearLabels(
  points: readonly LabelledPoint[],
  { height, away, most }: { readonly height: number; readonly away: number; readonly most: number },
): ClearLabel[] {
  const size = 2 * height;
  const pointsIn = new Map<number, number[]>();
  const wordsIn = new Map<number, Box[]>();
  for (const [i, { x, y }] of points.entries())
    put(pointsIn, key(Math.floor(x / size), Math.floor(y / size)), i);
  const placed: ClearLabel[] = [];
  for (const [index, point] of points.entries()) {
    if (placed.length >= most) break;
    for (const anchor of ['start', 'end'] as const) {
      const x = point.x + (anchor === 'start' ? away : -away);
      const from = anchor === 'start' ? x : x - point.width;
      const box = { x0: from, x1: from + point.width, y0: point.y - height / 2, y1: point.y + height / 2 };
      const isTaken = near(wordsIn, box, 0, size).some((word) => meet(word, box));
      const isOnPoint = near(pointsIn, box, away, size).some(
        (i) => i !== index && isWithin(points[i], box, away),
      );
      if (isTaken || isOnPoint) continue;
      for (const cell of cellsOf(box, 0, size)) put(wordsIn, cell, box);
      placed.push({ index, anchor, x, y: point.y });
      break;
    }
  }
  return placed;
}

interface Box {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}

/** Points lie clear of a word by half of what its own does. */
function isWithin({ x, y }: LabelledPoint, box: Box, away: number): boolean {
  const gap = away / 2;
  return x > box.x0 - gap && x < box.x1 + gap && y > box.y0 - gap && y < box.y1 + gap;
}

const meet = (a: Box, b: Box): boolean => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1;

/** Cells far apart may share a key: that costs a look, no more. */
const key = (column: number, row: number): number => column * 65_537 + row;

function put<T>(into: Map<number, T[]>, at: number, item: T): void {
  const held = into.get(at);
  if (held === undefined) into.set(at, [item]);
  else held.push(item);
}

function near<T>(from: ReadonlyMap<number, readonly T[]>, box: Box, margin: number, size: number): T[] {
  return cellsOf(box, margin, size).flatMap((cell) => from.get(cell) ?? []);
}

function cellsOf({ x0, x1, y0, y1 }: Box, margin: number, size: number): number[] {
  const cells: number[] = [];
  for (let row = Math.floor((y0 - margin) / size); row <= Math.floor((y1 + margin) / size); row++) {
    for (let column = Math.floor((x0 - margin) / size); column <= Math.floor((x1 + margin) / size); column++)
      cells.push(key(column, row));
  }
  return cells;
}
