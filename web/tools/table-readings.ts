/** The rows of a table as gauge readings: each is taken, or refused with a sentence that says why. */
import { checkMark } from '../../geometry/job/check-mark.ts';
import type { MarkFile, PartFile } from '../../geometry/job/job-file.ts';
import { MOST_READINGS, markSchema } from '../../geometry/job/mark-schema.ts';
import type { Mm } from '../../geometry/units.ts';
import { toDegrees } from '../../geometry/units.ts';
import type { ScreenUnits } from '../fields/quantity-units.ts';
import { shortened, type Table, type TableRow } from './read-table.ts';
import { type ReadingKind, readDepth } from './reading-depth.ts';
import { type ColumnChoice, columnUnit } from './table-columns.ts';
import { type ColumnUnit, cellNumber } from './table-units.ts';

/** First and second as the file spells them on its face, and the depth in mm. */
export type ReadingPoint = readonly [first: number, second: number, depth: Mm];
export type ReadingsMark = Extract<MarkFile, { readonly kind: 'readings' }>;

export interface TakeOptions {
  readonly part: PartFile;
  readonly face: string;
  /** The face's two numbers, in words and in kind. */
  readonly numbers: readonly [FaceColumn, FaceColumn];
  readonly columns: ColumnChoice;
  readonly kind: ReadingKind;
  /** Of numbers that say no unit. */
  readonly bare: ScreenUnits;
  /** The reading on sound metal where no column has it; null when it is not known. */
  readonly reference: Mm | null;
  /** The wall as new behind a place; null where it is no measure. */
  readonly wallAt: (first: number, second: number) => Mm | null;
  /** How many more readings the mark takes. */
  readonly room?: number;
}

interface FaceColumn {
  readonly label: string;
  readonly quantity: 'length' | 'angle';
}

export interface TakenRow {
  readonly row: number;
  readonly point: ReadingPoint;
}

export interface RefusedRow {
  readonly row: number;
  /** `Row 7, depth: "abc" is not a number. Type one like 3.5 mm.` */
  readonly sentence: string;
}

export interface TakenTable {
  readonly taken: readonly TakenRow[];
  readonly refused: readonly RefusedRow[];
}

/** Every row of the table, taken or refused. */
export function takeReadings(table: Table, options: TakeOptions): TakenTable {
  const grouped = groupedMarks(table, options);
  const units = unitsOf(table, options.columns);
  const taken: TakenRow[] = [];
  const refused: RefusedRow[] = [];
  for (const row of table.rows) {
    const read = readRow(row, options, units, grouped);
    if ('problem' in read) refused.push({ row: row.number, sentence: `Row ${row.number}, ${read.problem}` });
    else taken.push({ row: row.number, point: read.point });
  }
  return withinJob({ taken, refused }, options);
}

type RowRead = { readonly point: ReadingPoint } | { readonly problem: string };

interface Units {
  readonly first: ColumnUnit | null;
  readonly second: ColumnUnit | null;
  readonly value: ColumnUnit | null;
  readonly reference: ColumnUnit | null;
}

function unitsOf(table: Table, columns: ColumnChoice): Units {
  const of = (column: number | null) => (column === null ? null : columnUnit(table, column));
  return {
    first: of(columns.first),
    second: of(columns.second),
    value: of(columns.value),
    reference: of(columns.reference),
  };
}

function readRow({ cells }: TableRow, options: TakeOptions, units: Units, grouped: RegExp | null): RowRead {
  const { columns, numbers, kind, bare } = options;
  const isXY = columns.places === 'xy';
  const number = (which: keyof Units, label: string, quantity: 'length' | 'angle') => {
    const at = columns[which];
    if (at === null) return { problem: `${label}: no column is chosen for it.` };
    const cell = cells[at] ?? '';
    if (cell === '') return { problem: `${label}: empty. It needs a number, like 3.5.` };
    if (grouped?.test(cell)) {
      return { problem: `${label}: "${shortened(cell)}" may have a mark for thousands. Write it without.` };
    }
    const parsed = cellNumber(cell, quantity, units[which], bare);
    return 'fault' in parsed ? { problem: `${label}: ${parsed.fault}` } : parsed;
  };
  const first = number('first', isXY ? 'x' : numbers[0].label, isXY ? 'length' : numbers[0].quantity);
  if ('problem' in first) return first;
  const second = number('second', isXY ? 'y' : numbers[1].label, isXY ? 'length' : numbers[1].quantity);
  if ('problem' in second) return second;
  const value = number('value', VALUE_LABELS[kind], 'length');
  if ('problem' in value) return value;

  const place = isXY ? polar(first.value, second.value) : ([first.value, second.value] as const);
  const against = againstOf(kind, place, options, () =>
    number('reference', 'reading on sound metal', 'length'),
  );
  if ('problem' in against) return against;
  return { point: [...place, readDepth(kind, value.value, against.value)] };
}

