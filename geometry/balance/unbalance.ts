import type { Metal } from '../part/metal.ts';
import type { Density, Mm } from '../units.ts';
import { sumOf, type Vector, vectorOf } from './vector.ts';
import { type Weighed, weighed, weighedTogether } from './weighed.ts';

/** What the repair put on and what is missing, with the densities of each. */
export interface Carried {
  /** Filled with putty, lost as metal, left to the coat: mm3, mm4, mm5 in the part frame. */
  readonly filled: Metal;
  readonly lost: Metal;
  readonly left: Metal;
  readonly fillerDensity: Density;
  readonly metalDensity: Density;
  readonly coatDensity: Density;
  /** What the corrections taken so far put on or, negative, took off. */
  readonly corrections: readonly Weighed[];
  /** Residual before the repair, g.mm. Where along the shaft it sits is not known: it adds nothing to the couple. */
  readonly asFound: Vector;
  /** z of the plane the couple is taken about, mm. */
  readonly couplePlane: Mm;
}

export interface Unbalance {
  /** The heavy spot the filler alone makes. */
  readonly added: Vector;
  /** The lost metal alone, against the part as new: it points away from where metal is missing. */
  readonly missing: Vector;
  /** What the shaft feels before any correction: filler - lost metal + coat + residual as found. */
  readonly uncorrected: Vector;
  /** What the corrections taken do. */
  readonly corrections: Vector;
  /** What the shaft feels now. */
  readonly net: Vector;
  /** g.mm2, about `couplePlane`, of everything but the residual as found. */
  readonly couple: Vector;
}

/**
 * The unbalance of a repaired part that ran true as new. Exact for the metal handed in.
 * Source: geometry definitions, "Mass and balance"; tests/geometry/balance/unbalance.test.ts.
 */
export function unbalance(carried: Carried): Unbalance {
  const { asFound, couplePlane } = carried;
  const filler = weighed(carried.filled, carried.fillerDensity);
  const lost = weighed(carried.lost, -carried.metalDensity);
  const coat = weighed(carried.left, carried.coatDensity);
  const corrections = weighedTogether(carried.corrections);
  const repair = weighedTogether([filler, lost, coat]);
  const all = weighedTogether([repair, corrections]);
  return {
    added: vectorOf(filler.x, filler.y),
    missing: vectorOf(lost.x, lost.y),
    uncorrected: sumOf([vectorOf(repair.x, repair.y), asFound]),
    corrections: vectorOf(corrections.x, corrections.y),
    net: sumOf([vectorOf(all.x, all.y), asFound]),
    couple: vectorOf(all.xz - couplePlane * all.x, all.yz - couplePlane * all.y),
  };
}
