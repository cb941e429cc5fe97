import type { Moment, Polynomial, RowMetal } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { Metal } from './metal.ts';

/** A metal being added up. */
export type MetalSum = { -readonly [K in keyof Metal]: number };

/** Sums over the cells of a row of d, d^2, d^3, d^4: plain, times columnFirst, times columnSecond; 4 numbers each. */
export type RowSums = Float64Array;

export const ROW_SUMS = 12;
export const FIRST = 4;
export const SECOND = 8;

/** Adds a row's metal to `total`: its polynomials applied to the row's power sums. Writes into `total`. */
export function addRow(total: MetalSum, metal: RowMetal, sums: RowSums): void {
  total.volume += applied(metal.volume, sums, 0);
  total.x += moment(metal.x, sums);
  total.y += moment(metal.y, sums);
  total.z += moment(metal.z, sums);
  total.xz += moment(metal.xz, sums);
  total.yz += moment(metal.yz, sums);
}

/** The highest power of depth a row's polynomials use, 1..4. */
export function highestPower(metal: RowMetal): number {
  let most = 1;
  const look = (p: Polynomial | null): void => {
    if (p === null) return;
    for (let k = 4; k > most; k--) if (p[k - 1] !== 0) most = k;
  };
  look(metal.volume);
  for (const terms of [metal.x, metal.y, metal.z, metal.xz, metal.yz]) {
    look(terms.plain);
    look(terms.first);
    look(terms.second);
  }
  return most;
}

function moment(terms: Moment, sums: RowSums): number {
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
export function upTo(p: Polynomial, d: Mm): number {
  return d * (p[0] + d * (p[1] + d * (p[2] + d * p[3])));
}

/** What lies between two depths; nothing when `to` is not below `from`. */
export function between(p: Polynomial, from: Mm, to: Mm): number {
  return to <= from ? 0 : upTo(p, to) - upTo(p, from);
}