const VALUE_LABELS: Readonly<Record<ReadingKind, string>> = {
  depth: 'depth',
  'two-readings': 'reading',
  'wall-left': 'wall left',
};

/** What the reading is held against, by its kind. */
function againstOf(
  kind: ReadingKind,
  [first, second]: readonly [number, number],
  { columns, reference, wallAt }: TakeOptions,
  inRow: () => { readonly value: Mm } | { readonly problem: string },
): { readonly value: Mm } | { readonly problem: string } {
  if (kind === 'depth') return { value: 0 };
  if (kind === 'two-readings') {
    if (columns.reference !== null) return inRow();
    return reference === null
      ? { problem: 'reading on sound metal: not known. Type it above, or choose its column.' }
      : { value: reference };
  }
  const wall = wallAt(first, second);
  return wall === null
    ? { problem: 'wall left: at this place the wall is no measure of the depth. Read the depth itself.' }
    : { value: wall };
}

/** x and y in plan as a radius and an angle in degrees, to a millionth. */
function polar(x: number, y: number): readonly [number, number] {
  const degrees = toDegrees(Math.atan2(y, x));
  return [millionth(Math.hypot(x, y)), millionth(degrees < 0 ? degrees + 360 : degrees) % 360];
}

const millionth = (value: number): number => Math.round(value * 1e6) / 1e6 + 0;

/**
 * What a number with a mark for thousands looks like in this table; null where there is no doubt. In a table whose decimals are
 * marked by dots, "1,234" may be a thousand and more; and the other way round.
 */
function groupedMarks({ rows }: Table, { columns }: TakeOptions): RegExp | null {
  const used = [columns.first, columns.second, columns.value, columns.reference].filter((at) => at !== null);
  let [dots, commas] = [false, false];
  for (const { cells } of rows) {
    for (const at of used) {
      const cell = cells[at] ?? '';
      if (THOUSANDS.test(cell)) continue;
      dots ||= /\d\.\d|^\.\d/.test(cell);
      commas ||= /\d,\d|^,\d/.test(cell);
    }
  }
  if (dots === commas) return null;
  return dots ? /^[-+\u2212]?[1-9]\d{0,2},\d{3}(?!\d)/ : /^[-+\u2212]?[1-9]\d{0,2}\.\d{3}(?!\d)/;
}

const THOUSANDS = /^[-+\u2212]?[1-9]\d{0,2}[.,]\d{3}(?!\d)/;

/** Refuses what the job would, in its words, and what would be more than a mark holds. */
function withinJob({ taken, refused }: TakenTable, options: TakeOptions): TakenTable {
  const { room = MOST_READINGS } = options;
  const problems = new Map<TakenRow, string>();
  if (
    pointFault(
      taken.map(({ point }) => point),
      options,
    ) !== null
  ) {
    for (const row of taken) {
      const fault = pointFault([row.point], options);
      if (fault !== null) problems.set(row, fault);
    }
  }
  for (const row of taken.filter((each) => !problems.has(each)).slice(room)) {
    problems.set(row, `a mark holds at most ${MOST_READINGS} readings. Leave this one out.`);
  }
  if (problems.size === 0) return { taken, refused };
  const added = [...problems].map(([{ row }, problem]) => ({ row, sentence: `Row ${row}, ${problem}` }));
  return {
    taken: taken.filter((row) => !problems.has(row)),
    refused: [...refused, ...added].sort((a, b) => a.row - b.row),
  };
}

/** The first thing the job has against readings on a face; null when it takes them. */
function pointFault(points: readonly ReadingPoint[], { part, face, numbers }: TakeOptions): string | null {
  const names = [numbers[0].label, numbers[1].label, 'depth'];
  if (points.length === 0) return null;
  const mark = { kind: 'readings', face, points };
  // More than a mark holds is told row by row.
  const read = markSchema.safeParse(
    points.length > MOST_READINGS ? { ...mark, points: points.slice(0, MOST_READINGS) } : mark,
  );
  if (!read.success) {
    const { path, message } = read.error.issues[0];
    return faultWords(points, names, [path[1], path[2]], message);
  }
  const fault = checkMark(read.data, part, 'mark').find(({ field }) => field.startsWith('mark.points'));
  if (fault === undefined) return null;
  const [, i, which] = /\[(\d+)\]\[(\d+)\]/.exec(fault.field) ?? [];
  return faultWords(points, names, [Number(i), Number(which)], fault.needs);
}

function faultWords(
  points: readonly ReadingPoint[],
  names: readonly string[],
  [i, which]: readonly unknown[],
  needs: string,
): string {
  const point = typeof i === 'number' ? points[i] : undefined;
  if (point === undefined || (which !== 0 && which !== 1 && which !== 2)) return `it should be ${needs}.`;
  return `${names[which]}: ${point[which]} is not ${needs}.`;
}
