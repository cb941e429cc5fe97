/**
 * Adds up metal under a face. A row's geometry is constant, so a row needs only sums of powers of depth, plain and times the two
 * column numbers; the row's polynomials are applied once a row.
 */
import { type DepthMap, isEven, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { DAMAGE } from '../fill/label.ts';
import type { Face } from '../part/face.ts';
import { addMetal, type Metal, type MetalSum, NO_METAL } from '../part/metal.ts';
import type { Mm } from '../units.ts';
import { addRow, FIRST, highestPower, ROW_SUMS, type RowSums, SECOND, usesSecond } from './row-sums.ts';

/**
 * Everything lost: metal from the nominal surface down to the worn one.
 * Accuracy: exact for the map's cells and samples; cells cut by the face's edge count their share.
 */
export function lostMetal(face: Face, map: DepthMap): Metal {
  const total = { ...NO_METAL };
  const power = addLawfulRows(total, face, map);
  for (let row = 0; row < map.grid.rows; row++) {
    if (face.metal(row) === null) addPlaces(total, face, map, row, 0, null);
  }
  if (power > 1) addSpread(total, face, map, power);
  takeOffHoles(total, face, map);
  return total;
}

/** Adds the rows that have a law, every cell whole and at its mean depth. Writes into `total`; returns the highest power of depth. */
function addLawfulRows(total: MetalSum, face: Face, map: DepthMap): number {
  const { rows } = map.grid;
  const sums: RowSums = new Float64Array(ROW_SUMS);
  const [first, last] = [face.metal(0), face.metal(rows - 1)];
  const power = Math.max(first === null ? 1 : highestPower(first), last === null ? 1 : highestPower(last));
  const usesTwo = (first !== null && usesSecond(first)) || (last !== null && usesSecond(last));
  for (let row = 0; row < rows; row++) {
    const law = face.metal(row);
    if (law === null) continue;
    if (power <= 2) sumToSquares(face, map, row, sums);
    else if (power > 3 || usesTwo) sumToFourths(face, map, row, sums);
    else sumToCubes(face, map, row, sums);
    if (sums[0] !== 0) addRow(total, law, sums);
  }
  return power;
}

/** Metal of the regions with this action, between the allowance and the worn surface. Accuracy as `lostMetal`. */
export function metalOf(face: Face, map: DepthMap, fill: FillMap, action: 'fill' | 'leave'): Metal {
  const counts = Uint8Array.from([0, ...fill.regions.map((region) => (region.action === action ? 1 : 0))]);
  if (!counts.includes(1)) return NO_METAL;
  const from = action === 'fill' ? fill.allowance : 0;
  const total = { ...NO_METAL };
  const { rows, columns } = map.grid;
  const sums: RowSums = new Float64Array(ROW_SUMS);
  const isCounted = (cell: number): boolean => counts[fill.label[cell]] === 1;
  for (let row = 0; row < rows; row++) {
    const law = face.metal(row);
    if (law === null) {
      addPlaces(total, face, map, row, from, isCounted);
      continue;
    }
    sums.fill(0);
    for (let column = 0, cell = row * columns; column < columns; column++, cell++) {
      if (isCounted(cell)) addCell(sums, face, map, cell, column, from);
    }
    if (sums[0] !== 0) addRow(total, law, sums);
  }
  return total;
}

/**
 * Adds a row that has no law, cell by cell and sample by sample, from depth `from` on. Writes into `total`.
 * @param isCounted  which cells count, and then only where they are damaged; null for all that is lost
 */
function addPlaces(
  total: MetalSum,
  face: Face,
  map: DepthMap,
  row: number,
  from: Mm,
  isCounted: ((cell: number) => boolean) | null,
): void {
  const { grid } = face;
  const least = isCounted === null ? from : Math.max(from, DAMAGE);
  for (let column = 0; column < grid.columns; column++) {
    const cell = row * grid.columns + column;
    const share = face.cover === null ? 1 : face.cover[cell];
    if (share === 0 || map.depth[cell] === 0 || (isCounted !== null && !isCounted(cell))) continue;
    const slot = isEven(map, cell) ? -1 : map.slot[cell];
    const count = slot < 0 ? 1 : SAMPLES;
    for (let i = 0; i < count; i++) {
      const depth = slot < 0 ? map.depth[cell] : map.samples[slot * SAMPLES + i];
      if (depth <= least) continue;
      const u = grid.u0 + (row + (slot < 0 ? 0.5 : SAMPLE_U[i])) * grid.du;
      const v = grid.v0 + (column + (slot < 0 ? 0.5 : SAMPLE_V[i])) * grid.dv;
      addMetal(total, face.metalAt(u, v, from, depth), share / count);
    }
  }
}

/** Fills `sums` with the powers 1 and 2 of a row, every cell at its mean depth. The loop that runs over all cells: no branches. */
function sumToSquares(face: Face, map: DepthMap, row: number, sums: RowSums): void {
  const { columnFirst, columnSecond } = face;
  const { columns } = map.grid;
  const depth = map.depth.subarray(row * columns, (row + 1) * columns);
  let a1 = 0;
  let a2 = 0;
  let b1 = 0;
  let b2 = 0;
  let c1 = 0;
  let c2 = 0;
  for (let column = 0; column < depth.length; column++) {
    const d = depth[column];
    const q = d * d;
    const b = columnFirst[column];
    const c = columnSecond[column];
    a1 += d;
    a2 += q;
    b1 += b * d;
    b2 += b * q;
    c1 += c * d;
    c2 += c * q;
  }
  sums.fill(0);
  sums[0] = a1;
  sums[1] = a2;
  sums[FIRST] = b1;
  sums[FIRST + 1] = b2;
  sums[SECOND] = c1;
  sums[SECOND + 1] = c2;
}

/** The same with the powers 1 to 3 and without the second number of a column, for the sides of vanes. */
function sumToCubes(face: Face, map: DepthMap, row: number, sums: RowSums): void {
  const { columnFirst } = face;
  const { columns } = map.grid;
  const depth = map.depth.subarray(row * columns, (row + 1) * columns);
  let a1 = 0;
  let a2 = 0;
  let a3 = 0;
  let b1 = 0;
  let b2 = 0;
  let b3 = 0;
  for (let column = 0; column < depth.length; column++) {
    const d = depth[column];
    const b = columnFirst[column] * d;
    const q = d * d;
    a1 += d;
    a2 += q;
    a3 += q * d;
    b1 += b;
    b2 += b * d;
    b3 += b * q;
  }
  sums.fill(0);
  sums[0] = a1;
  sums[1] = a2;
  sums[2] = a3;
  sums[FIRST] = b1;
  sums[FIRST + 1] = b2;
  sums[FIRST + 2] = b3;
}

/** The same with the powers 1 to 4, for curved faces. */
function sumToFourths(face: Face, map: DepthMap, row: number, sums: RowSums): void {
  const { columns } = map.grid;
  const depth = map.depth.subarray(row * columns, (row + 1) * columns);
  sums.fill(0);
  for (let column = 0; column < depth.length; column++) {
    const d = depth[column];
    if (d !== 0) addPowers(sums, face, column, d, d * d, d * d * d, d * d * d * d);
  }
}

/** A split cell is counted above at its mean; the powers of its samples are more than the powers of that. Writes into `total`. */
function addSpread(total: MetalSum, face: Face, map: DepthMap, power: number): void {
  const { columns } = map.grid;
  const sums: RowSums = new Float64Array(ROW_SUMS);
  for (let slot = 0; slot < map.slots; slot++) {
    const cell = map.cellOfSlot[slot];
    const mean = map.depth[cell];
    if (mean === 0) continue;
    let p2 = 0;
    let p3 = 0;
    let p4 = 0;
    for (let i = slot * SAMPLES; i < (slot + 1) * SAMPLES; i++) {
      const s = map.samples[i];
      const square = s * s;
      p2 += square;
      if (power > 2) {
        p3 += square * s;
        p4 += square * square;
      }
    }
    const square = mean * mean;
    // Split by an edge of the face, not of a mark: the samples are alike.
    if (p2 / SAMPLES - square < 1e-7 * square) continue;
    const row = Math.floor(cell / columns);
    const column = cell - row * columns;
    const law = face.metal(row);
    if (law === null) continue;
    sums.fill(0);
    p3 = power > 2 ? p3 / SAMPLES - square * mean : 0;
    p4 = power > 2 ? p4 / SAMPLES - square * square : 0;
    addPowers(sums, face, column, 0, p2 / SAMPLES - square, p3, p4);
    addRow(total, law, sums);
  }
}

/** Cells that the face's edge cuts are counted above as if they were whole; takes off what is not there. Writes into `total`. */
function takeOffHoles(total: MetalSum, face: Face, map: DepthMap): void {
  const { cover, cutCells } = face;
  if (cover === null) return;
  const { columns } = map.grid;
  const sums: RowSums = new Float64Array(ROW_SUMS);
  for (const cell of cutCells) {
    if (map.depth[cell] === 0) continue;
    const missing = cover[cell] - 1;
    const d = map.depth[cell];
    const row = Math.floor(cell / columns);
    const law = face.metal(row);
    if (law === null) continue;
    const square = d * d;
    const column = cell - row * columns;
    sums.fill(0);
    addPowers(
      sums,
      face,
      column,
      missing * d,
      missing * square,
      missing * square * d,
      missing * square * square,
    );
    addRow(total, law, sums);
  }
}

/** Adds one damaged cell from depth `from` on, sample by sample where it is split. Writes into `sums`. */
function addCell(sums: RowSums, face: Face, map: DepthMap, cell: number, column: number, from: Mm): void {
  const slot = map.slot[cell];
  const first = slot < 0 ? cell : slot * SAMPLES;
  const count = slot < 0 ? 1 : SAMPLES;
  const depths = slot < 0 ? map.depth : map.samples;
  const w = (face.cover === null ? 1 : face.cover[cell]) / count;
  const from2 = from * from;
  let p1 = 0;
  let p2 = 0;
  let p3 = 0;
  let p4 = 0;
  for (let i = first; i < first + count; i++) {
    const d = depths[i];
    if (d <= from || d <= DAMAGE) continue;
    const square = d * d;
    p1 += d - from;
    p2 += square - from2;
    p3 += square * d - from2 * from;
    p4 += square * square - from2 * from2;
  }
  addPowers(sums, face, column, w * p1, w * p2, w * p3, w * p4);
}

function addPowers(
  sums: RowSums,
  face: Face,
  column: number,
  p1: number,
  p2: number,
  p3: number,
  p4: number,
): void {
  const b = face.columnFirst[column];
  const c = face.columnSecond[column];
  sums[0] += p1;
  sums[1] += p2;
  sums[2] += p3;
  sums[3] += p4;
  sums[FIRST] += b * p1;
  sums[FIRST + 1] += b * p2;
  sums[FIRST + 2] += b * p3;
  sums[FIRST + 3] += b * p4;
  sums[SECOND] += c * p1;
  sums[SECOND + 1] += c * p2;
  sums[SECOND + 2] += c * p3;
  sums[SECOND + 3] += c * p4;
}

/** Sum of several pieces of metal. */
export function added(pieces: readonly Metal[]): Metal {
  return pieces.reduce((sum, piece) => combined(sum, piece, 1), NO_METAL);
}

/** a + share x b. */
export function combined(a: Metal, b: Metal, share: number): Metal {
  return {
    volume: a.volume + share * b.volume,
    x: a.x + share * b.x,
    y: a.y + share * b.y,
    z: a.z + share * b.z,
    xz: a.xz + share * b.xz,
    yz: a.yz + share * b.yz,
  };
}
