import { expect, test } from 'vitest';
import { measured } from '../../../geometry/job/measured.ts';
import { readJobValue } from '../../../geometry/job/read-job.ts';
import { wholeJob } from './whole-job.ts';

const DEG = Math.PI / 180;

function sectionsOf(part: number, sections?: readonly object[]) {
  const job = wholeJob();
  if (sections !== undefined) job.parts[part].sections = sections;
  const read = readJobValue(job);
  if ('faults' in read) throw new Error(JSON.stringify(read.faults));
  return measured(read.job).parts[part].sections;
}

test('sections are taken over with radians along the coordinate that is an angle', () => {
  expect(sectionsOf(0)).toEqual([
    { kind: 'line', face: 'face', from: [70, 350 * DEG], to: [150, 20 * DEG] },
    { kind: 'along-first', face: 'face', at: 40 * DEG },
    { kind: 'along-second', face: 'bore', at: 90 * DEG },
  ]);
  expect(
    sectionsOf(0, [
      { kind: 'along-second', face: 'face', at: 108 },
      { kind: 'along-first', face: 'bore', at: 4 },
    ]),
  ).toEqual([
    { kind: 'along-second', face: 'face', at: 108 },
    { kind: 'along-first', face: 'bore', at: 4 },
  ]);
  expect(sectionsOf(2)).toEqual([{ kind: 'along-first', face: 'vane-2/leading-edge', at: 1 }]);
});

test('a part without them has none', () => {
  expect(sectionsOf(1)).toEqual([]);
});
