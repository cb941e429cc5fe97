import type { Face, Polynomial, RowMetal, Terms } from '../part/face.ts';
import type { Metal, MetalSum } from '../part/metal.ts';
import type { Mm, Mm3 } from '../units.ts';

/** Sums over the cells of a row of d, d^2, d^3, d^4: plain, times columnFirst, times columnSecond; 4 numbers each. */
export type RowSums = Float64Array;

export const ROW_SUMS = 12;
export const FIRST = 4;
export const SECOND = 8;

/** Adds a row's metal to `total`: its polynomials applied to the row's power sums. Writes into `total`. */
export function addRow(total: MetalSum, metal: RowMetal, sums: RowSums): void {
  total.volume += moment(metal.volume, sums);
  total.x += moment(metal.x, sums);
  total.y += moment(metal.y, sums);
  total.z += moment(metal.z, sums);
  total.xz += moment(metal.xz, sums);
  total.yz += moment(metal.yz, sums);
}

/** True when some of a row's polynomials go with the second number of a column. */
export function usesSecond(metal: RowMetal): boolean {
  return [metal.volume, metal.x, metal.y, metal.z, metal.xz, metal.yz].some(({ second }) => second !== null);
}

/** The highest power of depth a row's polynomials use, 1..4. */
export function highestPower(metal: RowMetal): number {
  let most = 1;
  const look = (p: Polynomial | null): void => {
    if (p === null) return;
    for (let k = 4; k > most; k--) if (p[k - 1] !== 0) most = k;
  };
  for (const terms of [metal.volume, metal.x, metal.y, metal.z, metal.xz, metal.yz]) {
    look(terms.plain);
    look(terms.first);
    look(terms.second);
  }
  return most;
}

function moment(terms: Terms, sums: RowSums): number {
  let value = 0;
  if (terms.plain !== null) value += applied(terms.plain, sums, 0);
  if (terms.first !== null) value += applied(terms.first, sums, FIRST);
  if (terms.second !== null) value += applied(terms.second, sums, SECOND);
  return value;
}

function applied(p: Polynomial, sums: RowSums, from: number): number {
  return p[0] * sums[from] + p[1] * sums[from + 1] + p[2] * sums[from + 2] + p[3] * sums[from + 3];
}

/** Value of a polynomial without constant term at depth d. */
function upTo(p: Polynomial, d: Mm): number {
  return d * (p[0] + d * (p[1] + d * (p[2] + d * p[3])));
}

/** What lies between two depths; nothing when `to` is not below `from`. */
function between(p: Polynomial, from: Mm, to: Mm): number {
  return to <= from ? 0 : upTo(p, to) - upTo(p, from);
}

/** Metal of a whole cell between two depths, as if it were all like (u, v). */
export function metalBetween(
  face: Face,
  row: number,
  column: number,
  u: number,
  v: number,
  from: Mm,
  to: Mm,
): Metal {
  const law = face.metal(row);
  if (law === null) return face.metalAt(u, v, from, to);
  const first = face.columnFirst[column];
  const second = face.columnSecond[column];
  const amount = (terms: Terms): number => termsBetween(terms, first, second, from, to);
  return {
    volume: amount(law.volume),
    x: amount(law.x),
    y: amount(law.y),
    z: amount(law.z),
    xz: amount(law.xz),
    yz: amount(law.yz),
  };
}

/** Volume alone of a whole cell between two depths, mm3. */
export function volumeBetween(
  face: Face,
  row: number,
  column: number,
  u: number,
  v: number,
  from: Mm,
  to: Mm,
): Mm3 {
  if (to <= from) return 0;
  const law = face.metal(row);
  if (law === null) return face.metalAt(u, v, from, to).volume;
  return termsBetween(law.volume, face.columnFirst[column], face.columnSecond[column], from, to);
}

function termsBetween(terms: Terms, first: number, second: number, from: Mm, to: Mm): number {
  let value = 0;
  if (terms.plain !== null) value += between(terms.plain, from, to);
  if (terms.first !== null) value += first * between(terms.first, from, to);
  if (terms.second !== null) value += second * between(terms.second, from, to);
  return value;
}
