import { describe, expect, test } from 'vitest';
import { isTestHeading, pastedPoints } from '../../../../web/panels/test/pasted-points.ts';
import { readTable } from '../../../../web/tools/read-table.ts';

function paste(text: string, room = 1000) {
  const read = readTable(text, isTestHeading);
  if ('problem' in read) throw new Error(read.problem);
  return pastedPoints(read.table, room);
}
const points = (text: string) => paste(text).taken.map(({ point }) => [point.flow, point.head, point.power]);
const TWO = [
  [60.5, 14.1, 4.6],
  [90, 12.5, 5.2],
];

describe('whatever parts the columns', () => {
  test.each([
    ['tabs', '60.5\t14.1\t4.6\n90\t12.5\t5.2'],
    ['semicolons and decimal commas', '60,5;14,1;4,6\n90;12,5;5,2'],
    ['commas', '60.5,14.1,4.6\n90,12.5,5.2'],
    ['blanks and decimal commas', '60,5 14,1 4,6\n90 12,5 5,2'],
    ['tabs and decimal commas', '60,5\t14,1\t4,6\r\n90\t12,5\t5,2\r\n'],
    ['a heading', 'flow,head,power\n60.5,14.1,4.6\n90,12.5,5.2'],
    ['a heading in letters', 'Q\tH\tP\n60.5\t14.1\t4.6\n90\t12.5\t5.2'],
    ['units below the heading', 'Q\tH\tP\nm3/h\tm\tkW\n60.5\t14.1\t4.6\n90\t12.5\t5.2'],
    ['a column that counts', 'No\tFlow\tHead\tPower\n1\t60.5\t14.1\t4.6\n2\t90\t12.5\t5.2'],
    ['another order', 'Power (kW);Flow (m3/h);Head (m)\n4,6;60,5;14,1\n5,2;90;12,5'],
    ['another unit', 'Q (L/s)\tH\tP (W)\n16.8055555556\t14.1\t4600\n25\t12.5\t5200'],
    ['units in the cells', '60.5 m3/h\t14.1 m\t4.6 kW\n25 L/s\t12.5\t5.2'],
  ])('%s', (_, text) => {
    const found = points(text);
    expect(found).toHaveLength(2);
    for (const [i, row] of found.entries())
      for (const [k, value] of row.entries()) expect(value).toBeCloseTo(TWO[i][k], 6);
  });

  test('US units in the heading', () => {
    // 231 in3, 0.3048 m, 550 ft.lbf/s.
    const [[flow, head, power]] = points('flow gpm\thead ft\tpower hp\n400\t50\t10');
    expect(flow).toBeCloseTo(90.849882816, 9);
    expect(head).toBeCloseTo(15.24, 9);
    expect(power).toBeCloseTo(7.45699872, 9);
  });
});

describe('what is not taken is refused with a sentence', () => {
  test('every row is one or the other', () => {
    const { taken, refused } = paste('60\t14.1\t4.6\n70\tabc\t4.8\n80\t13\n90\t12.5\t-5\n100\t11\t5.4');
    expect(taken.map(({ row }) => row)).toEqual([1, 5]);
    expect(refused.map(({ sentence }) => sentence)).toEqual([
      'Row 2, head: "abc" is not a number. Type one like 3.5 m.',
      'Row 3, power: empty. It needs a number, like 3.5.',
      'Row 4, power: "-5" is less than 0.',
    ]);
  });

  test('no more than the run holds', () => {
    const { taken, refused } = paste('60\t14\t4\n70\t13\t5', 1);
    expect(taken).toHaveLength(1);
    expect(refused).toEqual([{ row: 2, sentence: 'Row 2: a run holds no more points.' }]);
  });

  test('says what it read as what', () => {
    expect(paste('Q (L/s)\tH\tP\n25\t12\t5').columns).toBe(
      'flow in column 1, L/s; head in column 2, m; power in column 3, kW',
    );
  });
});
