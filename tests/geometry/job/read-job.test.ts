import { expect, test } from 'vitest';
import { LARGEST_FILE } from '../../../geometry/job/parse-text.ts';
import { readJob } from '../../../geometry/job/read-job.ts';
import { sentences } from './sentences.ts';
import { wholeJob } from './whole-job.ts';

const text = JSON.stringify(wholeJob(), null, 2);

test('a job with every section, part and mark of the format is read whole', () => {
  expect(readJob(text)).toEqual({ job: JSON.parse(text) });
});

test('a byte order mark before the job does no harm', () => {
  expect(sentences(`\uFEFF${text}`)).toEqual([]);
});

test.each([
  ['', 'file: empty, needs a job'],
  [' \n ', 'file: empty, needs a job'],
  ['hello', 'file: not JSON at line 1, column 1: found "hello", needs a value'],
  ['{"format" 1}', 'file: not JSON at line 1, column 11: found "1", needs a colon'],
  ['{"a": tru}', 'file: not JSON at line 1, column 7: found "tru", needs a value'],
  ['{"a": 01}', 'file: not JSON at line 1, column 7: found "01", needs a value'],
  ['{"a": [1 2]}', 'file: not JSON at line 1, column 10: found "2", needs a comma or a closing ]'],
  [
    '{\n  "a": 1\n  "b": 2\n}',
    'file: not JSON at line 3, column 3: found "\\"", needs a comma or a closing }',
  ],
  ['{} {}', 'file: not JSON at line 1, column 4: found "{", needs nothing after the closing brace'],
  ['{"a": "b', 'file: cut short at line 1, column 9, needs a closing double quote'],
  ['{"a": {"b": [1,', 'file: cut short at line 1, column 16, needs a value'],
  ['{"a": 1', 'file: cut short at line 1, column 8, needs a comma or a closing }'],
  ['{"a": [118.', 'file: cut short at line 1, column 8, needs a value or a closing ]'],
  ['{"a": -', 'file: cut short at line 1, column 7, needs a value'],
  ['{"a": 1.5e-', 'file: cut short at line 1, column 7, needs a value'],
  ['{"a": fal', 'file: cut short at line 1, column 7, needs a value'],
  ['{} 2', 'file: not JSON at line 1, column 4: found "2", needs nothing after the closing brace'],
  [
    '{\u00a0"a": 1}',
    'file: not JSON at line 1, column 2: found a blank that is no ordinary space, needs a field name in double quotes or a closing }',
  ],
  [
    '{"a": "\\q"}',
    'file: not JSON at line 1, column 8: found "\\\\", needs a proper escape such as \\n or \\\\',
  ],
  [
    '{"a": 1,}',
    'file: not JSON at line 1, column 9: found "}", needs a field name in double quotes, as after every comma',
  ],
])('text that is not JSON says where it breaks: %j', (broken, sentence) => {
  expect(sentences(broken)).toEqual([sentence]);
});

test.each([
  ['UTF-16, as some editors save it', Buffer.from(`\uFEFF${text}`, 'utf16le')],
  ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])],
  ['nothing but zeros', Buffer.alloc(64)],
])('bytes that are no text are not quoted at the person: %s', (_, bytes) => {
  expect(sentences(bytes.toString('utf8'))).toEqual([
    'file: something other than text at line 1, column 1, needs a job saved as text in UTF-8',
  ]);
});

test('a text cut anywhere gives one fault of the file', () => {
  for (let end = 1; end < text.length - 1; end += 7) {
    const read = readJob(text.slice(0, end));
    expect('faults' in read && read.faults.map(({ field }) => field)).toEqual(['file']);
  }
});

test('JSON that is no job says so', () => {
  expect(sentences('[]')).toEqual(['file: [] is not a job, an object in braces { … }']);
  expect(sentences('null')).toEqual(['file: null is not a job, an object in braces { … }']);
  expect(sentences('12')).toEqual(['file: 12 is not a job, an object in braces { … }']);
  expect(sentences('{}')).toEqual([
    'format: missing, needs 1, the format this version reads',
    'parts: missing, needs a list of 1 to 8 parts',
  ]);
});

test('a newer format names both versions and nothing else', () => {
  expect(sentences('{"format": 2, "parts": "elsewhere"}')).toEqual([
    'format: 2 is newer than this version reads (1)',
  ]);
});

test('a format that is no newer one is an ordinary fault', () => {
  expect(sentences({ ...wholeJob(), format: '1' })).toEqual([
    'format: the text "1" is not 1, the format this version reads',
  ]);
  expect(sentences({ ...wholeJob(), format: 0 })).toEqual([
    'format: 0 is not 1, the format this version reads',
  ]);
});

test('a file of 50 MB or more is refused unread, its size and the limit named', () => {
  expect(sentences(' '.repeat(LARGEST_FILE))).toEqual(['file: 50 MB is not smaller than 50 MB']);
  expect(sentences('{'.repeat(52_428_800))).toEqual(['file: 52.4 MB is not smaller than 50 MB']);
  // Three bytes a character: 17 million of them are 51 MB.
  expect(sentences('€'.repeat(17_000_000))).toEqual(['file: 51 MB is not smaller than 50 MB']);
  expect(sentences(' '.repeat(LARGEST_FILE - 1))).toEqual(['file: empty, needs a job']);
});

