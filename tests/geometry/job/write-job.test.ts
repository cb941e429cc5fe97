import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { readJob, readJobValue } from '../../../geometry/job/read-job.ts';
import { writeJob } from '../../../geometry/job/write-job.ts';
import { anyJob } from './any-job.ts';
import { wholeJob } from './whole-job.ts';

function reads(read: ReturnType<typeof readJob>): JobFile {
  if ('faults' in read) throw new Error(JSON.stringify(read.faults, null, 1));
  return read.job;
}

test('open after save is the same job, unknown fields and all; saving twice gives the same bytes', () => {
  fc.assert(
    fc.property(anyJob, (value) => {
      const job = reads(readJobValue(value));
      expect(job).toEqual(value);
      const saved = writeJob(job);
      const opened = reads(readJob(saved));
      expect(opened).toEqual(value);
      expect(writeJob(opened)).toBe(saved);
    }),
    { numRuns: 100 },
  );
});

test('the order in which fields come does not change the file, but for fields we do not know', () => {
  const backwards = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(backwards);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(
      Object.entries(value)
        .reverse()
        .map(([name, field]) => [name, backwards(field)]),
    );
  };
  const saved = writeJob(reads(readJobValue(wholeJob())));
  expect(writeJob(reads(readJobValue(backwards(wholeJob()))))).toBe(saved);
  // A job changed by hand in memory never went through the reader's ordering.
  expect(writeJob(backwards(wholeJob()) as JobFile)).toBe(saved);
});

test('fields we know come first, the others after them as they came', () => {
  const job = { zeal: 1, parts: wholeJob().parts.slice(0, 1), apt: { b: 1, a: 2 }, format: 1 };
  const saved = writeJob(reads(readJobValue(job)));
  expect(Object.keys(JSON.parse(saved) as object)).toEqual(['format', 'parts', 'zeal', 'apt']);
  expect(saved.endsWith('  "zeal": 1,\n  "apt": { "b": 1, "a": 2 }\n}\n')).toBe(true);
});

test('a mark is a line, a long path fills lines of at most 110 characters', () => {
  const job = wholeJob();
  const path = Array.from({ length: 60 }, (_, i) => [100 + (i % 7) / 2, i * 3]);
  (job.parts[0].wear as object[]).push({ kind: 'smooth', face: 'face', path, radius: 8, strength: 1 });
  const lines = writeJob(reads(readJobValue(job))).split('\n');
  expect(lines).toContain(
    '        { "kind": "patch", "face": "face", "first": [90, 130], "second": [350, 20], "depth": [2, 5] },',
  );
  expect(lines).toContain(
    '      "boltHoles": [{ "count": 6, "circleDiameter": 290, "holeDiameter": 14, "startAngle": 0 }],',
  );
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(110);
  expect(lines.filter((line) => /^ {12}\[\d/.test(line))).toHaveLength(8);
});

test('what is undefined is left out', () => {
  const job = reads(readJobValue(wholeJob()));
  const saved = writeJob({ ...job, rotor: undefined, filler: undefined });
  expect(saved).not.toContain('rotor');
  expect(saved).not.toContain('"filler":');
});

test('a job with faults is saved all the same', () => {
  const job = { ...newPlateJob(), parts: [] };
  expect(JSON.parse(writeJob(job))).toEqual(job);
});

test('the wear may be left out of a file and is none then', () => {
  const job = wholeJob();
  delete job.parts[0].wear;
  expect(reads(readJobValue(job)).parts[0].wear).toEqual([]);
});

test('names that every object has are fields like any other', () => {
  const job = { ...wholeJob(), constructor: { toString: 1 }, hasOwnProperty: [2] };
  expect(JSON.parse(writeJob(reads(readJobValue(job))))).toEqual(job);
});
