import type { FacePoint, Mm } from '../units.ts';

export interface Box {
  readonly x0: Mm;
  readonly x1: Mm;
  readonly y0: Mm;
  readonly y1: Mm;
}

/**
 * Sorts holes into square bins by their boxes, so that a question about one place looks at the few holes round it.
 * @returns  for a place the indices of the holes whose box may hold it; never leaves one out
 */
export function holesNear(boxes: readonly Box[]): (x: Mm, y: Mm) => readonly number[] {
  if (boxes.length === 0) return () => NONE;
  const all = boxes.reduce((a, b) => ({
    x0: Math.min(a.x0, b.x0),
    x1: Math.max(a.x1, b.x1),
    y0: Math.min(a.y0, b.y0),
    y1: Math.max(a.y1, b.y1),
  }));
  const side = Math.ceil(Math.sqrt(boxes.length));
  // The same steps for boxes and places: what lies within a box never falls into a bin outside it.
  const along = (x: Mm): number => Math.min(side - 1, Math.floor(((x - all.x0) / (all.x1 - all.x0)) * side));
  const up = (y: Mm): number => Math.min(side - 1, Math.floor(((y - all.y0) / (all.y1 - all.y0)) * side));
  const bins: number[][] = Array.from({ length: side * side }, () => []);
  for (const [i, box] of boxes.entries()) {
    for (let row = up(box.y0); row <= up(box.y1); row++) {
      for (let column = along(box.x0); column <= along(box.x1); column++) bins[row * side + column].push(i);
    }
  }
  return (x, y) =>
    x >= all.x0 && x <= all.x1 && y >= all.y0 && y <= all.y1 ? bins[up(y) * side + along(x)] : NONE;
}

const NONE: readonly number[] = [];

export function boxOf(corners: readonly FacePoint[]): Box {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of corners) {
    x0 = Math.min(x0, x);
    x1 = Math.max(x1, x);
    y0 = Math.min(y0, y);
    y1 = Math.max(y1, y);
  }
  return { x0, x1, y0, y1 };
}
