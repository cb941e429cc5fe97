/**
 * The seam between a part and everything that follows: a face knows its two coordinates, its flat picture, where a point lies
 * in the part frame, the wall behind it and the metal under a cell down to a depth. Right of part/ nothing asks which part it has.
 *
 * Every face carries a grid whose rows run along `u` and whose columns run along `v`. The geometry is constant along `v`
 * up to a turn about z or a shift, so what a cell holds follows from its row and two numbers a column.
 * On `face` of a round plate and on the shroud u is the radius and v the angle; on `bore` u is the distance below and v the angle;
 * on the face of an outline plate u is y and v is x; on the sides and the tip of a vane u is the distance along and v the height or
 * the distance across; on its edges u is the height and v the distance across.
 */
import type { FacePoint, Mm, Mm2, Vec3 } from '../units.ts';
import type { Metal } from './metal.ts';

export interface Face {
  /** As the job file spells it: `face`, `bore`, `vane-2/tip`. */
  readonly name: string;
  /** What the person reads as first and second. */
  readonly coordinates: readonly [Coordinate, Coordinate];
  /** Which of the two the columns run along. */
  readonly columnsAre: 'first' | 'second';
  /** The way the batches are shared out: along the columns (round a plate), or along the rows (along a vane). */
  readonly worked: 'by-column' | 'by-row';
  readonly grid: Grid;
  readonly picture: Picture;
  /** Nominal area, mm2, holes taken out. */
  readonly area: Mm2;
  /** Share of each cell that is face, rows x columns; null when every cell is whole. */
  readonly cover: Float32Array | null;
  /** The cells whose share lies between 0 and 1: the few a sum over whole cells has to put right. */
  readonly cutCells: Int32Array;
  /** Metal behind the face along the depth, mm; even along a row. No wear goes deeper. */
  wall(u: number): Mm;
  /** Name of the face on the other side of the wall, which has the same grid; null when there is none. */
  readonly opposite: string | null;
  /** False where the wall is no measure of what is left: on the round of a nose, and at tips and edges. */
  isWall(u: number): boolean;
  /** True when the point lies on the face: inside its edges and in no hole. */
  holds(u: number, v: number): boolean;
  /** Place in the part frame of the point `depth` mm below (u, v), mm. */
  position(u: number, v: number, depth: Mm): Vec3;
  /** Unit vector out of the metal, part frame. */
  normal(u: number, v: number): Vec3;
  /** How far a point of the part frame lies below the face, and the grid point above it: what `position` undoes. Exact near the face. */
  below(point: Vec3): Below;
  /** The metal under one row of cells, see `RowMetal`; null where no such law holds and `metalAt` answers place by place. */
  metal(row: number): RowMetal | null;
  /** The metal of a whole cell between two depths below (u, v), as if the cell were all like this place. Only for rows without a law. */
  metalAt(u: number, v: number, from: Mm, to: Mm): Metal;
  /** Nominal area of a whole cell of a row at a column, mm2. */
  cellArea(row: number, column: number): Mm2;
  /** Per column: what multiplies the `first` and the `second` terms of `RowMetal`. */
  readonly columnFirst: Float64Array;
  readonly columnSecond: Float64Array;
}

export interface Below {
  readonly u: number;
  readonly v: number;
  /** mm; negative in front of the face. */
  readonly depth: Mm;
}

export interface Coordinate {
  readonly label: 'radius' | 'angle' | 'below' | 'x' | 'y' | 'along' | 'height' | 'across';
  readonly isAngle: boolean;
  /** Range on the face, mm or rad. */
  readonly from: number;
  readonly to: number;
}

/** A regular grid over a face: cell (row, column) spans u0 + row du .. + du and v0 + column dv .. + dv; values stand at cell centres, row-major. */
export interface Grid {
  readonly rows: number;
  readonly columns: number;
  readonly u0: number;
  readonly du: number;
  readonly v0: number;
  readonly dv: number;
  /** The last column neighbours the first: v is an angle that runs the whole turn. */
  readonly wraps: boolean;
}

/**
 * How distances are taken on a face. `polar`: u is a radius in plan, v an angle, and the face is a cone developed about v:
 * slope length u / slant, angle v * slant (slant = cos of the cone angle, 1 when flat). `plane`: x = v * columnScale, y = u.
 */
export type Picture =
  | { readonly kind: 'polar'; readonly slant: number }
  | { readonly kind: 'plane'; readonly columnScale: number };

/**
 * The metal between the nominal surface and depth d under one cell of a row, as polynomials in d without constant term:
 * value(d) = sum over k = 1..4 of c[k-1] d^k. Exact for the cell's curved shape. Each quantity is
 * plain + columnFirst * first + columnSecond * second, each such a polynomial, or null for none.
 * Units: mm3 for the volume, mm4 for moments, mm5 for the products x z and y z.
 */
export interface RowMetal {
  readonly volume: Terms;
  readonly x: Terms;
  readonly y: Terms;
  readonly z: Terms;
  readonly xz: Terms;
  readonly yz: Terms;
}

export type Polynomial = readonly [number, number, number, number];

export interface Terms {
  readonly plain: Polynomial | null;
  readonly first: Polynomial | null;
  readonly second: Polynomial | null;
}

export const NO_TERMS: Terms = { plain: null, first: null, second: null };

/** Works each row's metal out once, when it is first asked for. */
export function eachRow(metal: (row: number) => RowMetal | null): (row: number) => RowMetal | null {
  const known: (RowMetal | null | undefined)[] = [];
  return (row) => {
    const answer = known[row] === undefined ? metal(row) : known[row];
    known[row] = answer;
    return answer;
  };
}

/** True when the face's edge runs through the cell: part of it is hole or lies off the face. */
export function isCutCell(face: Face, cell: number): boolean {
  return face.cover !== null && face.cover[cell] < 1;
}

/** False for a sample that lies in a hole or off the face: nothing there can be the deepest place. Row and column count in cells. */
export function isOnFace(face: Face, cell: number, row: number, column: number): boolean {
  const { grid } = face;
  return !isCutCell(face, cell) || face.holds(grid.u0 + row * grid.du, grid.v0 + column * grid.dv);
}

/** The face's own coordinates of a grid point. */
export function toFacePoint(face: Face, u: number, v: number): FacePoint {
  return face.columnsAre === 'first' ? [v, u] : [u, v];
}

/** The grid point (u, v) of a point given in the face's own coordinates. */
export function toGridPoint(face: Face, point: FacePoint): readonly [u: number, v: number] {
  return face.columnsAre === 'first' ? [point[1], point[0]] : [point[0], point[1]];
}
