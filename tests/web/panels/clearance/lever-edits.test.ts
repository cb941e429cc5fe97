import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { readJob } from '../../../../geometry/job/read-job.ts';
import type { ClearanceResult } from '../../../../geometry/sheet/clearance-result.ts';
import { toResult } from '../../../../geometry/sheet/result.ts';
import { withLevers } from '../../../../web/panels/clearance/lever-edits.ts';

const text = readFileSync(join(import.meta.dirname, '../../../../samples/facing-pair.job.json'), 'utf8');
const reading = readJob(text);
if ('faults' in reading) throw new Error('the sample has faults');
const sample = reading.job;

const gapOf = (job: JobFile): ClearanceResult => {
  const { clearance } = toResult(estimate(measured(job), { cell: 1 }));
  if (clearance === null) throw new Error('the job asks for its clearance');
  return clearance;
};

const before = gapOf(sample);

/** Depths are kept as 32-bit floats, and a region's edge may move by a sample. mm */
const NEAR = 0.01;

describe('what a lever says, the job does once it is pulled', () => {
  test.each(before.levers.map((lever) => [lever.kind, lever] as const))('%s', (_kind, lever) => {
    const after = gapOf(withLevers(sample, [lever], before));
    expect(Math.abs(after.coated.least - lever.coated.least)).toBeLessThan(NEAR);
    expect(Math.abs(after.coated.mean - lever.coated.mean)).toBeLessThan(NEAR);
    expect(Math.abs(after.coated.most - lever.coated.most)).toBeLessThan(NEAR);
    expect(after.verdict).toBe(lever.verdict);
  });

  test('the fit that is found fits', () => {
    expect(before.verdict).not.toBe('fit');
    const after = gapOf(withLevers(sample, before.fit?.levers ?? [], before));
    expect(after.verdict).toBe('fit');
    expect(after.fit?.levers).toEqual([]);
  });
});

test('a job with a list of its own for the coat keeps what the levers do not speak of', () => {
  const own: JobFile = {
    ...sample,
    repair: {
      leaveBelow: 1,
      coatedFaces: ['plate:*', 'impeller:vane-*/tip'],
      allowanceFaces: ['plate:bore'],
    },
  };
  const clearance = gapOf(own);
  const lever = (kind: ClearanceResult['levers'][number]['kind']) => {
    const found = clearance.levers.find((known) => known.kind === kind);
    if (found === undefined) throw new Error(`the lever ${kind} is offered`);
    return found;
  };
  expect(withLevers(own, [lever('bare-tips')], clearance).repair?.coatedFaces).toEqual([
    'plate:face',
    'plate:bore',
  ]);
  expect(withLevers(own, [lever('stop-short')], clearance).repair).toMatchObject({
    coatAllowance: 0.5,
    allowanceFaces: ['plate:bore', 'plate:face', 'impeller:vane-*/tip'],
  });
});

test('shims and dressing add up to hundredths, without float dust', () => {
  const lever = { kind: 'shim', amount: 0.2 } as const;
  const twice = withLevers(
    { ...sample, clearance: { ...(sample.clearance ?? fail()), shim: 0.1 } },
    [lever],
    before,
  );
  expect(twice.clearance?.shim).toBe(0.3);
});

function fail(): never {
  throw new Error('the sample asks for its clearance');
}
