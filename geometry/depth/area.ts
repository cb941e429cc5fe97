import type { Area } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { polygonHolds } from '../part/polygon.ts';
import { polygonIndex } from '../part/polygon-index.ts';
import { blockWithin, type CellBlock } from './chart.ts';
import type { DepthMap } from './depth-map.ts';
import { type OutlineOnFace, outlinePicture } from './outline-picture.ts';
import { isOnMetal, type Press, pressCut, pressWhole } from './press.ts';
import { outlinePace, walkOutline } from './walk-outline.ts';

/**
 * A closed polygon in the face's flat picture, of one depth. Writes into `map`.
 * @returns  false when it touches no cell of the face
 * Accuracy: edges true to 1/32 cell. Source: job format, "Mark"; tests/geometry/depth/area.test.ts
 */
export function applyArea(map: DepthMap, face: Face, area: Area): boolean {
  const { grid } = map;
  const flat = outlinePicture(face, area.outline);
  const walk = walkOutline(face, flat);
  // Round the axis the polygon holds every radius down to the bore, whatever its own corners reach.
  const holdsAxis = face.picture.kind === 'polar' && polygonHolds(flat.corners, 0, 0);
  const block = blockWithin(face, holdsAxis ? grid.u0 : walk.u0, walk.u1, walk.v0, walk.v1);
  if (block === null) return false;
  const polygon = polygonIndex(flat.corners);
  const inside = (u: number, v: number): boolean => {
    const [x, y] = flat.place(u, v);
    return polygon.holds(x, y);
  };
  const mark: Press = { blend: area.blend, depthAt: (u, v) => (inside(u, v) ? area.depth : -1) };
  const cut = cutCells(face, block, walk.cells);
  const tear = columnOfTear(face, flat, block);
  let touches = false;
  for (let row = block.row0; row <= block.row1; row++) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    const wall = face.wall(u);
    const asksEach = isNarrow(face, row);
    // Cells in a row that the outline does not pass lie on one side of it: only the first of them is asked.
    let isInside: boolean | null = null;
    let first = 0;
    const pressUpTo = (k: number): void => {
      const run = { row, column: (block.column0 + first) % grid.columns, count: k - first };
      if (!isInside) return;
      touches ||= isOnMetal(face, run);
      pressWhole(map, face, run, mark, wall, area.depth, false);
    };
    for (let k = 0; k < block.columns; k++) {
      const isCut = cut[(row - block.row0) * block.columns + k] === 1;
      if (isInside !== null && !isCut && !asksEach && Math.abs(k - tear) > 1) continue;
      pressUpTo(k);
      first = k;
      const column = (block.column0 + k) % grid.columns;
      isInside = isCut ? null : inside(u, grid.v0 + (column + 0.5) * grid.dv);
      if (!isCut) continue;
      const run = { row, column, count: 1 };
      touches ||= isOnMetal(face, run);
      pressCut(map, face, run, mark, wall);
    }
    pressUpTo(block.columns);
  }
  return touches;
}

/** 1 for the cells of a block that the outline passes; row by row from the block's first column. */
function cutCells({ grid }: Face, block: CellBlock, cells: readonly number[]): Uint8Array {
  const cut = new Uint8Array((block.row1 - block.row0 + 1) * block.columns);
  for (const cell of cells) {
    const row = Math.floor(cell / grid.columns);
    const k = (cell - row * grid.columns - block.column0 + grid.columns) % grid.columns;
    cut[(row - block.row0) * block.columns + k] = 1;
  }
  return cut;
}

/** Which column of a block the tear runs by, counted from the block's first; far off where there is none. */
function columnOfTear({ grid }: Face, { tear }: OutlineOnFace, block: CellBlock): number {
  if (tear === null) return Number.NEGATIVE_INFINITY;
  const column = Math.floor((tear - grid.v0) / grid.dv) - block.column0;
  return column - grid.columns * Math.floor(column / grid.columns);
}

/** Cells near the axis may be so narrow that an outline slips through one between two steps of its walk. */
function isNarrow(face: Face, row: number): boolean {
  const { grid, picture } = face;
  const width = grid.dv * (picture.kind === 'polar' ? grid.u0 + row * grid.du : picture.columnScale);
  return width < outlinePace(face);
}
