import { describe, expect, it } from 'vitest';
import { firstSample, openSample, SAMPLES, sampleJob } from '../../../web/files/samples.ts';
import { jobStore } from '../../../web/job/job-store.ts';

describe('the samples', () => {
  it('are there, the worn flat plate first, and every one reads without a fault', async () => {
    expect(SAMPLES.length).toBeGreaterThan(1);
    expect(SAMPLES[0].name).toBe('scoured-plate');
    for (const { name, title } of SAMPLES) {
      const job = await sampleJob(name);
      expect(title).toBe(job.title);
      expect(title).not.toBe('');
      expect(job.parts[0].wear.length).toBeGreaterThan(0);
    }
    expect(firstSample()).toEqual(await sampleJob('scoured-plate'));
  });

  it('open as a step, so that nobody loses a job by looking', async () => {
    const before = jobStore.getState().job;
    await openSample(SAMPLES[1]);
    expect(jobStore.getState().job).toEqual(await sampleJob(SAMPLES[1].name));
    jobStore.getState().undo();
    expect(jobStore.getState().job).toBe(before);
  });
});
