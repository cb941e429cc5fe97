import { beforeEach, describe, expect, test } from 'vitest';
import type { JobFile, MarkFile } from '../../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { jobStore } from '../../../../web/job/job-store.ts';
import { idleChoices, withChoiceMoved, withoutChoice } from '../../../../web/panels/fill/idle-choices.ts';
import { withRegionChosen } from '../../../../web/panels/fill/overrule-region.ts';
import { estimateService } from '../../../../web/worker/estimate-job.ts';

/** Two hollows, 3 mm and 2 mm deep, 40 degrees apart: both deep enough to be filled. */
const A: MarkFile = { kind: 'patch', face: 'face', first: [90, 120], second: [20, 60], depth: 3 };
const B: MarkFile = { kind: 'patch', face: 'face', first: [90, 120], second: [100, 140], depth: 2 };
const BRIDGE: MarkFile = {
  kind: 'stroke',
  face: 'face',
  path: [
    [105, 55],
    [105, 80],
    [105, 105],
  ],
  radius: 5,
  depth: 1.5,
  edge: 'hard',
};
const cleared = (path: [number, number][], radius: number): MarkFile => ({
  kind: 'stroke',
  face: 'face',
  path,
  radius,
  depth: 0,
  edge: 'hard',
  clear: true,
});

const fresh = newPlateJob();
const start: JobFile = { ...fresh, parts: fresh.parts.map((part) => ({ ...part, wear: [A, B] })) };

function answerTo(job: JobFile) {
  const answer = estimateService().estimateJob(job);
  if (!('result' in answer)) throw new Error(JSON.stringify(answer));
  return answer;
}

/** The job on the screen with its figures, as the list sees it. */
function shown() {
  const { job } = jobStore.getState();
  const { result, regions } = answerTo(job);
  const rows = result.parts[0].regions;
  return {
    job,
    result,
    labels: regions,
    label: regions.find(({ face }) => face === 'face'),
    rows,
    said: rows.map(({ deepest, action, overruled }) => [Number(deepest.toFixed(2)), action, overruled]),
    idle: idleChoices(job, result, regions),
    warnings: result.warnings.filter(({ code }) => code === 'overrule-unmet'),
  };
}

const edit = (change: (job: JobFile) => JobFile) =>
  expect(jobStore.getState().edit('test', change)).toEqual([]);
const choose = (which: number, action: 'fill' | 'leave') => {
  const { rows, label } = shown();
  edit((job) => withRegionChosen(job, 'plate', rows[which], action, label));
};
const mark = (next: MarkFile) =>
  edit((job) => ({ ...job, parts: job.parts.map((part) => ({ ...part, wear: [...part.wear, next] })) }));

beforeEach(() => jobStore.getState().open(start, null));

describe('a region that was left by choice', () => {
  test('grows together with another: one region, left because it was chosen', () => {
    choose(0, 'leave');
    mark(BRIDGE);
    expect(shown().said).toEqual([[3, 'leave', true]]);
  });

  test('comes apart again by undo: the choice is on the one it was made for', () => {
    choose(0, 'leave');
    mark(BRIDGE);
    jobStore.getState().undo();
    expect(shown().said).toEqual([
      [3, 'leave', true],
      [2, 'fill', false],
    ]);
  });

  test.each([0, 1])(
    'comes apart again by clearing what joins them, whichever of the two was chosen: %i',
    (which) => {
      choose(which, 'leave');
      mark(BRIDGE);
      mark(cleared([[105, 80]], 12));
      expect(shown().said).toEqual([
        [3, which === 0 ? 'leave' : 'fill', which === 0],
        [2, which === 1 ? 'leave' : 'fill', which === 1],
      ]);
    },
  );

  test('of two choices that come together the later one holds, and apart each has its own again', () => {
    choose(0, 'leave');
    edit((job) => ({ ...job, repair: { ...job.repair, leaveBelow: 2.5 } }));
    choose(1, 'fill');
    mark(BRIDGE);
    expect(shown().said).toEqual([[3, 'fill', true]]);
    mark(cleared([[105, 80]], 12));
    expect(shown().said).toEqual([
      [3, 'leave', true],
      [2, 'fill', true],
    ]);
  });

  test('a choice made for two that have grown together holds for both when they come apart', () => {
    choose(0, 'leave');
    edit((job) => ({ ...job, repair: { ...job.repair, leaveBelow: 2.5 } }));
    choose(1, 'fill');
    mark(BRIDGE);
    choose(0, 'leave');
    expect(shown().said).toEqual([[3, 'leave', true]]);
    mark(cleared([[105, 80]], 12));
    expect(shown().said).toEqual([
      [3, 'leave', true],
      [2, 'leave', true],
    ]);
  });

  test('keeps the choice while its rim, its corners and its deepest point are cleared', () => {
    choose(0, 'leave');
    // Deepest all over; the engine names the corner at the lesser radius and angle.
    const [{ at }] = shown().rows;
    mark(cleared([[at[0], at[1]]], 12));
    mark(cleared([[118, 58]], 12));
    const { said, idle } = shown();
    expect(said[0]).toEqual([3, 'leave', true]);
    expect(idle).toEqual([]);
  });
});

describe('a choice whose place was cleared while wear is left beside it', () => {
  beforeEach(() => {
    choose(0, 'leave');
    mark(cleared([[105, 40]], 12));
  });

  test('does nothing, and that is said: in a warning, and in the list with the region that is near', () => {
    const { said, idle, warnings } = shown();
    expect(said[0]).toEqual([3, 'fill', false]);
    expect(warnings).toHaveLength(1);
    expect(warnings[0].field).toBe('repair.overrule[0]');
    expect(idle).toMatchObject([{ index: 0, part: 'plate', face: 'face', nearby: { number: 1 } }]);
  });

  test('is taken over to what is left by one press, and undone by one', () => {
    const { idle, label } = shown();
    edit((job) => withChoiceMoved(job, idle[0], label));
    expect(shown().said[0]).toEqual([3, 'leave', true]);
    expect(shown()).toMatchObject({ idle: [], warnings: [] });
    jobStore.getState().undo();
    expect(shown().idle).toHaveLength(1);
  });

  test('is dropped by one press', () => {
    const { idle } = shown();
    edit((job) => withoutChoice(job, idle[0]));
    expect(shown()).toMatchObject({ idle: [], warnings: [] });
    expect(shown().job.repair?.overrule).toEqual([]);
  });

  test('holds again when the clearing is undone', () => {
    jobStore.getState().undo();
    expect(shown()).toMatchObject({
      idle: [],
      said: [
        [3, 'leave', true],
        [2, 'fill', false],
      ],
    });
  });
});

test('a choice far from any wear is offered to no region', () => {
  edit((job) => ({
    ...job,
    repair: { ...job.repair, overrule: [{ at: 'plate:face', point: [105, 270], action: 'leave' }] },
  }));
  expect(shown().idle).toMatchObject([{ index: 0, nearby: null }]);
});
