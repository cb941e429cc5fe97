import { type Quantity, type ScreenUnits, shownUnit, toFile, toShown } from './quantity-units.ts';
import type { Range } from './range-text.ts';

/**
 * The value some steps on, kept within its range. Steps are even in the unit of the screen.
 * @param value  in the file's unit, as are `step` and the range
 * @param steps  how many; negative goes down
 * @param step   the field's own; on a screen in inches the nearest 1, 2 or 5 to it
 */
export function stepQuantity(
  value: number,
  steps: number,
  quantity: Quantity,
  units: ScreenUnits,
  {
    step,
    min = Number.NEGATIVE_INFINITY,
    max = Number.POSITIVE_INFINITY,
  }: Range & { readonly step?: number | undefined } = {},
): number {
  const unit = shownUnit(quantity, units);
  const size =
    step === undefined ? unit.step : roundStep((step * unit.over) / unit.times, unit.times === unit.over);
  // Twelve digits: sums of tenths would otherwise read 0.30000000000000004.
  const next = Number((toShown(value, unit) + steps * size).toPrecision(12));
  return Math.min(max, Math.max(min, toFile(next, unit)));
}

function roundStep(size: number, isExact: boolean): number {
  if (isExact) return size;
  const tens = 10 ** Math.floor(Math.log10(size));
  const lead = size / tens;
  return Number(((lead < 1.5 ? 1 : lead < 3.5 ? 2 : lead < 7.5 ? 5 : 10) * tens).toPrecision(12));
}
