import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { faultText } from '../../../geometry/job/fault.ts';
import { readJob } from '../../../geometry/job/read-job.ts';
import { writeJob } from '../../../geometry/job/write-job.ts';

const folder = join(import.meta.dirname, '../../../samples');
const names = readdirSync(folder).filter((name) => name.endsWith('.job.json'));

test('there are samples', () => {
  expect(names.length).toBeGreaterThanOrEqual(2);
});

test.each(names)('%s opens without a fault, saves as it is and owns to generic materials', (name) => {
  const text = readFileSync(join(folder, name), 'utf8');
  const read = readJob(text);
  if ('faults' in read) throw new Error(read.faults.map(faultText).join('\n'));
  expect(writeJob(read.job)).toBe(text);
  expect(read.job.filler?.name).toContain('replace with your data sheet');
  expect(read.job.coat?.name).toContain('replace with your data sheet');
});
