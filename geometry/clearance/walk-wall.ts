import { depthAt } from '../depth/depth-at.ts';
import { type DepthMap, deepestOf, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import { type Face, isOnFace } from '../part/face.ts';
import type { Part, Side } from '../part/part.ts';
import type { Fraction, Mm } from '../units.ts';

/** A wall of a part: one face, and the face on its other side when both wear. They share one grid. */
export interface Wall {
  readonly face: Face;
  readonly behind: Face | null;
}

/** One place of a wall. */
export interface WallPlace {
  cell: number;
  /** Counted in cells, with fractions. */
  row: number;
  column: number;
  /** Share of the cell that the place stands for. */
  share: Fraction;
  /** Metal as new, and what is gone of it from the face and from behind, mm. */
  wall: Mm;
  depth: Mm;
  behind: Mm;
  /** True where a tip or an edge is eaten away to the middle of the wall: nothing is left there to be thin. Costly, so ask last. */
  isGone(): boolean;
}

/** No gauge tells less from nothing, mm: maps keep depths with seven digits. */
export const HAIR: Mm = 1e-4;

/**
 * The walls of a part, each once: a plate's face, its bore, the shroud, each vane. Of two sides the one that holds more cells leads,
 * the first of equals: the front of a shroud leaves out where vanes stand.
 */
export function wallsOf({ faces }: Part): Wall[] {
  return faces.filter(hasWall).flatMap((face): Wall[] => {
    const behind = faces.find(({ name }) => name === face.opposite) ?? null;
    if (behind === null) return [{ face, behind }];
    const lead = [face, behind].sort(
      (a, b) => heldCells(b) - heldCells(a) || faces.indexOf(a) - faces.indexOf(b),
    );
    return lead[0] === face ? [{ face, behind }] : [];
  });
}

/** Tips and edges have no row whose depth is a wall. */
function hasWall({ grid, isWall }: Face): boolean {
  for (let row = 0; row < grid.rows; row++) if (isWall(grid.u0 + (row + 0.5) * grid.du)) return true;
  return false;
}

const heldCells = ({ grid, cover }: Face): number =>
  cover === null ? grid.rows * grid.columns : cover.reduce((sum, share) => sum + share, 0);

/**
 * Shows every place of a wall: the middle of each cell, or its samples where a mark's edge cuts it on either side; not on the round
 * of a nose.
 * @param visit  gets the same object each time, filled anew
 */
export function walkWall(
  { face, behind }: Wall,
  part: Part,
  mapOf: (face: Face) => DepthMap,
  visit: (place: WallPlace) => void,
): void {
  const own = mapOf(face);
  const { grid } = own;
  const back = backOf(behind, mapOf);
  const eaters = eatersOf(part, face, behind, mapOf);
  const place: WallPlace = {
    cell: 0,
    row: 0,
    column: 0,
    share: 1,
    wall: 0,
    depth: 0,
    behind: 0,
    isGone() {
      const [u, v] = [grid.u0 + this.row * grid.du, grid.v0 + this.column * grid.dv];
      for (const eater of eaters) if (eater(u, v, this.wall / 2)) return true;
      return false;
    },
  };
  const showSamples = (cell: number, row: number, column: number): void => {
    const slot = own.slot[cell];
    let held = 0;
    for (let i = 0; i < SAMPLES; i++)
      if (isOnFace(face, cell, row + SAMPLE_U[i], column + SAMPLE_V[i])) held += 1;
    for (let i = 0; i < SAMPLES; i++) {
      place.row = row + SAMPLE_U[i];
      place.column = column + SAMPLE_V[i];
      const u = grid.u0 + place.row * grid.du;
      if (!face.isWall(u) || !isOnFace(face, cell, place.row, place.column)) continue;
      place.share = 1 / held;
      place.wall = face.wall(u);
      place.depth =
        slot < 0 ? depthAt(own, face, u, grid.v0 + place.column * grid.dv) : own.samples[slot * SAMPLES + i];
      place.behind = back === null ? 0 : back.sample(cell, i, place.row, place.column);
      visit(place);
    }
  };
  for (let row = 0; row < grid.rows; row++) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    const isWall = face.isWall(u);
    const wall = face.wall(u);
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      if (face.cover !== null && face.cover[cell] === 0) continue;
      place.cell = cell;
      if (own.slot[cell] >= 0 || back?.isSplit(cell)) {
        showSamples(cell, row, column);
        continue;
      }
      if (!isWall) continue;
      place.row = row + 0.5;
      place.column = column + 0.5;
      place.share = 1;
      place.wall = wall;
      place.depth = own.depth[cell];
      place.behind = back === null ? 0 : back.middle(cell);
      visit(place);
    }
  }
}

/** What is gone from behind, by the cells that both sides share. */
interface Back {
  isSplit(cell: number): boolean;
  middle(cell: number): Mm;
  sample(cell: number, i: number, row: number, column: number): Mm;
}

/** null where nothing is gone from behind. */
function backOf(behind: Face | null, mapOf: (face: Face) => DepthMap): Back | null {
  if (behind === null) return null;
  const map = mapOf(behind);
  if (deepestOf(map) === 0) return null;
  const { depth, slot, samples, grid } = map;
  return {
    isSplit: (cell) => slot[cell] >= 0,
    middle: (cell) => (behind.cover !== null && behind.cover[cell] === 0 ? 0 : depth[cell]),
    sample: (cell, i, row, column) => {
      if (!isOnFace(behind, cell, row, column)) return 0;
      return slot[cell] >= 0
        ? samples[slot[cell] * SAMPLES + i]
        : depthAt(map, behind, grid.u0 + row * grid.du, grid.v0 + column * grid.dv);
    },
  };
}

/**
 * Says of a place whether the middle of the wall is lost to a face that meets it: one question for each worn face of its corners,
 * other than the one it is the back of.
 */
function eatersOf(
  part: Part,
  face: Face,
  behind: Face | null,
  mapOf: (face: Face) => DepthMap,
): ((u: number, v: number, middle: Mm) => boolean)[] {
  const beside: Side[] = part.corners.flatMap(({ over, besides }) =>
    over === face ? besides.filter((side) => side.face !== behind) : [],
  );
  return beside.flatMap(({ face: eater, seenFrom }) => {
    const map = mapOf(eater);
    const reach = deepestOf(map);
    if (reach === 0) return [];
    return [
      (u: number, v: number, middle: Mm): boolean => {
        const at = seenFrom(u, v, middle);
        return at.depth >= 0 && at.depth < reach && at.depth < depthAt(map, eater, at.u, at.v);
      },
    ];
  });
}
