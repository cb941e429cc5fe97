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

/** `0.12 to 0.45 mm`; one figure where both come to it. */
export function spreadWords(
  { least, most }: { readonly least: number; readonly most: number },
  units: ScreenUnits,
): string {
  const from = gapFigure(least, units);
  return from === gapFigure(most, units) ? gapWords(most, units) : `${from} to ${gapWords(most, units)}`;
}

/** The engine's words, which are in mm, with their lengths as the screen shows them. */
export function inUnits(words: string, units: ScreenUnits): string {
  if (units === 'mm') return words;
  return words
    .replace(PLACE, (_, name: string, length: string) => `${name} ${(Number(length) / 25.4).toFixed(1)} in`)
    .replace(/(\d+(?:\.\d+)?) mm\b/g, (_, length: string) => gapWords(Number(length), units));
}

/** Where something is, to the mm: `along 166 mm`, as against how thick or how wide it is. */
const PLACE = /\b(along|across|height|radius|below) (-?\d+) mm\b/g;
