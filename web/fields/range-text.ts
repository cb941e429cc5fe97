import { formatQuantity } from './format-quantity.ts';
import { type Quantity, type ScreenUnits, shownUnit, toFile, toShown } from './quantity-units.ts';

/** The least and the most a field takes, in the file's unit, both included. */
export interface Range {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

/** What a field takes, said before anything is wrong: "0 to 320 mm", "0 mm or more", "up to 320 mm", or the unit alone: "unit: mm". */
export function rangeText({ min, max }: Range, quantity: Quantity, units: ScreenUnits): string {
  const { symbol } = shownUnit(quantity, units);
  const show = (limit: number, end: 'min' | 'max') => limitText(limit, end, quantity, units);
  if (min !== undefined && max !== undefined) {
    const from = show(min, 'min');
    return `${symbol === '' ? from : from.slice(0, -symbol.length - 1)} to ${show(max, 'max')}`;
  }
  if (min !== undefined) return `${show(min, 'min')} or more`;
  if (max !== undefined) return `up to ${show(max, 'max')}`;
  return symbol === '' ? '' : `unit: ${symbol}`;
}

/**
 * One end of a range with its unit; in a unit other than the file's in four figures: 10000 mm is said as 393.7 in.
 * Rounded into the range, so that what is said is also taken.
 */
export function limitText(limit: number, end: 'min' | 'max', quantity: Quantity, units: ScreenUnits): string {
  const unit = shownUnit(quantity, units);
  const shown = toShown(limit, unit);
  const isExact = shown === 0 || unit.times === unit.over;
  const fourFigures = isExact ? -unit.fieldDigits : Math.floor(Math.log10(Math.abs(shown))) - 3;
  const step = 10 ** Math.max(fourFigures, -unit.fieldDigits);
  // A limit that is even on the screen must not be pushed a step inward by a rounding error.
  const steps = Number((shown / step).toPrecision(12));
  const round = (end === 'min' ? Math.ceil(steps) : Math.floor(steps)) * step;
  const text = formatQuantity(toFile(round, unit), quantity, units, { as: 'typed' });
  return unit.symbol === '' ? text : `${text} ${unit.symbol}`;
}
