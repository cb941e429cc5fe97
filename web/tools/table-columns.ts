/** Which column of a table holds what: by the words of its headings, else by position. */

import type { Table } from './read-table.ts';
import type { ReadingKind } from './reading-depth.ts';
import { type ColumnUnit, unitInHeading, unitOf } from './table-units.ts';

/** What the two numbers of a face are called: `radius`, `angle`; and whether places on it may come as x and y too. */
export interface FaceColumns {
  readonly labels: readonly [string, string];
  readonly isRound: boolean;
}

/** Places of the columns, from 0; null for one that nobody has pointed out. */
export interface ColumnChoice {
  /** `xy`: x and y in plan, to be turned into radius and angle. */
  readonly places: 'own' | 'xy';
  readonly first: number | null;
  readonly second: number | null;
  readonly value: number | null;
  /** Readings on sound metal, one a row. */
  readonly reference: number | null;
}

/** What the headings say was read; null where they do not. */
export interface HeadingWords {
  readonly choice: ColumnChoice;
  readonly kind: ReadingKind | null;
}

export function columnsOf(table: Table, face: FaceColumns): HeadingWords {
  const { headings } = table;
  const find = (words: readonly string[], taken: readonly (number | null)[] = []) => {
    const at = headings.findIndex((heading, i) => !taken.includes(i) && says(heading, words));
    return at < 0 ? null : at;
  };
  const reference = find(REFERENCE);
  const wall = find(WALL, [reference]);
  const depth = find(DEPTH, [reference, wall]);
  const reading = find(READING, [reference, wall, depth]);
  const value = wall ?? depth ?? reading;
  const taken = [reference, value];
  const first = find(wordsOf(face.labels[0]), taken);
  const second = find(wordsOf(face.labels[1]), [...taken, first]);
  const kind = kindOf({ reference, wall, depth });
  if (face.isRound && (first === null || second === null)) {
    const x = find(['x'], taken);
    const y = find(['y'], taken);
    if (x !== null && y !== null) {
      return { choice: { places: 'xy', first: x, second: y, value, reference }, kind };
    }
  }
  if (first !== null || second !== null || value !== null) {
    return { choice: { places: 'own', first, second, value, reference }, kind };
  }
  return { choice: byPosition(table), kind };
}

/** True for words that tell a line of headings from a line of anything else. */
export function isColumnHeading(heading: string): boolean {
  const words = [
    ...REFERENCE,
    ...WALL,
    ...DEPTH,
    ...READING,
    ...COUNTERS,
    ...Object.values(COORDINATES).flat(),
  ];
  return says(heading, words);
}

/** The unit of a column, from its heading or from the line below it. */
export function columnUnit({ headings, unitsBelow }: Table, column: number): ColumnUnit | null {
  return unitInHeading(headings[column] ?? '') ?? unitOf(unitsBelow[column] ?? '');
}

const REFERENCE = ['reference', 'ref', 'datum', 'sound', 'zero'];
const WALL = ['thickness', 'wall', 'remaining', 'left', 'ut', 'thk'];
const DEPTH = ['depth', 'd', 'wear', 'loss', 'deep', 'worn'];
const READING = ['reading', 'readings', 'gauge', 'gage', 'read', 'measured'];
const COUNTERS = ['no', 'nr', 'n°', 'number', 'point', 'pt', 'id', '#', 'row'];

const COORDINATES: Readonly<Record<string, readonly string[]>> = {
  radius: ['radius', 'r', 'radial'],
  angle: ['angle', 'theta', 'θ', 'phi', 'φ', 'ang', 'degrees', 'deg', 'azimuth'],
  'below the face': ['below', 'z', 'down'],
  x: ['x'],
  y: ['y'],
  along: ['along', 's', 'length', 'station'],
  height: ['height', 'h', 'z'],
  across: ['across', 'n', 'width'],
};

const wordsOf = (label: string): readonly string[] => COORDINATES[label] ?? [label];

function says(heading: string, words: readonly string[]): boolean {
  return heading
    .normalize('NFKC')
    .toLowerCase()
    .split(/[\s,/_:;|()[\]{}.-]+/)
    .some((word) => words.includes(word));
}

function kindOf({
  reference,
  wall,
  depth,
}: {
  readonly reference: number | null;
  readonly wall: number | null;
  readonly depth: number | null;
}): ReadingKind | null {
  if (wall !== null) return 'wall-left';
  if (reference !== null) return 'two-readings';
  return depth === null ? null : 'depth';
}

/** First, second, depth as they come, past a column that only counts the rows. */
function byPosition({ headings, columns }: Table): ColumnChoice {
  const open = Array.from({ length: columns }, (_, i) => i).filter((i) => !says(headings[i] ?? '', COUNTERS));
  const [first = null, second = null, value = null] = open;
  return { places: 'own', first, second, value, reference: null };
}
