import { formatQuantity } from '../fields/format-quantity.ts';
import { parseQuantity } from '../fields/parse-quantity.ts';
import type { Quantity, ScreenUnits } from '../fields/quantity-units.ts';

type Point = readonly [number, number];

/** What the two numbers of a point are. */
export type PointKind = readonly [Quantity, Quantity];

/** Points as lines of two numbers, in the units of the screen. */
export function pointsText(points: readonly Point[], kind: PointKind, units: ScreenUnits): string {
  const show = (value: number, i: 0 | 1) => formatQuantity(value, kind[i], units, { as: 'typed' });
  return points.map(([first, second]) => `${show(first, 0)}  ${show(second, 1)}`).join('\n');
}

/**
 * Lines of two numbers, as typed or pasted from a sheet: apart by blanks, tabs, semicolons or a comma with a blank.
 * @returns the points in the file's units, or what is wrong with the first line that is none
 */
export function parsePoints(
  text: string,
  kind: PointKind,
  units: ScreenUnits,
): { readonly points: readonly Point[] } | { readonly problem: string } {
  const points: Point[] = [];
  for (const [i, line] of text.split(/\r?\n/).entries()) {
    const words = wordsOf(line);
    if (words.length === 0) continue;
    const values = words.flatMap((word, column) => {
      const parsed = parseQuantity(word, kind[column === 0 ? 0 : 1], units);
      return 'value' in parsed ? [parsed.value] : [];
    });
    if (words.length !== 2 || values.length !== 2) {
      return { problem: `line ${i + 1}, "${line.trim().slice(0, 40)}", is not two numbers` };
    }
    points.push([values[0], values[1]]);
  }
  return { points };
}

/** `10,20` alone is a pair; between other separators a comma is a decimal mark. */
function wordsOf(line: string): string[] {
  const words = line
    .trim()
    .split(/\s*[;\t]\s*|,?\s+/)
    .filter((word) => word !== '');
  return words.length === 1 ? words[0].split(',') : words;
}
