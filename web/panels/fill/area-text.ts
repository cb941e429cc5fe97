import { figure } from '../../../geometry/sheet/figure.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';

/** An area in the units of the screen: `38.2 cm²`. @param area  cm2 */
export function areaText(area: number, units: ScreenUnits): string {
  return units === 'in' ? `${figure(area / 2.54 ** 2)} in²` : `${figure(area)} cm²`;
}
