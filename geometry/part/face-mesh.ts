import type { Face } from './face.ts';
import type { Mesh } from './mesh.ts';

/** A face as a grid of triangles at depth 0, every vertex with its place in the depth texture. */
export interface FaceMesh extends Mesh {
  /** Two a vertex: share of the grid along v, then along u, 0..1; a texture of the grid's cells lies over the mesh. */
  readonly place: Float32Array;
  /** Vertices along u and along v. */
  readonly rows: number;
  readonly columns: number;
}

/** More vertices a side than this slow a tablet down and show nothing: relief comes from the depth texture. */
const MOST_A_SIDE = 256;

/**
 * A face as arrays to draw, decimated; holes are not cut out of it (the cover says where they are).
 * On a face that runs the whole turn the last column lies on the first, to the last bit, with its own place 1 in the texture.
 * @param rows, columns  vertices along u and along v at most, 2 to 256; a whole turn gets all its columns
 * Accuracy: vertices lie on the face; an arc between two of them bulges by r (1 - cos(half step)), 0.012 mm at r = 160 and 256 columns.
 */
export function faceMesh(
  face: Face,
  {
    rows: mostRows = MOST_A_SIDE,
    columns: mostColumns = MOST_A_SIDE,
  }: { readonly rows?: number; readonly columns?: number } = {},
): FaceMesh {
  for (const most of [mostRows, mostColumns]) {
    if (most >= 2 && most <= MOST_A_SIDE) continue;
    throw new RangeError(`faceMesh: needs 2 to ${MOST_A_SIDE} vertices a side, got ${most}`);
  }
  const { grid } = face;
  const rows = Math.max(2, Math.min(mostRows, grid.rows + 1));
  const columns = grid.wraps ? mostColumns : Math.max(2, Math.min(mostColumns, grid.columns + 1));
  const position = new Float32Array(rows * columns * 3);
  const normal = new Float32Array(rows * columns * 3);
  const place = new Float32Array(rows * columns * 2);
  for (let row = 0; row < rows; row++) {
    const along = row / (rows - 1);
    const u = grid.u0 + along * grid.rows * grid.du;
    for (let column = 0; column < columns; column++) {
      const across = column / (columns - 1);
      const closes = grid.wraps && column === columns - 1;
      const v = closes ? grid.v0 : grid.v0 + across * grid.columns * grid.dv;
      const vertex = row * columns + column;
      position.set(face.position(u, v, 0), vertex * 3);
      normal.set(face.normal(u, v), vertex * 3);
      place[vertex * 2] = across;
      place[vertex * 2 + 1] = along;
    }
  }
  return { position, normal, place, index: gridIndex(face, rows, columns), rows, columns };
}

/** Two triangles a square, counter-clockwise seen from outside the metal. */
function gridIndex(face: Face, rows: number, columns: number): Uint32Array {
  const index = new Uint32Array((rows - 1) * (columns - 1) * 6);
  const turned = !runsOutward(face);
  let at = 0;
  for (let row = 0; row + 1 < rows; row++) {
    for (let column = 0; column + 1 < columns; column++) {
      const a = row * columns + column;
      const [b, c, d] = [a + columns, a + columns + 1, a + 1];
      index.set(turned ? [a, d, c, a, c, b] : [a, b, c, a, c, d], at);
      at += 6;
    }
  }
  return index;
}

/** True when a turn from u to v is counter-clockwise seen from outside the metal. */
function runsOutward(face: Face): boolean {
  const { grid } = face;
  const u = grid.u0 + (grid.rows * grid.du) / 2;
  const [x, y, z] = face.position(u, grid.v0, 0);
  const a = face.position(u + grid.du / 2, grid.v0, 0);
  const b = face.position(u, grid.v0 + grid.dv / 2, 0);
  const [ax, ay, az] = [a[0] - x, a[1] - y, a[2] - z];
  const [bx, by, bz] = [b[0] - x, b[1] - y, b[2] - z];
  const [nx, ny, nz] = face.normal(u, grid.v0);
  return (ay * bz - az * by) * nx + (az * bx - ax * bz) * ny + (ax * by - ay * bx) * nz > 0;
}
