import { describe, expect, it } from 'vitest';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { type EstimateNews, estimateService } from '../../../web/worker/estimate-job.ts';

const { estimateJob, sheetOfLast } = estimateService();
const plate = newPlateJob();
const worn: JobFile = {
  ...plate,
  parts: plate.parts.map((part) => ({
    ...part,
    wear: [
      { kind: 'patch', face: 'face', first: [90, 120], second: [0, 360], depth: 4 },
      { kind: 'pit', face: 'face', at: [75, 45], diameter: 8, depth: 2, form: 'flat' },
    ],
  })),
};

const ofWorn = estimateJob(worn);

describe('what the worker hands over', () => {
  it('is the result in the units of the file: a ring 4 mm deep from r 90 to r 120 holds pi (120^2 - 90^2) 4 mm3', () => {
    if (!('result' in ofWorn)) throw new Error(JSON.stringify(ofWorn));
    // Closed form: the ring, and the flat pit of 8 mm across and 2 mm deep.
    const cm3 = (Math.PI * (120 ** 2 - 90 ** 2) * 4 + Math.PI * 4 ** 2 * 2) / 1000;
    expect(ofWorn.result.parts[0].lostVolume / cm3).toBeCloseTo(1, 2);
  });

  it('names the region of every cell, as many regions as the result lists', () => {
    if (!('regions' in ofWorn)) throw new Error(JSON.stringify(ofWorn));
    const face = ofWorn.regions.find((known) => known.face === 'face');
    const listed = ofWorn.result.parts[0].regions.filter((region) => region.face === 'face');
    expect(face?.ids).toEqual(listed.map((region) => region.id));
    expect(face?.label).toHaveLength((face?.rows ?? 0) * (face?.columns ?? 0));
    expect(new Set(face?.label)).toEqual(new Set([0, 1, 2]));
  });

  it('can be handed over: no class and no function in it', () => {
    expect(structuredClone(ofWorn)).toEqual(ofWorn);
  });

  it('is the printable sheet too, of the job asked for last', () => {
    estimateJob({ ...worn, title: 'Plate <4>' });
    expect(sheetOfLast()).toContain('Plate &lt;4&gt;');
    expect(sheetOfLast()).not.toMatch(/<script|style=|<html/);
  });

  it('of a job with faults is the faults, never a throw, and no sheet', () => {
    expect(estimateJob({ ...plate, parts: [] })).toMatchObject({ faults: [{ field: 'parts' }] });
    expect(sheetOfLast()).toBeNull();
  });
});

describe('gauge readings', () => {
  const reading: JobFile = {
    ...plate,
    parts: plate.parts.map((part) => ({
      ...part,
      wear: [
        { kind: 'pit', face: 'face', at: [75, 45], diameter: 8, depth: 2, form: 'flat' },
        {
          kind: 'readings',
          face: 'face',
          points: Array.from({ length: 8 }, (_, i): [number, number, number] => [
            80 + 8 * i,
            50 * i,
            1 + (i % 3),
          ]),
        },
      ],
    })),
  };

  it('their surface is told at once, by the places of part and mark, and can be handed over', () => {
    const news: EstimateNews[] = [];
    const answer = estimateService().estimateJob(reading, (one) => news.push(one));
    expect('result' in answer).toBe(true);
    const [told] = news.filter((one) => 'surface' in one);
    expect(told.surface).toMatchObject({ part: 0, mark: 1 });
    expect(structuredClone(told)).toEqual(told);
  });

  it('are judged once, whatever else changes', () => {
    const service = estimateService();
    const surfaceOf = (job: JobFile) => {
      const news: EstimateNews[] = [];
      service.estimateJob(job, (one) => news.push(one));
      return news.flatMap((one) => ('surface' in one ? [one.surface.surface] : []))[0];
    };
    const first = surfaceOf(reading);
    expect(surfaceOf({ ...reading, title: 'another' })).toBe(first);
    const [part] = reading.parts;
    expect(surfaceOf({ ...reading, parts: [{ ...part, density: 8 }] })).toBe(first);
    expect(surfaceOf({ ...reading, parts: [{ ...part, outerDiameter: 330 } as typeof part] })).not.toBe(
      first,
    );
  });
});
