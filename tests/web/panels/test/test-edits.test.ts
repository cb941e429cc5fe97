import { describe, expect, test } from 'vitest';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { readJobValue } from '../../../../geometry/job/read-job.ts';
import {
  kindOf,
  nextKind,
  startingTest,
  withField,
  withoutRun,
  withRun,
  withRunAdded,
} from '../../../../web/panels/test/test-edits.ts';

const RUN = { when: 'before', speed: 1446, points: [{ flow: 60, head: 14.1, power: 4.6 }] };

function tested(): JobFile {
  const job = newPlateJob();
  return { ...job, flowTest: startingTest(job, 90) };
}

describe('a flow test', () => {
  test('starts at the speed of the rotor, else of four poles, in cold water, and is a job that can be read', () => {
    expect(startingTest({}, 90)).toEqual({ density: 998, ratedSpeed: 1450, duty: 90, runs: [] });
    expect(startingTest({ rotor: { part: 'x', speed: 980, grade: 6.3 } }, 90).ratedSpeed).toBe(980);
    expect(readJobValue(tested())).not.toHaveProperty('faults');
  });

  test('runs come, change and go; the job before stays as it was', () => {
    const before = tested();
    const one = withRunAdded(before, RUN);
    const two = withRunAdded(one, { ...RUN, when: 'after' });
    const changed = withRun(two, 1, (run) => ({ ...run, speed: 1455 }));
    expect(changed.flowTest?.runs.map(({ speed }) => speed)).toEqual([1446, 1455]);
    expect(withoutRun(changed, 0).flowTest?.runs.map(({ when }) => when)).toEqual(['after']);
    expect(before.flowTest?.runs).toEqual([]);
    expect(two.flowTest?.runs[1].speed).toBe(1446);
  });

  test('a job without one is left alone', () => {
    const job = newPlateJob();
    expect(withRunAdded(job, RUN)).toBe(job);
  });

  test('a field that is no longer known is left out of the file', () => {
    const test = withField(startingTest({}, 90), 'hoursPerYear', 4000);
    expect(test.hoursPerYear).toBe(4000);
    expect(withField(test, 'hoursPerYear', undefined)).not.toHaveProperty('hoursPerYear');
  });

  test('the next run is the kind that is still missing', () => {
    const following = (...whens: string[]) => nextKind(whens.map((when) => ({ when })));
    expect(following()).toBe('before');
    expect(following('before')).toBe('after');
    expect(following('new', 'before')).toBe('after');
    expect(following('before', 'after')).toBe('new');
    expect(following('before', 'after', 'new')).toBe('other');
    expect(kindOf('spring 2025')).toBe('other');
    expect(kindOf('after')).toBe('after');
  });
});
