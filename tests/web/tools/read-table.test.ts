import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MOST_READINGS } from '../../../geometry/job/mark-schema.ts';
import { formatQuantity } from '../../../web/fields/format-quantity.ts';
import { LARGEST_TABLE, readTable, type Table } from '../../../web/tools/read-table.ts';
import type { ReadingKind } from '../../../web/tools/reading-depth.ts';
import { columnsOf, type FaceColumns, isColumnHeading } from '../../../web/tools/table-columns.ts';
import { type TakeOptions, takeReadings } from '../../../web/tools/table-readings.ts';
import type { Commas } from '../../../web/tools/table-separator.ts';
import { PLATES } from './plates.ts';

const ROUND: FaceColumns = { labels: ['radius', 'angle'], isRound: true };
const NUMBERS: TakeOptions['numbers'] = [
  { label: 'radius', quantity: 'length' },
  { label: 'angle', quantity: 'angle' },
];

interface Taking extends Partial<TakeOptions> {
  readonly commas?: Commas;
}

function tableOf(text: string, commas?: Commas): Table {
  const read = readTable(text, isColumnHeading, commas);
  if ('problem' in read) throw new Error(read.problem);
  return read.table;
}

/** What a person gets who pastes the text and takes it as it comes. */
function take(text: string, { commas, ...changed }: Taking = {}) {
  const table = tableOf(text, commas);
  const { choice, kind } = columnsOf(table, ROUND);
  const { taken, refused } = takeReadings(table, {
    part: PLATES.round,
    face: 'face',
    numbers: NUMBERS,
    columns: choice,
    kind: kind ?? 'depth',
    bare: 'mm',
    reference: null,
    wallAt: () => 16,
    ...changed,
  });
  return {
    points: taken.map(({ point }) => point),
    refused: refused.map(({ sentence }) => sentence),
    rows: table.rows.length,
  };
}

const THREE = [
  [60, 0, 0.5],
  [60.5, 90, 1.25],
  [70, 180.5, -0.05],
];

