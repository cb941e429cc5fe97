import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { JobFile, MarkFile } from '../../../geometry/job/job-file.ts';
import { toRadians } from '../../../geometry/units.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { viewStore } from '../../../web/view/view-store.ts';
import { addSection } from '../../../web/wear/add-section.ts';
import { type LaidSection, laidInSight } from '../../../web/wear/laid-section.ts';
import { sectionSeen } from '../../../web/wear/section-seen.ts';
import { estimateStore } from '../../../web/worker/estimate-client.ts';
import { estimateService } from '../../../web/worker/estimate-job.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

/** Flat pits on the spoke at 30 deg of a plate of 80 to 200 mm: one to be filled, one left to the coat. */
const DEEP: MarkFile = { kind: 'pit', face: 'face', at: [60, 30], diameter: 16, depth: 3, form: 'flat' };
const SHALLOW: MarkFile = { kind: 'pit', face: 'face', at: [85, 30], diameter: 16, depth: 0.7, form: 'flat' };
const READINGS: MarkFile = { kind: 'readings', face: 'face', points: [[70, 31, 0.2]], gaugeError: 0.05 };

const blank = estimateStore.getState();

function estimateNow(): void {
  const { job } = jobStore.getState();
  const answer = estimateService().estimateJob(job);
  if (!('result' in answer)) throw new Error(JSON.stringify(answer));
  estimateStore.setState({ ...answer, job, pending: false });
}

function inSight(): LaidSection {
  const laid = laidInSight();
  if (laid === null) throw new Error('nothing is laid');
  return laid;
}

const edit = (change: (job: JobFile) => JobFile) => jobStore.getState().edit('test', change);
const placeAt = (radius: number) =>
  sectionSeen(inSight())
    .runs.flat()
    .find(({ at }) => at >= radius - 40);

beforeEach(() => {
  jobStore.getState().open(jobOf(PLATES.round, [DEEP, SHALLOW]), null);
  viewStore.getState().set({ part: 'plate' });
  addSection('plate', { kind: 'along-first', face: 'face', at: 30 });
});

afterEach(() => estimateStore.setState(blank, true));

describe('what is seen under the straightedge', () => {
  test('before the first figures is the worn line alone', () => {
    const seen = sectionSeen(inSight());
    expect(seen.isFillKnown).toBe(false);
    expect(seen.deepest).toMatchObject({ depth: 3, putty: 0, action: null });
    expect(seen.deepest?.point[1]).toBeCloseTo(toRadians(30), 9);
  });

  test('with the figures is putty where the region is filled, and coat on all of it', () => {
    estimateNow();
    expect(sectionSeen(inSight())).toMatchObject({ isFillKnown: true, film: 0.5 });
    expect(placeAt(60)).toMatchObject({ depth: 3, putty: 3, isLeft: false });
    expect(placeAt(85)).toMatchObject({ putty: 0, isLeft: true });
  });

  test('another line laid changes nothing of what is known', () => {
    estimateNow();
    addSection('plate', { kind: 'along-second', face: 'face', at: 60 });
    expect(sectionSeen(inSight()).isFillKnown).toBe(true);
  });

  test('another mark, another choice or another size does, until the figures follow', () => {
    const changes: ((job: JobFile) => JobFile)[] = [
      (job) => ({ ...job, parts: [{ ...job.parts[0], wear: [DEEP] }] }),
      (job) => ({ ...job, repair: { leaveBelow: 5 } }),
      (job) => ({ ...job, parts: [{ ...job.parts[0], thickness: 20 } as JobFile['parts'][number]] }),
    ];
    for (const change of changes) {
      estimateNow();
      expect(sectionSeen(inSight()).isFillKnown).toBe(true);
      edit(change);
      expect(sectionSeen(inSight()).isFillKnown).toBe(false);
    }
    estimateNow();
    expect(sectionSeen(inSight()).isFillKnown).toBe(true);
  });

  test('keeps the allowance free of putty and leaves an uncoated face bare', () => {
    edit((job) => ({ ...job, repair: { coatAllowance: 0.5, coatedFaces: ['plate:bore'] } }));
    estimateNow();
    expect(placeAt(60)).toMatchObject({ putty: 2.5 });
    expect(sectionSeen(inSight()).film).toBe(0);
  });

  test('holds gauge readings near the line', () => {
    edit((job) => ({ ...job, parts: [{ ...job.parts[0], wear: [...job.parts[0].wear, READINGS] }] }));
    const [reading] = sectionSeen(inSight()).readings;
    expect(reading).toMatchObject({ depth: 0.2, error: 0.05 });
    // 1 deg beside it at 70 mm, seen square on: 70 cos 1 - 40 along, 70 sin 1 off.
    expect(reading.at).toBeCloseTo(70 * Math.cos(toRadians(1)) - 40, 6);
    expect(reading.off).toBeCloseTo(70 * Math.sin(toRadians(1)), 6);
  });

  test('is worked out once while nothing changes', () => {
    expect(sectionSeen(inSight())).toBe(sectionSeen(inSight()));
    const before = sectionSeen(inSight());
    estimateNow();
    expect(sectionSeen(inSight())).not.toBe(before);
  });
});
