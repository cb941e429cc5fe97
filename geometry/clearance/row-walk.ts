import type { Face } from '../part/face.ts';
import { type Mm, TURN, wrapTurn } from '../units.ts';

/** Rings about the shaft, all of one width. */
export interface Rings {
  readonly from: Mm;
  readonly width: Mm;
  readonly count: number;
}

/** Where the cells of one row lie as the rotor sees them. */
export interface RowWalk {
  /** Works out one row; false when none of it lies in the rings. What it finds stands below until the next call. */
  place(row: number): boolean;
  /** By column, -1 outside the rings. */
  readonly ring: Int32Array;
  readonly sector: Int32Array;
  /** Of whole cells. */
  readonly area: Float64Array;
}

/**
 * Goes over a face row by row. A row is even but for a turn about the shaft or for a shift, so two places tell of all of it.
 * @param sectors  the turn in this many equal shares, from angle 0
 */
export function rowWalk(face: Face, rings: Rings, sectors: number): RowWalk {
  const { grid } = face;
  const { columns } = grid;
  const [ring, sector] = [new Int32Array(columns), new Int32Array(columns)];
  const area = new Float64Array(columns);
  const ringOf = (at: Mm): number => {
    const found = Math.floor((at - rings.from) / rings.width);
    return found >= 0 && found < rings.count ? found : -1;
  };
  const sectorOf = (angle: number): number =>
    Math.min(sectors - 1, Math.floor((wrapTurn(angle) / TURN) * sectors));
  const middle = (row: number, column: number) =>
    face.position(grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv, 0);

  const turned = (row: number): boolean => {
    const [x, y] = middle(row, 0);
    const found = ringOf(Math.hypot(x, y));
    ring.fill(found);
    area.fill(face.cellArea(row, 0));
    return found >= 0;
  };
  const shifted = (row: number): boolean => {
    const last = columns - 1;
    const [first, end] = [middle(row, 0), middle(row, last)];
    const [area0, area1] = [face.cellArea(row, 0), face.cellArea(row, last)];
    let isAny = false;
    for (let column = 0; column < columns; column++) {
      const share = last === 0 ? 0 : column / last;
      const x = first[0] + share * (end[0] - first[0]);
      const y = first[1] + share * (end[1] - first[1]);
      ring[column] = ringOf(Math.sqrt(x * x + y * y));
      area[column] = area0 + share * (area1 - area0);
      if (ring[column] < 0) continue;
      isAny = true;
      if (sectors > 1) sector[column] = sectorOf(Math.atan2(y, x));
    }
    return isAny;
  };
  if (!isTurned(face)) return { place: shifted, ring, sector, area };
  for (let column = 0; column < columns; column++)
    sector[column] = sectorOf(grid.v0 + (column + 0.5) * grid.dv);
  return { place: turned, ring, sector, area };
}

/** True where the columns run round the shaft. */
export function isTurned({ columnsAre, coordinates }: Face): boolean {
  return coordinates[columnsAre === 'first' ? 0 : 1].isAngle;
}
