import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { depthAt } from '../../../../geometry/depth/depth-at.ts';
import type { JobFile } from '../../../../geometry/job/job-file.ts';
import { jobStore } from '../../../../web/job/job-store.ts';
import { filledPart, setApart } from '../../../../web/scene/assembly/gap-state.ts';
import { namedPair } from '../../../../web/scene/assembly/named-pair.ts';
import { type LivePart, livePart } from '../../../../web/wear/live-faces.ts';
import { estimateService, type Figures } from '../../../../web/worker/estimate-job.ts';

const sample = join(import.meta.dirname, '../../../../samples/facing-pair.job.json');
const written = JSON.parse(readFileSync(sample, 'utf8')) as JobFile;
const job: JobFile = { ...written, repair: { leaveBelow: 1, coatAllowance: 0.5 } };

describe('what the coat and the lathe change of where the parts stand', () => {
  // Two coats of 250 um on each face.
  test.each([
    ['as found', {}, 0],
    ['filled', {}, 0],
    ['coated', {}, -1],
    ['as found', { dressTips: 0.3 }, 0],
    ['filled', { dressTips: 0.3 }, 0.3],
    ['coated', { dressTips: 0.3 }, -0.7],
  ] as const)('%s with %o: %d mm', (state, more, mm) => {
    const clearance = { ...(job.clearance as NonNullable<JobFile['clearance']>), ...more };
    expect(setApart(state, { ...job, clearance })).toBeCloseTo(mm, 9);
  });

  test('a face that is not coated has no film', () => {
    const repair = { ...job.repair, coatedFaces: ['impeller:*'] } as JobFile['repair'];
    expect(setApart('coated', { ...job, ...(repair && { repair }) })).toBeCloseTo(-0.5, 9);
  });
});

describe('a filled part', () => {
  let figures: Figures;
  let plate: LivePart;
  beforeAll(() => {
    const answer = estimateService().estimateJob(job);
    if (!('result' in answer)) throw new Error('the sample can be worked out');
    figures = answer;
    jobStore.getState().open(job, null);
    plate = livePart('plate') as LivePart;
  }, 60_000);

  const filledWith = (ids: readonly string[]) =>
    filledPart(plate, { job, regions: figures.regions, filled: () => new Set(ids) });

  test('is worn no deeper than the coat allows where it is filled, and as it was elsewhere', () => {
    const ids = figures.result.parts[0].regions.filter(({ action }) => action === 'fill').map(({ id }) => id);
    expect(ids.length).toBeGreaterThan(0);
    const [found, filled] = [plate.faces[0], filledWith(ids).faces[0]];
    const { label, ids: known } = figures.regions[0];
    let [inside, outside, wrong] = [0, 0, 0];
    for (let cell = 0; cell < label.length; cell++) {
      const isFilled = label[cell] > 0 && ids.includes(known[label[cell] - 1]);
      const before = found.map.depth[cell];
      // The coat's 0.5 mm.
      if (filled.map.depth[cell] !== (isFilled ? Math.min(0.5, before) : before)) wrong++;
      if (isFilled) inside++;
      else outside++;
    }
    expect(wrong).toBe(0);
    expect(Math.min(inside, outside)).toBeGreaterThan(100);
    expect(depthAt(found.map, found.face, 104, 1.5)).toBeGreaterThan(2);
    expect(depthAt(filled.map, filled.face, 104, 1.5)).toBeCloseTo(0.5, 6);
  });

  test('of which nothing is filled keeps its very maps, so that nothing is sent to the chip anew', () => {
    expect(filledWith([]).faces.length).toBe(plate.faces.length);
    for (const [i, face] of filledWith([]).faces.entries()) expect(face).toBe(plate.faces[i]);
  });
});

describe('the pair that is drawn', () => {
  const [plate, impeller] = job.parts;

  test('is the one the job names, also among several', () => {
    const spare = { ...plate, id: 'spare' };
    expect(namedPair({ parts: [spare, plate, impeller], clearance: job.clearance })).toEqual({
      plate: 'plate',
      impeller: 'impeller',
    });
  });

  test.each([
    ['no impeller', [plate], undefined, /Add an impeller/],
    ['no plate', [impeller], undefined, /Add a wear plate/],
    ['no clearance asked', [plate, impeller], undefined, /Ask for the clearance/],
    ['the plate of another name', [{ ...plate, id: 'other' }, impeller], job.clearance, /Add a wear plate/],
  ] as const)('says why there is none: %s', (_, parts, clearance, words) => {
    const pair = namedPair({ parts: [...parts], clearance });
    expect('without' in pair && pair.without).toMatch(words);
  });
});
