import { describe, expect, it } from 'vitest';
import { openSample, samples } from '../../../web/files/samples.ts';
import { jobStore } from '../../../web/job/job-store.ts';

describe('the samples', () => {
  it('are there, the worn flat plate first, and every one reads without a fault', () => {
    expect(samples().length).toBeGreaterThan(1);
    expect(samples()[0].name).toBe('scoured-plate');
    for (const { job, title } of samples()) {
      expect(title).not.toBe('');
      expect(job.parts[0].wear.length).toBeGreaterThan(0);
    }
  });

  it('open as a step, so that nobody loses a job by looking', () => {
    const before = jobStore.getState().job;
    openSample(samples()[0]);
    expect(jobStore.getState().job).toBe(samples()[0].job);
    jobStore.getState().undo();
    expect(jobStore.getState().job).toBe(before);
  });
});
