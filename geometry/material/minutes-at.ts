import type { Celsius, Minute } from '../units.ts';

/** kJ/(mol K), CODATA 2018. */
const GAS_CONSTANT = 8.314462618e-3;
const KELVIN_AT_ZERO = 273.15;

/**
 * How long something takes that a mix does as it cures (staying workable, firming up, hardening), at a temperature: minutes(at) exp[(Ea / R)(1 / T - 1 / T0)], kelvin. A mix that is warmer than its
 * data sheet assumes sets sooner.
 * @param quoted            minutes at the temperature the data sheet states them for
 * @param activationEnergy  kJ/mol; null uses the workshop rule instead, half the time for every 10 degC more
 * @param surface           degC; null = not known, the quoted minutes stand as they are
 * Accuracy: the law is exact, the energy is not: published epoxy-amine values run from 45 to 65 kJ/mol.
 * Source: Arrhenius; van 't Hoff's rule for the workshop form. tests/geometry/material/minutes-at.test.ts
 */
export function minutesAt(
  quoted: { readonly minutes: Minute; readonly at: Celsius },
  activationEnergy: number | null,
  surface: Celsius | null,
): Minute {
  if (surface === null) return quoted.minutes;
  if (activationEnergy === null) return quoted.minutes * 2 ** ((quoted.at - surface) / 10);
  const inverse = 1 / (surface + KELVIN_AT_ZERO) - 1 / (quoted.at + KELVIN_AT_ZERO);
  return quoted.minutes * Math.exp((activationEnergy / GAS_CONSTANT) * inverse);
}

/** The same for a span of time. */
export function windowAt(
  quoted: { readonly from: Minute; readonly to: Minute; readonly at: Celsius },
  activationEnergy: number | null,
  surface: Celsius | null,
): { readonly from: Minute; readonly to: Minute } {
  const { from, to, at } = quoted;
  return {
    from: minutesAt({ minutes: from, at }, activationEnergy, surface),
    to: minutesAt({ minutes: to, at }, activationEnergy, surface),
  };
}
