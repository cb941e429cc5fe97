/**
 * What parts the columns of a pasted table. A comma may part columns or mark decimals; where the text does not tell which, nobody
 * guesses: "1,25,3,5" is two readings or four whole numbers.
 */
export type Separator = '\t' | ';' | '|' | ',' | ', ' | ' ';

/** What the commas of a table are, where the person has said so. */
export type Commas = 'columns' | 'decimals';

/** The row that can be read in two ways. */
export interface Ambiguous {
  readonly row: number;
  readonly text: string;
}

/** Lines with something in them that are looked at; a table does not change its ways further down. */
const LOOKED_AT = 400;

/** @param lines  of the text, as they stand */
export function separatorOf(lines: readonly string[], commas?: Commas): Separator | Ambiguous {
  const looked = lines
    .flatMap((line, i) => (line.trim() === '' ? [] : [{ row: i + 1, text: line }]))
    .slice(0, LOOKED_AT);
  const bare = looked.map(({ text }) => withoutQuoted(text));
  for (const mark of ['\t', ';', '|'] as const) if (bare.some((line) => line.includes(mark))) return mark;
  if (!bare.some((line) => line.includes(',')))
    return bare.some((line) => /\S\s+\S/.test(line.trim())) ? blankOrNone(bare) : ',';

  const data = bare.filter((line) => /^\s*[-+\u2212.]?[\d"\uE000]/.test(line));
  const isSpaced = data.some((line) => /,\s/.test(line));
  const isTight = data.some((line) => /\d,\d/.test(line));
  if (commas === 'columns') return ',';
  if (commas === 'decimals') return isSpaced ? ', ' : ' ';
  // A comma in quotes is a decimal mark, so those outside part the columns; as they do where a dot marks decimals.
  const hasQuoted = looked.some(({ text }) => /"[^"]*\d,\d[^"]*"/.test(text));
  if (hasQuoted || data.some((line) => /\d\.\d|\.\d|\d\.,/.test(line))) return ',';
  if (isSpaced && isTight) return ', ';
  if (!isTight) return ',';
  if (data.every((line) => BLANKS_PART.test(line.trim()))) return ' ';
  return partedByCommas(bare, data) ? ',' : ambiguous(looked, bare, data);
}

/** Numbers apart by blanks alone: `110,5 20 3,2`. */
const BLANKS_PART = /^[^\s,]+(?:,\d+)?(?:\s+[^\s,]+(?:,\d+)?)+$/;

/** A table of words and numbers without any mark: apart by blanks where each line with numbers has several of them. */
function blankOrNone(bare: readonly string[]): Separator {
  return bare.some((line) => /\d\s+[-+\u2212.]?\d/.test(line)) ? ' ' : ',';
}

/** Whole numbers apart by commas: as many as there are headings, or the three that make a reading. */
function partedByCommas(bare: readonly string[], data: readonly string[]): boolean {
  const counts = data.map((line) => line.split(',').length);
  const [heading] = bare;
  const headings = data.includes(heading) ? 0 : heading.split(',').length;
  if (headings > 2) return counts.every((count) => count === headings);
  return counts.every((count) => count <= 3);
}

function ambiguous(
  looked: readonly Ambiguous[],
  bare: readonly string[],
  data: readonly string[],
): Ambiguous {
  const tight = data.find((line) => line.split(',').length > 3) ?? data[0];
  return looked[bare.indexOf(tight)];
}

/** What stands in quotes is a cell of its own and says nothing about what parts the cells. */
function withoutQuoted(line: string): string {
  return line.replace(/(^|[\t;,|])(\s*)"(?:[^"]|"")*"(?=\s*(?:[\t;,|]|$))/g, '$1$2\uE000');
}
