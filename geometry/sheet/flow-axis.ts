/** A scale of round numbers. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

/** It begins at nought when the least value is no more than this share of the greatest: little is lost, and heights compare. */
const FROM_NOUGHT = 0.25;

/** No scale is narrower than this share of its greatest value: gauges are off by more than a step of it. */
const NARROWEST = 0.1;

/**
 * The scale that holds all values between round numbers.
 * @param values  finite, at least one
 * @param most    how many steps at most
 */
export function roundAxis(values: readonly number[], most: number): Axis {
  const highest = values.reduce((high, value) => Math.max(high, value), Number.NEGATIVE_INFINITY);
  const lowest = values.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY);
  const isFromNought = lowest >= 0 && lowest <= FROM_NOUGHT * highest;
  // Values that are all alike still need a scale, and stand in the middle of it.
  const span = Math.max(highest - (isFromNought ? 0 : lowest), NARROWEST * Math.abs(highest), 1e-6);
  const aside = isFromNought ? 0 : (span - (highest - lowest)) / 2;
  const step = roundStep(span / most);
  const first = isFromNought ? 0 : Math.floor((lowest - aside) / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil((highest + aside) / step - 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => tidy((first + i) * step));
  return { from: ticks[0], to: ticks[ticks.length - 1], ticks };
}

/** The smallest of 1, 2, 5 times a power of ten that is not below `least`. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return (([1, 2, 5] as const).find((factor) => factor * power >= least * (1 - 1e-9)) ?? 10) * power;
}

const tidy = (value: number): number => Number(value.toPrecision(12));
