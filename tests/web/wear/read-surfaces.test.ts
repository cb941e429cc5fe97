import { beforeEach, describe, expect, test } from 'vitest';
import { depthAt } from '../../../geometry/depth/depth-at.ts';
import { survey } from '../../../geometry/depth/survey.ts';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { measuredMark } from '../../../geometry/job/measured-mark.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { addMark } from '../../../web/wear/add-mark.ts';
import { holdMaps, letMapsGo, liveFace } from '../../../web/wear/live-faces.ts';
import { takeSurfaces } from '../../../web/wear/read-surfaces.ts';
import { jobOf, PLATES } from '../tools/plates.ts';

const store = () => jobStore.getState();
let made = 0;

/** Readings no test before has had: what was found once is known. */
function evenReadings(depth: number): MarkFile {
  made += 1;
  return {
    kind: 'readings',
    face: 'face',
    points: [
      [55, made, depth],
      [75, 90, depth],
    ],
  };
}

function live() {
  const found = liveFace('plate', 'face');
  if (found === undefined) throw new Error('no face');
  return found;
}

const depth = () => {
  const { face, map } = live();
  return depthAt(map, face, 65, 2);
};

/** What the worker does: finds the surface of a mark of the job as it is now. */
function find(mark: number): void {
  const { job } = store();
  const own = measuredMark(job.parts[0].wear[mark], job.parts[0]);
  if (own?.kind !== 'readings') throw new Error('no readings');
  const known = survey(live().face, own);
  if (known !== null) takeSurfaces(job, [{ part: 0, mark, surface: known.surface }]);
}

beforeEach(() => store().open(jobOf(PLATES.round, []), null));

describe('the surface of readings on the live map', () => {
  test('is there as soon as the worker has found it', () => {
    addMark('plate', evenReadings(2));
    expect(depth()).toBe(0);
    find(0);
    expect(depth()).toBeCloseTo(2, 4);
  });

  test('of readings that changed stays as it was until the new one is found', () => {
    addMark('plate', evenReadings(2));
    find(0);
    const changed = evenReadings(3);
    store().edit('reading', (job) => ({ ...job, parts: [{ ...job.parts[0], wear: [changed] }] }));
    expect(depth()).toBeCloseTo(2, 4);
    find(0);
    expect(depth()).toBeCloseTo(3, 4);
    store().undo();
    expect(depth()).toBeCloseTo(2, 4);
  });

  test('is another one when the part is another', () => {
    addMark('plate', evenReadings(2));
    find(0);
    store().edit('size', (job) => ({
      ...job,
      parts: [{ ...job.parts[0], outerDiameter: 340 } as (typeof job.parts)[number]],
    }));
    expect(depth()).toBe(0);
  });

  test('waits while a tool writes into the map', () => {
    addMark('plate', evenReadings(2));
    const { map } = live();
    holdMaps();
    find(0);
    expect(live().map).toBe(map);
    letMapsGo();
    expect(depth()).toBeCloseTo(2, 4);
  });

  test('keeps the marks before and after it in their order', () => {
    addMark('plate', evenReadings(2));
    find(0);
    addMark('plate', {
      kind: 'pit',
      face: 'face',
      at: [65, (2 * 180) / Math.PI],
      diameter: 30,
      depth: 5,
      form: 'flat',
    });
    expect(depth()).toBeCloseTo(5, 4);
    addMark('plate', {
      kind: 'stroke',
      face: 'face',
      path: [[65, (2 * 180) / Math.PI]],
      radius: 10,
      clear: true,
    });
    expect(depth()).toBe(0);
  });
});
