import { type Quantity, type ScreenUnits, shownUnit, toShown } from './quantity-units.ts';

/**
 * A value as it stands on the screen, without its unit (`shownUnit` has the symbol). Always a dot and never a mark for thousands,
 * whatever the machine's language, so that what is shown can be typed.
 * @param value  in the file's unit, finite
 * @param as     `figure`: rounded to the gauge's resolution with all its decimals, so that columns line up;
 *               `typed`: as a field shows it, a digit finer and without trailing zeros
 * Accuracy: parseQuantity of the text gives the value back within half a resolution (half a unit in the last decimal when `typed`).
 */
export function formatQuantity(
  value: number,
  quantity: Quantity,
  units: ScreenUnits,
  { as = 'figure' }: { readonly as?: 'figure' | 'typed' } = {},
): string {
  if (!Number.isFinite(value))
    throw new RangeError(`formatQuantity needs a finite ${quantity}, got ${value}`);
  const unit = shownUnit(quantity, units);
  const shown = toShown(value, unit);
  if (as === 'figure') return fixed(shown, unit.resolution, unit.digits);
  const text = fixed(shown, 10 ** -unit.fieldDigits, unit.fieldDigits);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Half away from zero; the small excess makes 3.175 round as written although no binary number is exactly 3.175. */
function fixed(value: number, resolution: number, digits: number): string {
  const steps = Math.floor((Math.abs(value) / resolution) * (1 + 4 * Number.EPSILON) + 0.5);
  const size = (steps * resolution).toFixed(digits);
  return value < 0 && steps > 0 ? `-${size}` : size;
}
