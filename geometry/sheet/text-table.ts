/**
 * A table for a terminal, two blanks in. A column whose head begins with `>` stands to the right, as numbers do; the last column
 * is broken between words so that the table stays `width` characters wide.
 */
export function textTable(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): string[] {
  const toRight = heads.map((head) => head.startsWith('>'));
  const table = [heads.map((head) => head.replace(/^>/, '')), ...rows];
  const widths = heads.slice(0, -1).map((_, i) => Math.max(...table.map((row) => row[i].length)));
  const lastFrom = widths.reduce((sum, column) => sum + column + 2, 2);
  const lastWidth = Math.max(...table.map((row) => row[widths.length].length));
  return table.flatMap((row) => {
    const cells = widths.map((column, i) => (toRight[i] ? row[i].padStart(column) : row[i].padEnd(column)));
    const last = row[widths.length];
    const placed = toRight[widths.length] ? last.padStart(lastWidth) : last;
    const [first, ...more] = wrapped(placed, Math.max(20, width - lastFrom), '');
    return [`  ${[...cells, first].join('  ')}`, ...more.map((line) => ' '.repeat(lastFrom) + line)].map(
      (line) => line.trimEnd(),
    );
  });
}

/**
 * Breaks a text between words into lines of at most `width` characters; a longer word stands alone. Blanks at the very start
 * stay, lines after the first begin with `indent`.
 */
export function wrapped(text: string, width: number, indent: string): string[] {
  const lines: string[] = [];
  const words = text.trim().split(/\s+/);
  let line = (/^ */.exec(text)?.[0] ?? '') + words[0];
  for (const word of words.slice(1)) {
    if (line.length + 1 + word.length <= width) line += ` ${word}`;
    else {
      lines.push(line);
      line = indent + word;
    }
  }
  return [...lines, line];
}
