/** A pasted or opened table as rows of cells: whatever a spreadsheet hands over. Numbers stay text. */
import Papa from 'papaparse';
import { type Commas, type Separator, separatorOf } from './table-separator.ts';
import { unitOf } from './table-units.ts';

export interface TableRow {
  /** In the sheet, from 1, blank lines counted. */
  readonly number: number;
  /** Trimmed; as many as the row has. */
  readonly cells: readonly string[];
}

export interface Table {
  /** The line of headings, where there is one. */
  readonly headings: readonly string[];
  /** Units on a line of their own below the headings. */
  readonly unitsBelow: readonly string[];
  /** Rows with something in them, without headings and units. */
  readonly rows: readonly TableRow[];
  /** Most cells of any row. */
  readonly columns: number;
}

export type TableRead =
  | { readonly table: Table }
  /** A sentence for the person. `askCommas`: it can be read once they say what the commas are. */
  | { readonly problem: string; readonly askCommas: boolean };

/** A mark holds 20 000 readings of a hundred letters at most; more would keep a screen waiting for nothing. */
export const LARGEST_TABLE = 4_000_000;

/**
 * @param isHeading  whether a cell's words are those of a heading that is known
 * @param commas     what the person said the commas are, where they were asked
 */
export function readTable(text: string, isHeading: (cell: string) => boolean, commas?: Commas): TableRead {
  if (text.length > LARGEST_TABLE) return tooLarge(text.length);
  const plain = text
    .replace(/^\uFEFF/, '')
    .replace(/\r\n?/g, '\n')
    .replaceAll('\u0000', '');
  if (plain.trim() === '') return { table: { headings: [], unitsBelow: [], rows: [], columns: 0 } };
  const separator = separatorOf(plain.split('\n'), commas);
  if (typeof separator === 'object') {
    const { row, text: found } = separator;
    return {
      problem: `Row ${row}, "${shortened(found)}": a comma may part the columns or mark the decimals. Say which it does.`,
      askCommas: true,
    };
  }
  return { table: withHeadings(cellsOf(plain, separator), isHeading) };
}

export function tooLarge(letters: number): { readonly problem: string; readonly askCommas: false } {
  return {
    problem: `This is ${(letters / 1e6).toFixed(1)} MB. Take at most ${LARGEST_TABLE / 1e6} MB, the columns of the readings alone.`,
    askCommas: false,
  };
}

/** A cell's text, short enough for a sentence. */
export function shortened(text: string): string {
  const line = text.trim().replace(/\s+/g, ' ');
  return line.length <= 40 ? line : `${line.slice(0, 39)}…`;
}

function cellsOf(text: string, separator: Separator): readonly TableRow[] {
  const parted =
    separator === ' '
      ? // Blanks in a row part one column from the next once.
        text.replace(/[^\S\n]+/g, '\t').replace(/^\t|\t$/gm, '')
      : // Blanks before a quote would make it a letter like any other.
        text.replace(/([,;|])[^\S\n\t]+"/g, '$1"');
  const delimiter = separator === ' ' ? '\t' : separator;
  const parse = (quoteChar: string) => Papa.parse<string[]>(parted, { delimiter, newline: '\n', quoteChar });
  const quoted = parse('"');
  // A quote that is never closed, an inch mark for one, would swallow the rows below it.
  const { data } = quoted.errors.some(({ type }) => type === 'Quotes') ? parse('\u0000') : quoted;
  return data.flatMap((cells, i) => {
    const trimmed = cells.map((cell) => cell.replace(/\s+/g, ' ').trim());
    return trimmed.some((cell) => cell !== '') ? [{ number: i + 1, cells: trimmed }] : [];
  });
}

/** Headings stand among the first rows; what stands above them is no reading. */
const LOOKED_AT = 10;

function withHeadings(found: readonly TableRow[], isHeading: (cell: string) => boolean): Table {
  const known = found
    .slice(0, LOOKED_AT)
    .findIndex(({ cells }) => isWords(cells) && cells.filter(isHeading).length >= 2);
  const at = known >= 0 ? known : found.length > 0 && isWords(found[0].cells) ? 0 : -1;
  const below = at < 0 ? undefined : found[at + 1]?.cells;
  const unitsBelow = below?.some((cell) => cell !== '') && below.every(isUnit) ? below : [];
  const rows = found.filter((_, i) => i !== at && !(unitsBelow.length > 0 && i === at + 1));
  return {
    headings: at < 0 ? [] : found[at].cells,
    unitsBelow,
    rows,
    columns: found.reduce((most, { cells }) => Math.max(most, cells.length), 0),
  };
}

/** No cell begins like a number. */
function isWords(cells: readonly string[]): boolean {
  return (
    cells.every((cell) => !/^["'(]*[-+\u2212]?[.,]?\d/.test(cell)) && cells.some((cell) => cell.length < 60)
  );
}

const isUnit = (cell: string): boolean => cell === '' || unitOf(cell) !== null;
