import type { Mm } from '../../geometry/units.ts';
import { formatQuantity } from '../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit, toShown } from '../fields/quantity-units.ts';

/** A depth as it stands on a contour line or the scale: without its unit, in inches to the nearest thousandth. */
export function depthLabel(depth: Mm, units: ScreenUnits): string {
  if (units === 'mm') return formatQuantity(depth, 'length', units, { as: 'typed' });
  return toShown(depth, shownUnit('length', units)).toFixed(depth === 0 ? 0 : 3);
}