test('a file full of one slip is told at its beginning, not walked to its end', () => {
  // 50 MB of these took minutes and gigabytes.
  expect(sentences('['.repeat(100_000))).toEqual([
    'file: not JSON at line 1, column 1001: found "[", needs less nesting',
  ]);
  expect(sentences(`{"format": 1, "x": [${'NaN,'.repeat(4_000_000)}1]}`)).toEqual([
    'file: not JSON at line 1, column 40021: found "NaN", needs a value',
  ]);
  const told = sentences(`{"format": 1, "parts": [], "x": [${'1e999,'.repeat(1_000_000)}1]}`);
  expect(told).toHaveLength(501);
  expect(told[1]).toBe('x[0]: Infinity is not a finite number');
});

test('nesting without end is refused', () => {
  const nested = `{"format": 1, "parts": ${'['.repeat(100_000)}${']'.repeat(100_000)}}`;
  expect(sentences(nested)).toEqual(['file: nested more than 40 deep, needs a job']);
});

const LENGTH = 'a length in mm, more than 0 and at most 10000';

test.each([
  ['NaN', 'NaN'],
  ['Infinity', 'Infinity'],
  ['-Infinity', '-Infinity'],
  ['1e999', 'Infinity'],
  ['null', 'null'],
  ['true', 'true'],
  ['"18"', 'the text "18"'],
  ['"18 mm"', 'the text "18 mm"'],
  ['[18]', '[18]'],
  ['{}', 'an object'],
  ['0', '0'],
  ['-18', '-18'],
  ['1e6', '1000000'],
])('a thickness of %s is named as what it is', (written, found) => {
  const broken = text.replace('"thickness": 18', `"thickness": ${written}`);
  expect(sentences(broken)).toEqual([`parts[0].thickness: ${found} is not ${LENGTH}`]);
});

test('a thickness left out is missing', () => {
  expect(sentences(text.replace('"thickness": 18,', ''))).toEqual([
    `parts[0].thickness: missing, needs ${LENGTH}`,
  ]);
});

test('numbers that are not finite are faults in fields we do not know as well', () => {
  expect(sentences(text.replace('"format": 1', '"format": 1, "seen by": [NaN]'))).toEqual([
    '["seen by"][0]: NaN is not a finite number',
  ]);
});

test('NaN inside a text is text', () => {
  expect(sentences(text.replace('"Invented."', '"NaN and \\"Infinity\\" are no numbers"'))).toEqual([]);
});

test('all faults come at once: those of single fields and those between fields', () => {
  const job = wholeJob();
  job.parts[0].boreDiameter = 330;
  job.parts[0].density = '7,2';
  job.parts[1].thickness = -1;
  job.coat.coats = 2.5;
  job.climate.humidity = 155;
  job.rotor.part = 'pump';
  expect(sentences(job)).toEqual([
    'parts[0].density: the text "7,2" is not a density in g/cm3, more than 0 and at most 25',
    'parts[1].thickness: -1 is not a length in mm, more than 0 and at most 10000',
    'coat.coats: 2.5 is not a number of coats, a whole number from 1 to 10',
    'climate.humidity: 155 is not a relative humidity in %, at least 0 and at most 100',
    'parts[0].boreDiameter: 330 is not smaller than outerDiameter 320',
    'parts[0].boltHoles[0].circleDiameter: 290 is not more than 344, where holes of 14 lie clear of boreDiameter 330',
    'rotor.part: "pump" is not the id of a part of this job: "plate", "outlined", "impeller"',
  ]);
});

test('what could not be read is not held against other fields', () => {
  const job = wholeJob();
  job.parts[0].outerDiameter = 'wide';
  job.parts[0].boreDiameter = 330;
  job.parts[1].outline = {
    edge: [
      [0, 0],
      [1, 'x'],
    ],
  };
  expect(sentences(job)).toEqual([
    'parts[0].outerDiameter: the text "wide" is not a length in mm, more than 0 and at most 10000',
    'parts[1].outline.edge[1][1]: the text "x" is not a number in mm or deg, at least -100000 and at most 100000',
    'parts[1].outline.edge: [[0,0],[1,"x"]] is not a list of 3 to 2000 corners',
    'parts[0].boltHoles[0].circleDiameter: 290 is not more than 344, where holes of 14 lie clear of boreDiameter 330',
  ]);
});

test('a kind we do not know leaves the rest of the object unread', () => {
  const job = wholeJob();
  job.parts[1] = { ...job.parts[1], kind: 'volute', thickness: 'thin' };
  const marks = wholeJob().parts[0].wear as object[];
  job.parts[0].wear = [{ kind: 'scratch', face: 'rim', depth: -1 }, 'worn', ...marks];
  expect(sentences(job)).toEqual([
    'parts[0].wear[0].kind: "scratch" is not "patch", "area", "pit", "stroke", "smooth", "edge", "readings" or "scan"',
    'parts[0].wear[1]: the text "worn" is not a mark in braces, { "kind": … }',
    'parts[1].kind: "volute" is not "wear-plate" or "impeller"',
  ]);
});

test('more than 500 faults are counted, not listed', () => {
  const job = wholeJob();
  job.parts[0].wear = Array.from({ length: 600 }, () => ({ kind: 'scratch' }));
  const told = sentences(job);
  expect(told).toHaveLength(501);
  expect(told[500]).toBe('file: 100 more faults not listed here');
});

test('ten thousand marks on a part are too many, and the message says how many are not', () => {
  const job = wholeJob();
  const pit = { kind: 'pit', face: 'face', at: [100, 20], diameter: 6, depth: 1, form: 'bowl' };
  job.parts[0].wear = Array.from({ length: 10_000 }, () => pit);
  expect(sentences(job)).toEqual(['parts[0].wear: a list of 10000 is not a list of at most 5000 marks']);
  job.parts[0].wear = Array.from({ length: 5000 }, () => pit);
  expect(sentences(job)).toEqual([]);
});
