import { describe, expect, test } from 'vitest';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { readJobValue } from '../../../../geometry/job/read-job.ts';
import {
  withBreakAdded,
  withBreaks,
  withClimate,
  withPlan,
  withStepMinutes,
} from '../../../../web/panels/plan/plan-edits.ts';

const { climate: _, plan: __, ...job } = newPlateJob();

describe('the day and the weather in the job', () => {
  test('a field that is cleared leaves the job, and the last one takes its record along', () => {
    const given = withPlan(withPlan(job, { start: '2026-12-01T07:00' }), { shiftEnd: '15:30' });
    expect(given.plan).toEqual({ start: '2026-12-01T07:00', shiftEnd: '15:30' });
    const less = withPlan(given, { shiftEnd: undefined });
    expect(less.plan).toEqual({ start: '2026-12-01T07:00' });
    expect('plan' in withPlan(less, { start: undefined })).toBe(false);
    expect(given.plan?.shiftEnd).toBe('15:30');
  });
  test('one reading does not touch the others', () => {
    const read = withClimate(withClimate(job, { air: 18, surface: 16 }), { humidity: 62 });
    expect(read.climate).toEqual({ air: 18, surface: 16, humidity: 62 });
    expect(withClimate(read, { surface: undefined }).climate).toEqual({ air: 18, humidity: 62 });
  });
  test('minutes of a step go back to the usual ones by leaving the job', () => {
    const own = withStepMinutes(job, { wash: 0 });
    expect(own.plan).toEqual({ minutes: { wash: 0 } });
    expect('plan' in withStepMinutes(own, { wash: undefined })).toBe(false);
  });
  test('breaks come after one another, and none are no list', () => {
    const one = withBreakAdded([]);
    expect(one).toEqual([{ at: '12:00', minutes: 30 }]);
    expect(withBreakAdded([{ at: '22:30', minutes: 15 }]).at(-1)).toEqual({ at: '00:00', minutes: 30 });
    const given = withBreaks(job, withBreakAdded(one));
    expect(given.plan?.breaks).toHaveLength(2);
    expect('faults' in readJobValue(given)).toBe(false);
    expect('plan' in withBreaks(given, [])).toBe(false);
  });
});
