import { describe, expect, test } from 'vitest';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { finishStep, startStep } from '../../../web/bench/step-log.ts';
import { takeBack, takeBackOf } from '../../../web/bench/take-back.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { at, jobWith } from './bench-results.ts';

const words = (step: string) => step;

/** A job with these edits done to it one after the other. */
function worked(...edits: readonly [label: string, change: (job: JobFile) => JobFile][]) {
  const { log: _, ...job } = jobWith([]);
  jobStore.setState({ job, past: [], future: [], mergeKey: null });
  for (const [label, change] of edits) expect(jobStore.getState().edit(label, change)).toEqual([]);
}

const START: [string, (job: JobFile) => JobFile] = [
  'start of fill:1',
  (job) => startStep(job, 'fill:1', at(0)),
];
const END: [string, (job: JobFile) => JobFile] = ['end of fill:1', (job) => finishStep(job, 'fill:1', at(9))];

/** One press: what it is called, and the log after it. */
function press() {
  const { job, past, undo, edit } = jobStore.getState();
  const back = takeBackOf(job, past, words);
  if (back !== null) takeBack(back, { undo, edit });
  return [back?.label ?? null, jobStore.getState().job.log?.length ?? 0];
}

describe('undo at the bench', () => {
  test('steps back through what was done here', () => {
    worked(START, END);
    expect(press()).toEqual(['end of fill:1', 1]);
    expect(press()).toEqual(['start of fill:1', 0]);
    expect(press()).toEqual([null, 0]);
    jobStore.getState().redo();
    expect(jobStore.getState().job.log).toHaveLength(1);
  });
  test('leaves an edit that came in between alone and takes the stamps back all the same', () => {
    worked(START, END, ['title', (job) => ({ ...job, title: 'Later' })]);
    expect(press()).toEqual(['end of fill:1', 1]);
    expect(press()).toEqual(['start of fill:1', 0]);
    expect(press()).toEqual([null, 0]);
    expect(jobStore.getState().job.title).toBe('Later');
    // Each is a step of the job's own list too.
    jobStore.getState().undo();
    expect(jobStore.getState().job.log).toHaveLength(1);
  });
  test('takes back a stamp of a job that was just opened', () => {
    const job = finishStep(startStep(jobWith([]), 'fill:1', at(0)), 'fill:1', at(9));
    jobStore.setState({ job, past: [], future: [], mergeKey: null });
    expect(press()).toEqual(['end of fill:1', 1]);
    expect(jobStore.getState().job.log?.[0].done).toBeUndefined();
  });
});
