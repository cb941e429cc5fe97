import { beforeEach, describe, expect, it } from 'vitest';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { jobStore } from '../../../../web/job/job-store.ts';
import { withRegionChosen } from '../../../../web/panels/fill/overrule-region.ts';
import { estimateService } from '../../../../web/worker/estimate-job.ts';
import { impellerJob } from '../../tools/impellers.ts';

const fresh = newPlateJob();
const start: JobFile = {
  ...fresh,
  parts: fresh.parts.map((part) => ({
    ...part,
    wear: [
      { kind: 'patch', face: 'face', first: [90, 120], second: [300, 60], depth: 3 },
      { kind: 'pit', face: 'face', at: [80, 180], diameter: 10, depth: 0.6, form: 'flat' },
    ],
  })),
};

function answerTo(job: JobFile) {
  const answer = estimateService().estimateJob(job);
  if (!('result' in answer)) throw new Error(JSON.stringify(answer));
  return answer;
}

/** Chooses for one region as the screen does, and gives the job and what became of every region. */
function choose(job: JobFile, which: number, action: 'fill' | 'leave', part = 'plate') {
  jobStore.getState().open(job, null);
  const { result, regions } = answerTo(job);
  const region = result.parts[0].regions[which];
  const label = regions.find(({ face }) => face === region.face);
  const chosen = withRegionChosen(job, part, region, action, label);
  return { job: chosen, actions: answerTo(chosen).result.parts[0].regions.map((known) => known.action) };
}

describe('filling or leaving a region', () => {
  beforeEach(() => jobStore.getState().open(start, null));

  it('overrules the limit for that region alone, both ways', () => {
    expect(choose(start, 0, 'leave').actions).toEqual(['leave', 'leave']);
    expect(choose(start, 1, 'fill').actions).toEqual(['fill', 'fill']);
  });

  it('is taken back whole: what the limit says anyway leaves no overrule behind', () => {
    const left = choose(start, 0, 'leave').job;
    const back = choose(left, 0, 'fill');
    expect(back.actions).toEqual(['fill', 'leave']);
    expect(back.job.repair?.overrule).toEqual([]);
  });

  it('finds an overrule by its place even where the deepest point has moved since', () => {
    const left = choose(start, 0, 'leave').job;
    const deeper: JobFile = {
      ...left,
      parts: left.parts.map((part) => ({
        ...part,
        wear: [
          ...part.wear,
          { kind: 'pit', face: 'face', at: [110, 20], diameter: 8, depth: 5, form: 'flat' },
        ],
      })),
    };
    const back = choose(deeper, 0, 'fill');
    expect(back.actions[0]).toBe('fill');
    expect(back.job.repair?.overrule).toEqual([]);
  });

  it('is made for one vane over a choice for all vanes, both ways', () => {
    const pits = impellerJob([
      { kind: 'pit', face: 'vane-*/pressure', at: [60, 15], diameter: 12, depth: 3, form: 'flat' },
    ]);
    const all: JobFile = {
      ...pits,
      repair: { overrule: [{ at: 'impeller:vane-*/pressure', point: [60, 15], action: 'leave' }] },
    };
    const one = choose(all, 0, 'fill', 'impeller');
    expect(one.actions).toEqual(['fill', 'leave', 'leave', 'leave', 'leave']);
    expect(choose(one.job, 0, 'leave', 'impeller').actions).toEqual(Array(5).fill('leave'));
  });

  it('does what is asked where the depth lies at the limit', () => {
    const atLimit: JobFile = { ...start, repair: { ...start.repair, leaveBelow: 3 } };
    const left = choose(atLimit, 0, 'leave');
    expect(left.actions[0]).toBe('leave');
    expect(choose(left.job, 0, 'fill').actions[0]).toBe('fill');
  });
});