describe('a table is read as the spreadsheet meant it', () => {
  it.each<[string, string]>([
    ['tabs, dots', '60\t0\t0.5\n60.5\t90\t1.25\n70\t180.5\t-0.05'],
    ['tabs, decimal commas', '60\t0\t0,5\n60,5\t90\t1,25\n70\t180,5\t-0,05'],
    ['semicolons, decimal commas', '60;0;0,5\r\n60,5;90;1,25\r\n70;180,5;-0,05\r\n'],
    ['semicolons, dots, closing semicolons', '60;0;0.5;\n60.5;90;1.25;\n70;180.5;-0.05;\n;;;\n'],
    ['commas, dots', '60,0,0.5\n60.5,90,1.25\n70,180.5,-0.05'],
    ['commas and blanks, dots', '60, 0, 0.5\n60.5, 90, 1.25\n70, 180.5, -0.05'],
    ['commas and blanks, decimal commas', '60, 0, 0,5\n60,5, 90, 1,25\n70, 180,5, -0,05'],
    ['blanks, decimal commas', '60 0 0,5\n60,5 90 1,25\n70 180,5 -0,05'],
    ['blanks in columns', '  60     0    0.5\n  60.5  90    1.25\n  70   180.5 -0.05\n'],
    ['quoted decimal commas between commas', '60,0,"0,5"\n"60,5",90,"1,25"\n70,"180,5","-0,05"'],
    ['all in quotes', '"60";"0";"0,5"\n"60,5";"90";"1,25"\n"70";"180,5";"-0,05"'],
    ['bars', '60|0|0.5\n60.5|90|1.25\n70|180.5|-0.05'],
    ['a byte order mark', '\uFEFF60\t0\t0.5\n60.5\t90\t1.25\n70\t180.5\t-0.05'],
    ['minus signs as they are printed', '60\t0\t0.5\n60.5\t90\t1.25\n70\t180.5\t\u22120.05'],
    ['blanks that do not break', '60\u00a0mm\t0\t0.5\u00a0mm\n60.5\t90\u202f°\t1.25\n70\t180.5\t-0.05'],
    ['blank lines between and after', '60\t0\t0.5\n\n60.5\t90\t1.25\n\t\t\n70\t180.5\t-0.05\n\n\n'],
    ['old line ends', '60\t0\t0.5\r60.5\t90\t1.25\r70\t180.5\t-0.05\r'],
    ['headings', 'Radius\tAngle\tDepth\n60\t0\t0.5\n60.5\t90\t1.25\n70\t180.5\t-0.05'],
    ['headings in another order', 'depth (mm);theta;r (mm)\n0,5;0;60\n1,25;90;60,5\n-0,05;180,5;70'],
    ['a column that counts', 'No,r,theta,d\n1,60,0,0.5\n2,60.5,90,1.25\n3,70,180.5,-0.05'],
    [
      'a column that counts, headings of no use',
      'No.\tone\ttwo\tthree\n1\t60\t0\t0.5\n2\t60.5\t90\t1.25\n3\t70\t180.5\t-0.05',
    ],
    ['units in the headings', 'r [cm]\tangle, deg\tdepth_um\n6\t0\t500\n6.05\t90\t1250\n7\t180.5\t-50'],
    [
      'units below the headings',
      'r\ttheta\tdepth\nmm\tdeg\tmm\n60\t0\t0.5\n60.5\t90\t1.25\n70\t180.5\t-0.05',
    ],
    ['units in the cells', '6 cm\t0°\t0.5 mm\n60.5mm\t90 deg\t1.25\n70\t180.5\t-0.05mm'],
    [
      'whole numbers between commas under headings',
      'r,theta,depth,note\n60,0,"0,5",\n60.5,90,1.25,rough\n70,180.5,-0.05,',
    ],
  ])('%s', (_, text) => {
    const { points, refused } = take(text);
    expect(refused).toEqual([]);
    expect(points).toHaveLength(3);
    for (const [i, point] of points.entries())
      for (const which of [0, 1, 2] as const) expect(point[which]).toBeCloseTo(THREE[i][which], 9);
  });

  it('takes inches where the sheet, the cell or the screen says so', () => {
    // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
    const expected = [[63.5, 45, 3.175]];
    expect(take('2.5\t45\t0.125', { bare: 'in' }).points).toEqual(expected);
    expect(take('2 1/2\t45\t1/8', { bare: 'in' }).points).toEqual(expected);
    expect(take('2.5 in\t45\t1/8 in').points).toEqual(expected);
    expect(take('63.5\t45\t1/8"').points).toEqual(expected);
    expect(take('r (in)\tangle\tdepth [thou]\n2 1/2\t45\t125').points).toEqual(expected);
    expect(take('r (mm)\tangle\tdepth (in)\n63.5\t45\t1/8', { bare: 'in' }).points).toEqual(expected);
  });

  it('turns radians and x, y into degrees and radius', () => {
    expect(take('r\tangle (rad)\tdepth\n60\t3.14159265358979\t1').points[0][1]).toBeCloseTo(180, 9);
    expect(take('x\ty\tdepth\n-30\t-40\t1\n0\t50\t2\n50\t0\t3').points).toEqual([
      // 3-4-5: the angle is 180 + atan(4/3).
      [50, 233.130102, 1],
      [50, 90, 2],
      [50, 0, 3],
    ]);
  });

  it('reads a thickness and a reference by their headings', () => {
    expect(take('r\tangle\twall left\n60\t10\t13.5').points).toEqual([[60, 10, 2.5]]);
    expect(take('r\tangle\tremaining thickness (mm)\n60\t10\t15,8').points).toEqual([[60, 10, 0.2]]);
    expect(take('r\tangle\tgauge reading\treference\n60\t10\t12.40\t9.85').points).toEqual([[60, 10, 2.55]]);
    expect(take('r\tangle\treference reading\treading\n60\t10\t9.85\t12.40').points).toEqual([
      [60, 10, 2.55],
    ]);
    const one: Taking = { kind: 'two-readings', reference: 9.85 };
    expect(take('60\t10\t12.40', one).points).toEqual([[60, 10, 2.55]]);
    expect(take('60\t10\t12.40', { ...one, reference: null }).refused).toEqual([
      'Row 1, reading on sound metal: not known. Type it above, or choose its column.',
    ]);
    expect(take('60\t10\t12.40', { kind: 'wall-left', wallAt: () => null }).refused[0]).toContain(
      'no measure',
    );
  });

  it('finds the columns of other faces', () => {
    const along = { labels: ['along', 'height'], isRound: false } as const;
    const bore = { labels: ['angle', 'below the face'], isRound: false } as const;
    const choice = (text: string, face: FaceColumns) => columnsOf(tableOf(text), face).choice;
    expect(choice('depth\ts\tz\n1\t2\t3', along)).toMatchObject({ first: 1, second: 2, value: 0 });
    expect(choice('d\tz\ttheta\n1\t2\t3', bore)).toMatchObject({ first: 2, second: 1, value: 0 });
    expect(choice('x\ty\tdepth\n1\t2\t3', along)).toMatchObject({ places: 'own', first: null, value: 2 });
  });
});

