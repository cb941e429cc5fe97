/** Units as the headings of a table spell them. */
import { parseQuantity } from '../fields/parse-quantity.ts';
import { type ScreenUnits, typedUnits } from '../fields/quantity-units.ts';

/** The unit of a whole column: a number in it times `times` is what the file has. */
export interface ColumnUnit {
  readonly quantity: 'length' | 'angle';
  readonly times: number;
}

/** What headings hold and nobody types into a field. */
const MORE: Readonly<Record<string, ColumnUnit>> = {
  um: { quantity: 'length', times: 0.001 },
  micron: { quantity: 'length', times: 0.001 },
  microns: { quantity: 'length', times: 0.001 },
  ft: { quantity: 'length', times: 304.8 },
  feet: { quantity: 'length', times: 304.8 },
  rad: { quantity: 'angle', times: 180 / Math.PI },
  radian: { quantity: 'angle', times: 180 / Math.PI },
  radians: { quantity: 'angle', times: 180 / Math.PI },
  gon: { quantity: 'angle', times: 0.9 },
};

/** The unit a word is, alone or in brackets; null for a word that is none. */
export function unitOf(word: string): ColumnUnit | null {
  const spelling = word
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[[\](){}\s.]/g, '')
    .replaceAll('\u03bc', 'u')
    .replace(/[\u201c-\u201f\u2033]|''/g, '"');
  if (spelling === '') return null;
  for (const quantity of ['length', 'angle'] as const) {
    const unit = typedUnits(quantity).find(({ spellings }) => spellings.includes(spelling));
    if (unit !== undefined) return { quantity, times: unit.times / unit.over };
  }
  return Object.hasOwn(MORE, spelling) ? MORE[spelling] : null;
}

/** The unit in a heading: `depth (mm)`, `r [in]`, `angle, deg`, `depth_mm`; null where it has none. */
export function unitInHeading(heading: string): ColumnUnit | null {
  const words = heading.split(/[\s,/_:;|()[\]{}]+/).filter((word) => word !== '');
  // A heading that is only a letter is a name: `m` of a table of masses is no length.
  return words.length < 2
    ? null
    : words.slice(1).reduce<ColumnUnit | null>((found, word) => unitOf(word) ?? found, null);
}

/**
 * A cell as a number in the file's unit. A unit in the cell wins over the column's, the column's over the one chosen for bare numbers.
 * @returns the value, or a sentence that says what to put there
 */
export function cellNumber(
  cell: string,
  quantity: 'length' | 'angle',
  column: ColumnUnit | null,
  bare: ScreenUnits,
): ReturnType<typeof parseQuantity> {
  const isOwn = column === null || column.quantity !== quantity || /[a-z°"'\u2032\u2033\u03bc]/i.test(cell);
  if (isOwn) return parseQuantity(cell, quantity, bare);
  if (quantity === 'length' && (column.times === 1 || column.times === 25.4)) {
    return parseQuantity(cell, quantity, column.times === 1 ? 'mm' : 'in');
  }
  const parsed = parseQuantity(cell, 'plain', bare);
  // To twelve figures: far beyond any gauge, short of the dust of binary numbers.
  return 'fault' in parsed ? parsed : { value: Number((parsed.value * column.times).toPrecision(12)) };
}
