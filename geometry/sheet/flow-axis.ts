/** A scale of round numbers. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

/** It begins at nought when the least value is no more than this share of the greatest: little is lost, and heights compare. */
const FROM_NOUGHT = 0.25;

/**
 * The scale that holds all values between round numbers.
 * @param values  finite, at least one
 * @param most    how many steps at most
 */
export function roundAxis(values: readonly number[], most: number): Axis {
  const highest = values.reduce((high, value) => Math.max(high, value), Number.NEGATIVE_INFINITY);
  const lowest = values.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY);
  const start = lowest >= 0 && lowest <= FROM_NOUGHT * highest ? 0 : lowest;
  // No gauge shows less; and values that are all alike still need a scale.
  const span = Math.max(highest - start, 1e-6 * Math.abs(highest), 1e-6);
  const step = roundStep(span / most);
  const first = Math.floor(start / step + 1e-9);
  const last = Math.max(first + 1, Math.ceil(highest / step - 1e-9));
  const ticks = Array.from({ length: last - first + 1 }, (_, i) => tidy((first + i) * step));
  return { from: ticks[0], to: ticks[ticks.length - 1], ticks };
}

/** The smallest of 1, 2, 5 times a power of ten that is not below `least`. */
export function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return (([1, 2, 5] as const).find((factor) => factor * power >= least * (1 - 1e-9)) ?? 10) * power;
}

const tidy = (value: number): number => Number(value.toPrecision(12));