describe('what can be read in two ways is not guessed', () => {
  const problem = (text: string) => {
    const read = readTable(text, isColumnHeading);
    return 'problem' in read ? read : null;
  };

  it('commas alone may be either: the person says which', () => {
    const text = '1,25,3,5\n1,5,3,75';
    expect(problem(text)).toEqual({
      problem: 'Row 1, "1,25,3,5": a comma may part the columns or mark the decimals. Say which it does.',
      askCommas: true,
    });
    expect(problem('110,5,20,0,3,2')?.askCommas).toBe(true);
    expect(take('60,10,1,5', { commas: 'columns' }).points).toEqual([[60, 10, 1]]);
    expect(take('60,10,1,5', { commas: 'decimals' }).points).toEqual([]);
  });

  it('headings say how many columns there are', () => {
    expect(problem('radius,angle,depth\n60,10,1,5')?.askCommas).toBe(true);
    expect(take('radius,angle,depth\n60,10,1').points).toEqual([[60, 10, 1]]);
    expect(take('radius,angle,gauge,reference\n60,10,12,9').points).toEqual([[60, 10, 3]]);
  });

  it('a mark for thousands is refused where decimals have the other mark', () => {
    const { points, refused } = take('60.5\t0\t1.5\n1,060\t10\t1.5');
    expect(points).toEqual([[60.5, 0, 1.5]]);
    expect(refused).toEqual(['Row 2, radius: "1,060" may have a mark for thousands. Write it without.']);
    expect(take('60,5;0;1,5\n1.060;10;1,5').refused).toHaveLength(1);
    expect(take('60;0;1.125').points).toEqual([[60, 0, 1.125]]);
    expect(take('60;0;0,125\n60;0;1.5').refused).toEqual([]);
  });
});

describe('every refused row says which, what and why', () => {
  it('in the order of the sheet', () => {
    const text = [
      'r\tangle\tdepth',
      '60\t10\t1.5',
      'rim\t20\t1.5',
      '60\t30\t',
      '60\t40',
      '',
      '-5\t50\t1',
      '60\t60\t17',
      '60\t70\t-2',
      '60\t80\t1.2.3',
      '60\t90 mm\t1',
    ].join('\n');
    expect(take(text).refused).toEqual([
      'Row 3, radius: "rim" is not a number. Type one like 3.5 mm.',
      'Row 4, depth: empty. It needs a number, like 3.5.',
      'Row 5, depth: empty. It needs a number, like 3.5.',
      'Row 7, radius: -5 is not a radius, at least 0.',
      'Row 8, depth: 17 is not at most the wall, thickness 16.',
      'Row 9, depth: -2 is not a depth in mm, at least -1 and at most 10000.',
      'Row 10, depth: "1.2.3" has more than one mark or a gap in it. Type it without marks for thousands, like 123 mm.',
      'Row 11, angle: "90 mm" has a unit that does not fit here. Use °.',
    ]);
  });

  it('one column, nothing, words alone', () => {
    expect(take('1.5\n2.5').refused[0]).toBe('Row 1, angle: no column is chosen for it.');
    for (const nothing of ['', '  \n\n', '\uFEFF', '\t\t\n;']) {
      expect(take(nothing)).toEqual({ points: [], refused: [], rows: 0 });
    }
    expect(take('notes of the day\nit was cold').points).toEqual([]);
    expect(take('Plate 3, May\n\nr\ttheta\tdepth\n60\t10\t1').refused).toHaveLength(1);
  });

  it('a quote that is never closed swallows no rows', () => {
    expect(take('"60\t10\t1\n60\t20\t2\n60\t30\t3').rows).toBe(3);
    expect(take('60\t10\t1/8"\n60\t20\t1/2"').points).toHaveLength(2);
  });

  it('units below the headings are known units, not any short words', () => {
    expect(take('r\ttheta\tdepth\nbad\trow\there\n60\t10\t1').refused).toHaveLength(1);
  });

  it('more than a mark holds', () => {
    const lines = Array.from({ length: MOST_READINGS + 5 }, (_, i) => `60\t${i % 360}\t1`);
    const { points, refused } = take(lines.join('\n'));
    expect(points).toHaveLength(MOST_READINGS);
    expect(refused).toHaveLength(5);
    expect(refused[0]).toBe('Row 5001, a mark holds at most 5000 readings. Leave this one out.');
    expect(take('60\t1\t1\n60\t2\t1', { room: 1 }).points).toHaveLength(1);
  });

  it('ten megabytes are refused before they are read', () => {
    const begun = performance.now();
    const read = readTable('60\t10\t1.5\n'.repeat(1_000_000), isColumnHeading);
    expect(read).toEqual({
      problem: 'This is 10.0 MB. Take at most 4 MB, the columns of the readings alone.',
      askCommas: false,
    });
    // ms; parsing it would take a hundred times as long.
    expect(performance.now() - begun).toBeLessThan(500);
    expect(LARGEST_TABLE).toBeLessThan(10_000_000);
  });
});

