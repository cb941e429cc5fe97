/** A pasted table as points of a test: each row is taken, or refused with a sentence that says why. */
import { parseQuantity } from '../../fields/parse-quantity.ts';
import { type Quantity, toFile, typedUnits, type Unit } from '../../fields/quantity-units.ts';
import { shortened, type Table, type TableRow } from '../../tools/read-table.ts';
import type { PointFile } from './test-edits.ts';

export interface TakenPoints {
  readonly taken: readonly { readonly row: number; readonly point: PointFile }[];
  /** `Row 7, head: "abc" is not a number. Type one like 3.5 m.` */
  readonly refused: readonly { readonly row: number; readonly sentence: string }[];
  /** Places of flow, head and power in the table, from 0, in words for the person. */
  readonly columns: string;
}

type Field = keyof PointFile;

const FIELDS: readonly Field[] = ['flow', 'head', 'power'];
const QUANTITIES: Readonly<Record<Field, Quantity>> = { flow: 'flow', head: 'head', power: 'kilowatts' };
const WORDS: Readonly<Record<Field, readonly string[]>> = {
  flow: ['flow', 'q', 'capacity', 'discharge', 'flowrate', 'rate'],
  head: ['head', 'h', 'lift'],
  power: ['power', 'p', 'kw', 'hp', 'bhp', 'load'],
};
const COUNTERS = ['no', 'nr', 'number', 'point', 'pt', 'id', '#', 'row'];

/** True for the words above a column of a test. */
export function isTestHeading(heading: string): boolean {
  const words = wordsOf(heading);
  return [...FIELDS.flatMap((field) => WORDS[field]), ...COUNTERS].some((word) => words.includes(word));
}

/**
 * Columns by their headings, else flow, head, power as they come. A unit in the heading, in the line below it or in a cell is
 * understood; a number without one is in m3/h, m or kW.
 * @param room  how many more points the run takes
 */
export function pastedPoints(table: Table, room: number): TakenPoints {
  const unitsRow = table.rows[0]?.cells.every((cell) => cell === '' || isUnit(cell))
    ? table.rows[0]
    : undefined;
  const places = placesOf(table);
  const units = FIELDS.map((field, i) => {
    const at = places[i];
    return at === null
      ? null
      : (unitIn(table.headings[at] ?? '', QUANTITIES[field]) ??
          unitIn(unitsRow?.cells[at] ?? table.unitsBelow[at] ?? '', QUANTITIES[field]));
  });
  const taken: { row: number; point: PointFile }[] = [];
  const refused: { row: number; sentence: string }[] = [];
  for (const row of table.rows) {
    if (row === unitsRow) continue;
    const read = readRow(row, places, units);
    if (typeof read === 'string') refused.push({ row: row.number, sentence: `Row ${row.number}, ${read}` });
    else if (taken.length >= room)
      refused.push({ row: row.number, sentence: `Row ${row.number}: a run holds no more points.` });
    else taken.push({ row: row.number, point: read });
  }
  const columns = FIELDS.map((field, i) => {
    const at = places[i];
    const symbol = units[i]?.symbol ?? typedUnits(QUANTITIES[field])[0].symbol;
    return at === null ? `no ${field}` : `${field} in column ${at + 1}, ${symbol}`;
  }).join('; ');
  return { taken, refused, columns };
}

function placesOf({ headings, columns }: Table): (number | null)[] {
  const found = FIELDS.map((field) => {
    const at = headings.findIndex((heading) => wordsOf(heading).some((word) => WORDS[field].includes(word)));
    return at < 0 ? null : at;
  });
  if (found.every((at) => at !== null) && new Set(found).size === FIELDS.length) return found;
  const open = Array.from({ length: columns }, (_, i) => i).filter(
    (i) => !wordsOf(headings[i] ?? '').some((word) => COUNTERS.includes(word)),
  );
  return FIELDS.map((_, i) => open[i] ?? null);
}

function readRow(
  { cells }: TableRow,
  places: readonly (number | null)[],
  units: readonly (Unit | null)[],
): PointFile | string {
  const values: number[] = [];
  for (const [i, field] of FIELDS.entries()) {
    const at = places[i];
    const cell = at === null ? '' : (cells[at] ?? '');
    if (cell === '') return `${field}: empty. It needs a number, like 3.5.`;
    const read = cellValue(cell, QUANTITIES[field], units[i]);
    if (typeof read === 'string') return `${field}: ${read}`;
    if (read < 0) return `${field}: "${shortened(cell)}" is less than 0.`;
    values.push(read);
  }
  const [flow, head, power] = values;
  return { flow, head, power };
}

function cellValue(cell: string, quantity: Quantity, unit: Unit | null): number | string {
  const isOwn = unit === null || /[a-z]/i.test(cell);
  const parsed = parseQuantity(cell, isOwn ? quantity : 'plain', 'mm');
  if ('fault' in parsed) return parsed.fault;
  // To twelve figures: far beyond any gauge, short of the dust of binary numbers.
  return isOwn ? parsed.value : Number(toFile(parsed.value, unit).toPrecision(12));
}

const isUnit = (cell: string): boolean =>
  FIELDS.some((field) => unitIn(cell, QUANTITIES[field]) !== null) && !/\d\s|^\d/.test(cell);

/** The unit a heading names, in brackets, behind a comma or alone: `Q (L/s)`, `head, ft`, `kW`. */
function unitIn(heading: string, quantity: Quantity): Unit | null {
  const spelt = heading
    .normalize('NFKC')
    .toLowerCase()
    .split(/[\s,;:|()[\]{}]+/)
    .filter((word) => word !== '');
  const units = typedUnits(quantity);
  return spelt.reduce<Unit | null>(
    (found, word) => units.find(({ spellings }) => spellings.includes(word)) ?? found,
    null,
  );
}

/** A slash stays: the h of m3/h is no head. */
function wordsOf(heading: string): readonly string[] {
  return heading
    .normalize('NFKC')
    .toLowerCase()
    .split(/[\s,_:;|()[\]{}.-]+/)
    .filter((word) => word !== '');
}
