import { describe, expect, test } from 'vitest';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { readJobValue } from '../../../../geometry/job/read-job.ts';
import {
  withHours,
  withRepair,
  withRepairAdded,
  withRepairRemoved,
} from '../../../../web/panels/clearance/history-edits.ts';
import { today } from '../../../../web/panels/clearance/today.ts';

const { history: _, ...job } = newPlateJob();

describe('the history in the job', () => {
  test('hours come and go, and with the last thing said the history goes too', () => {
    const known = withHours(job, 2400);
    expect(known.history).toEqual({ hours: 2400 });
    expect('history' in withHours(known, undefined)).toBe(false);
  });
  test('a repair added is on a part of the job, has no hours yet, and is a job that can be read', () => {
    const added = withRepairAdded(job, '2025-02-28');
    expect(added.history?.repairs).toEqual([
      { part: job.parts[0].id, date: '2025-02-28', hours: 0, deepest: 0 },
    ]);
    expect(readJobValue(added)).not.toHaveProperty('faults');
  });
  test('one field changes, an emptied one leaves, the others stay', () => {
    const two = withRepairAdded(withRepairAdded(job, '2024-01-01'), '2025-01-01');
    const noted = withRepair(withRepair(two, 1, { mean: 1.2, hours: 3000 }), 1, { volume: 12 });
    expect(noted.history?.repairs?.[1]).toMatchObject({ mean: 1.2, hours: 3000, volume: 12 });
    expect(noted.history?.repairs?.[0]).toEqual(two.history?.repairs?.[0]);
    const cleared = withRepair(noted, 1, { mean: undefined });
    expect(cleared.history?.repairs?.[1]).not.toHaveProperty('mean');
    expect(noted.history?.repairs?.[1].mean).toBe(1.2);
  });
  test('the last repair removed leaves no empty list', () => {
    const one = withRepairAdded(withHours(job, 100), '2024-01-01');
    expect(withRepairRemoved(one, 0).history).toEqual({ hours: 100 });
    expect('history' in withRepairRemoved(withRepairAdded(job, '2024-01-01'), 0)).toBe(false);
  });
});

test('today is the day of the clock on the wall, not of the meridian', () => {
  expect(today(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
  expect(today(new Date(2026, 11, 31, 0, 1))).toBe('2026-12-31');
});
