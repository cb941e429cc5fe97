import { type Gram, type GramMm, type Mm, type Rpm, TURN } from '../units.ts';

export interface Permissible {
  readonly unbalance: GramMm;
  /** By how much the mass centre may stand off the shaft, mm. */
  readonly eccentricity: Mm;
}

/**
 * The residual unbalance a balance grade permits: e = G / w, U = e m, with w = 2 pi n / 60.
 * @param grade  mm/s, as in "G 6.3"
 * @param mass   of the whole rotor, g
 * Source: ISO 21940-11:2016, 6.3.3; tests/geometry/balance/permissible.test.ts.
 */
export function permissible(grade: number, speed: Rpm, mass: Gram): Permissible {
  const eccentricity = grade / angularSpeed(speed);
  return { unbalance: eccentricity * mass, eccentricity };
}

/** rad/s. */
export function angularSpeed(speed: Rpm): number {
  return (TURN * speed) / 60;
}

/** Neither plane takes less than this of the whole, nor more than the other two: between the planes, and overhung. */
const LEAST_SHARE = 0.3;
const MOST_BETWEEN = 0.7;
const MOST_OVERHUNG = 1.3;

/**
 * The permissible unbalance shared out to two planes, by moments about the mass centre and kept within the limits.
 * @param planeA, planeB, massCentre  z, mm; the planes apart
 * Source: ISO 21940-11:2016, 7.2.2 between the planes, 7.2.3 overhung (limits from memory); lever rule derived.
 */
export function sharedPermissible(
  whole: GramMm,
  { planeA, planeB, massCentre }: { readonly planeA: Mm; readonly planeB: Mm; readonly massCentre: Mm },
): readonly [a: GramMm, b: GramMm] {
  const spacing = Math.abs(planeB - planeA);
  const [toA, toB] = [Math.abs(massCentre - planeA), Math.abs(massCentre - planeB)];
  const overhung = Math.max(toA, toB) > spacing;
  const most = whole * (overhung ? MOST_OVERHUNG : MOST_BETWEEN);
  const kept = (share: GramMm): GramMm => Math.min(most, Math.max(whole * LEAST_SHARE, share));
  return [kept((whole * toB) / spacing), kept((whole * toA) / spacing)];
}
