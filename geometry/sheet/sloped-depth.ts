import { cellAt, depthAt } from '../depth/depth-at.ts';
import type { DepthMap } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';

/**
 * Depth at a place, sloped both ways within a whole cell as the cells about it slope, so that a section shows a slope and no stairs.
 * Both sides of a cell must slope alike, and the lesser slope holds, as where a cell is split: none runs over the edge of a mark.
 * 0 off the face. Accuracy: exact for depths that are linear in u and v; a bowl's is off by no more than its sag over a cell.
 */
export function slopedDepth(map: DepthMap, face: Face, u: number, v: number): Mm {
  const cell = cellAt(face, u, v);
  if (cell < 0 || map.slot[cell] >= 0) return depthAt(map, face, u, v);
  const { rows, columns, wraps, u0, du, v0, dv } = map.grid;
  const { depth } = map;
  const row = Math.floor(cell / columns);
  const column = cell - row * columns;
  const own = depth[cell];
  const step = (beside: number): number =>
    face.cover !== null && face.cover[beside] === 0 ? 0 : depth[beside] - own;
  const hasSides = wraps || (column > 0 && column < columns - 1);
  const left = column > 0 ? cell - 1 : cell + columns - 1;
  const right = column < columns - 1 ? cell + 1 : cell - columns + 1;
  const alongV = hasSides ? lesser(-step(left), step(right)) : 0;
  const alongU = row > 0 && row < rows - 1 ? lesser(-step(cell - columns), step(cell + columns)) : 0;
  const across = (v - v0) / dv;
  return Math.max(
    0,
    own + alongU * ((u - u0) / du - row - 0.5) + alongV * (across - Math.floor(across) - 0.5),
  );
}

/** The one nearer to 0 of two numbers of one sign, else 0. */
function lesser(a: number, b: number): number {
  if (a * b <= 0) return 0;
  return Math.abs(a) < Math.abs(b) ? a : b;
}
