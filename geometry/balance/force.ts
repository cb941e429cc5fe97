import type { Fraction, Gram, GramMm, Rpm } from '../units.ts';
import { angularSpeed } from './permissible.ts';

/** kg.m in a g.mm. */
const KG_M_PER_G_MM = 1e-6;
/** N/kg. Standard acceleration of gravity, ISO 80000-3. */
const GRAVITY = 9.80665;

/** How hard an unbalance pulls at the bearings, N: F = U w^2. Source: mechanics; tests/geometry/balance/force.test.ts. */
export function forceAt(unbalance: GramMm, speed: Rpm): number {
  return unbalance * angularSpeed(speed) ** 2 * KG_M_PER_G_MM;
}

/** A force, N, as a share of what the rotor weighs. */
export function shareOfWeight(force: number, mass: Gram): Fraction {
  return force / ((mass / 1000) * GRAVITY);
}
