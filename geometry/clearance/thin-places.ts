import type { DepthMap } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { type Face, type Grid, toFacePoint } from '../part/face.ts';
import type { Part } from '../part/part.ts';
import type { FacePoint, Mm, Mm2 } from '../units.ts';
import { HAIR, type Wall, walkWall, wallsOf } from './walk-wall.ts';

/** `no limit`: the job does not say how thin a wall may be. */
export type WallVerdict = 'sound' | 'under' | 'through' | 'no limit';

/** What is left of one wall. */
export interface WallEstimate {
  /** Of its two sides the one worn deeper at its thinnest place. */
  readonly face: string;
  /** The other side; null where only one wears. Both have the same coordinates. */
  readonly behind: string | null;
  /** The thinnest place. */
  readonly at: FacePoint;
  readonly asNew: Mm;
  /** Metal left there, mm; 0 where it is worn through. */
  readonly remaining: Mm;
  readonly limit: Mm | null;
  /** Area thinner than the limit, worn through included. */
  readonly under: Mm2;
  readonly verdict: WallVerdict;
  /** Connected areas thinner than the limit, or worn through; thinnest first. */
  readonly places: readonly ThinPlace[];
  /** Metal and putty together at the place where they come to least once it is filled, mm. */
  readonly standing: Mm;
}

export interface ThinPlace {
  /** Its thinnest point. */
  readonly at: FacePoint;
  readonly remaining: Mm;
  readonly area: Mm2;
}

export interface WornFace {
  readonly map: DepthMap;
  readonly fill: FillMap;
}

/**
 * What is left of every wall of a part, and where it is thinner than allowed. Putty counts for nothing here: it carries no load.
 * @param limit  least thickness allowed, mm; null when it is not known, and only what is worn through is a thin place
 * Accuracy: exact at the cells and samples of the maps. Source: geometry definitions, "Wall"; tests/geometry/clearance/thin-places.test.ts
 */
export function wallsLeft(part: Part, wornOf: (face: Face) => WornFace, limit: Mm | null): WallEstimate[] {
  return wallsOf(part).map((wall) => wallLeft(wall, part, wornOf, limit));
}

function wallLeft(wall: Wall, part: Part, wornOf: (face: Face) => WornFace, limit: Mm | null): WallEstimate {
  const { face, behind } = wall;
  const { grid } = face;
  const cells = grid.rows * grid.columns;
  const puttyOn = puttyOf(wornOf(face).fill);
  const puttyBehind = behind === null ? null : puttyOf(wornOf(behind).fill);
  const thinner = Math.max(HAIR, (limit ?? 0) - HAIR);
  const shares = new Float32Array(cells);
  const found = new Map<number, Thinnest>();
  let least: Thinnest = { left: Infinity, row: 0, column: 0 };
  let standing = Infinity;
  let [asNew, ownDepth, backDepth] = [0, 0, 0];
  walkWall(
    wall,
    part,
    (known) => wornOf(known).map,
    (place) => {
      const { cell, row, column } = place;
      const left = place.wall - place.depth - place.behind;
      const putty = puttyOn(cell, place.depth) + (puttyBehind === null ? 0 : puttyBehind(cell, place.behind));
      const whole = Math.max(0, left) + putty;
      const isNews = left < least.left || left < thinner || whole < standing;
      if (!isNews || place.isGone()) return;
      standing = Math.min(standing, whole);
      if (left < least.left) {
        least = { left, row, column };
        [asNew, ownDepth, backDepth] = [place.wall, place.depth, place.behind];
      }
      if (left >= thinner) return;
      shares[cell] += place.share;
      const known = found.get(cell);
      if (known === undefined || left < known.left) found.set(cell, { left, row, column });
    },
  );
  const places = connected(found, grid).map((group): ThinPlace => {
    const thinnest = group.reduce(
      (best, cell) => {
        const here = found.get(cell);
        return here !== undefined && here.left < best.left ? here : best;
      },
      { left: Infinity, row: 0, column: 0 },
    );
    const area = group.reduce((sum, cell) => sum + areaOf(face, cell) * shares[cell], 0);
    return { at: pointOf(face, thinnest), remaining: metal(thinnest.left), area };
  });
  const remaining = metal(least.left);
  const isSeenBehind = behind !== null && backDepth > ownDepth;
  return {
    face: isSeenBehind ? behind.name : face.name,
    behind: isSeenBehind ? face.name : (behind?.name ?? null),
    at: pointOf(face, least),
    asNew,
    remaining,
    limit,
    under: places.reduce((sum, { area }) => sum + area, 0),
    verdict: verdictOf(remaining, limit),
    places: places.sort((a, b) => a.remaining - b.remaining || b.area - a.area),
    standing: Number.isFinite(standing) ? standing : 0,
  };
}

interface Thinnest {
  readonly left: Mm;
  readonly row: number;
  readonly column: number;
}

const metal = (left: Mm): Mm => (left <= HAIR || !Number.isFinite(left) ? 0 : left);

function verdictOf(remaining: Mm, limit: Mm | null): WallVerdict {
  if (remaining === 0) return 'through';
  if (limit === null) return 'no limit';
  return remaining < limit - HAIR ? 'under' : 'sound';
}

/** How much putty a place of a face gets, mm. */
function puttyOf({ label, regions, allowance }: FillMap): (cell: number, depth: Mm) => Mm {
  return (cell, depth) => {
    const region = label[cell];
    if (region === 0 || regions[region - 1].action !== 'fill') return 0;
    return depth - Math.min(depth, allowance);
  };
}

/** Cells that touch along a side, across the 0/360 line too, group by group. */
function connected(found: ReadonlyMap<number, unknown>, { rows, columns, wraps }: Grid): number[][] {
  const open = new Set(found.keys());
  const groups: number[][] = [];
  for (const start of found.keys()) {
    if (!open.delete(start)) continue;
    const group = [start];
    const meet = (cell: number): void => {
      if (open.delete(cell)) group.push(cell);
    };
    for (let at = 0; at < group.length; at++) {
      const cell = group[at];
      const column = cell % columns;
      if (column > 0) meet(cell - 1);
      else if (wraps) meet(cell + columns - 1);
      if (column < columns - 1) meet(cell + 1);
      else if (wraps) meet(cell - columns + 1);
      if (cell >= columns) meet(cell - columns);
      if (cell < (rows - 1) * columns) meet(cell + columns);
    }
    groups.push(group);
  }
  return groups;
}

function areaOf(face: Face, cell: number): Mm2 {
  const { columns } = face.grid;
  const whole = face.cellArea(Math.floor(cell / columns), cell % columns);
  return face.cover === null ? whole : whole * face.cover[cell];
}

const pointOf = (face: Face, { row, column }: Thinnest): FacePoint =>
  toFacePoint(face, face.grid.u0 + row * face.grid.du, face.grid.v0 + column * face.grid.dv);