describe('properties', () => {
  const cell = fc.oneof(
    fc.constantFrom(
      '',
      '60',
      '10,5',
      '1.25',
      '-0.05',
      '1/8 in',
      'rough',
      '"',
      '"x',
      '1,234',
      '90°',
      ' ',
      'mm',
      'depth',
      'r',
    ),
    fc.string({ maxLength: 8 }),
  );
  const text = fc
    .array(fc.array(cell, { maxLength: 6 }), { maxLength: 12 })
    .chain((rows) =>
      fc.constantFrom('\t', ';', ',', ' ', '|').map((mark) => rows.map((row) => row.join(mark)).join('\n')),
    );

  it('taken and refused are all the rows that hold anything', () => {
    fc.assert(
      fc.property(text, fc.constantFrom<Commas>('columns', 'decimals'), (pasted, commas) => {
        const { points, refused, rows } = take(pasted, { commas });
        expect(points.length + refused.length).toBe(rows);
      }),
      { numRuns: 400 },
    );
  });

  it('a row without quotes is a line of the sheet: none goes missing', () => {
    const plain = text.map((pasted) => pasted.replaceAll('"', '').replace(/[\r\u2028\u2029\u0085]/g, ''));
    fc.assert(
      fc.property(plain, (pasted) => {
        const table = tableOf(pasted, 'columns');
        const lines = pasted.split('\n').filter((line) => /[^\s,;|\t\uFEFF\0]/.test(line)).length;
        const above = Number(table.headings.length > 0) + Number(table.unitsBelow.length > 0);
        expect(table.rows.length + above).toBeGreaterThanOrEqual(lines);
      }),
      { numRuns: 400 },
    );
  });

  const size = (min: number, max: number, step: number) =>
    fc.integer({ min: min / step, max: max / step }).map((steps) => Number((steps * step).toFixed(3)));
  const points = fc.array(fc.tuple(size(40, 100, 0.1), size(0, 359.5, 0.5), size(-0.99, 15, 0.01)), {
    minLength: 1,
    maxLength: 20,
  });
  const dialect = fc.record({
    mark: fc.constantFrom('\t', ';', '|', ',', ', ', '  '),
    decimal: fc.constantFrom('.', ','),
    end: fc.constantFrom('\n', '\r\n'),
    headings: fc.constantFrom('none', 'plain', 'units'),
    units: fc.constantFrom<'mm' | 'in'>('mm', 'in'),
    minus: fc.constantFrom('-', '\u2212'),
    isQuoted: fc.boolean(),
  });

  it('a table written in any dialect gives the numbers it was written from', () => {
    fc.assert(
      fc.property(points, dialect, (written, { mark, decimal, end, headings, units, minus, isQuoted }) => {
        const show = (value: number, quantity: 'length' | 'angle') =>
          formatQuantity(value, quantity, units, { as: 'typed' }).replace('.', decimal).replace('-', minus);
        const quoted = (shown: string) =>
          (isQuoted && mark !== '  ') || (mark === ',' && decimal === ',') ? `"${shown}"` : shown;
        const rows = written.map(([r, a, d]) =>
          [show(r, 'length'), show(a, 'angle'), show(d, 'length')].map(quoted),
        );
        const heading =
          headings === 'units'
            ? [`r (${units})`, 'angle (deg)', `depth (${units})`]
            : ['r', 'angle', 'depth'];
        // Blanks part columns only where no heading has one.
        const head = headings === 'none' ? [] : [mark === '  ' ? ['r', 'angle', 'depth'] : heading];
        const pasted = [...head, ...rows].map((row) => row.join(mark)).join(end);
        const { points: read, refused } = take(pasted, { bare: units });
        expect(refused).toEqual([]);
        expect(read).toHaveLength(written.length);
        for (const [i, point] of read.entries()) {
          // Half the last decimal a field shows: 0.0005 mm, or 0.00005 in.
          for (const which of [0, 1, 2] as const)
            expect(Math.abs(point[which] - written[i][which])).toBeLessThan(0.0013);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('a pasted kind never changes which rows are counted', () => {
    fc.assert(
      fc.property(
        text,
        fc.constantFrom<ReadingKind>('depth', 'two-readings', 'wall-left'),
        (pasted, kind) => {
          const { points, refused, rows } = take(pasted, { commas: 'columns', kind, reference: 1 });
          expect(points.length + refused.length).toBe(rows);
        },
      ),
    );
  });
});
