import { expect, test } from 'vitest';
import { sentences } from '../job/sentences.ts';
import { wholeJob } from '../job/whole-job.ts';

/** The faults of a job whose flow test, of 998 kg/m3, has that guarantee. */
const guaranteed = (guarantee: object) => {
  const job = wholeJob();
  job.flowTest = { ...job.flowTest, guarantee: { flow: 90, head: 12.5, grade: '2B', ...guarantee } };
  return sentences(job);
};

// 998 x 9.80665 x 90 / 3600 x 12.5 = 3058.45 W: definition, worked out by other code.
test('no pump is guaranteed to take less than it gives', () => {
  expect(guaranteed({ power: 3.06, efficiency: 70 })).toEqual([]);
  expect(guaranteed({})).toEqual([]);
  expect(guaranteed({ power: 3.05 })).toEqual([
    'flowTest.guarantee.power: 3.05 is not at least the 3.058 kW that 90 m3/h and 12.5 m take out of the pump',
  ]);
});
