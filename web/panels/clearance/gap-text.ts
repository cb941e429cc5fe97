import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../../fields/quantity-units.ts';

export const VERDICTS: Readonly<Record<ClearanceResult['verdict'], string>> = {
  fit: 'It runs free',
  tight: 'Too tight',
  wide: 'Too wide',
  both: 'Too tight and too wide',
};

/** A gap without its unit; below 0 the parts meet. */
export function gapFigure(gap: number, units: ScreenUnits): string {
  return formatQuantity(gap, 'length', units).replace('-', '−');
}

export function gapWords(gap: number, units: ScreenUnits): string {
  return `${gapFigure(gap, units)} ${shownUnit('length', units).symbol}`;
}

/** `0.12 to 0.45 mm`. */
export function spreadWords(
  { least, most }: { readonly least: number; readonly most: number },
  units: ScreenUnits,
): string {
  return `${gapFigure(least, units)} to ${gapWords(most, units)}`;
}

/** The engine's words, which are in mm, with their lengths as the screen shows them. */
export function inUnits(words: string, units: ScreenUnits): string {
  return words.replace(/(\d+\.\d+) mm/g, (_, length: string) => gapWords(Number(length), units));
}
