import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textTable, wrapped } from '../../../geometry/sheet/text-table.ts';

describe('textTable', () => {
  it('lines numbers up on the right and words on the left, and breaks the last column', () => {
    const rows = [
      ['1', '142', 'one two three four five six'],
      ['12', '7.50', 'seven'],
    ];
    expect(textTable(['>no', '>mL', 'goes to'], rows, 31)).toEqual([
      '  no    mL  goes to',
      '   1   142  one two three four',
      '            five six',
      '  12  7.50  seven',
    ]);
  });
});

describe('wrapped', () => {
  it('keeps every word in order, and no line longer than the width but for a longer word', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 30 });
    fc.assert(
      fc.property(words, fc.integer({ min: 15, max: 60 }), (list, width) => {
        const lines = wrapped(`  ${list.join(' ')}`, width, '  ');
        expect(lines.join(' ').trim().split(/\s+/)).toEqual(list);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
      }),
    );
  });
});
