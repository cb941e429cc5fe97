import { beforeAll, describe, expect, it, test } from 'vitest';
import { type Estimate, estimate as estimateJob } from '../../../geometry/estimate.ts';
import type { Job } from '../../../geometry/job/job.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import { type Result, toResult } from '../../../geometry/sheet/result.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { unworn, WORN_JOB, worn } from './worn-plate.ts';

/** Coarse: these tests are about words. */
const estimateOf = (job: Job) => estimateJob(job, { cell: 3 });

let estimate: Estimate;
let result: Result;
let lines: string[];
beforeAll(() => {
  estimate = worn();
  result = toResult(estimate);
  lines = sheetText(estimate).split('\n');
});

describe('sheetText', () => {
  it('says first how much to mix, in how many mixes', () => {
    expect(lines[2]).toBe(`Mix ${figure(result.filler.volume)} mL of putty in 1 mix`);
    const { partA, partB } = result.filler;
    expect(lines[3].trim()).toBe(
      `A ${figure(partA.volume)} mL or ${figure(partA.mass)} g, B ${figure(partB.volume)} mL or ${figure(partB.mass)} g`,
    );
  });

  it('stays about 100 columns wide', () => {
    for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(100);
  });

  it('lists the regions deepest first with what is done to each', () => {
    const from = lines.indexOf('Regions of plate, deepest first');
    const rows = lines.slice(from + 2, from + 6);
    const depths = rows.map((row) => Number(/\b(\d+\.\d\d)\b/.exec(row)?.[1]));
    expect(depths).toEqual([...depths].sort((a, b) => b - a));
    expect(rows[3]).toContain('fill (chosen)');
    expect(rows[0]).toMatch(/radius 12\d mm, angle \d+ deg/);
  });

  it('has a section for every part of the sheet, in the order of the work', () => {
    const titles = lines.filter((line) => /^[A-Z]/.test(line)).map((line) => line.split(/,| of /)[0]);
    const wanted = [
      'Faces',
      'Regions',
      'Regions',
      'Mixes',
      'Coats',
      'Warnings',
      'Take care',
      'How it was worked out',
    ];
    expect(titles.filter((title) => wanted.includes(title))).toEqual(wanted);
  });

  it('says plainly when nothing is worn', () => {
    const text = sheetText(unworn());
    expect(text).toMatch(/^Repair sheet\n\nNothing to fill\n/);
    expect(text).not.toContain('Mixes');
    expect(text).not.toContain('NaN');
  });
});

describe('what the sheet cannot count', () => {
  const left = (field: string) => ({ field, what: 'the mark "edge" on "plate:face"' });

  it('is said under every figure it is missing from', () => {
    const text = sheetText(
      estimateOf({ ...WORN_JOB, unsupported: [left('parts[0].wear[4]'), left('parts[2]')] }),
    );
    expect(text).toMatch(
      /^Mix .* of putty.*\n {4}without 2 parts or marks not worked out yet, see the warnings$/m,
    );
    expect(text).toMatch(/^Mix .* of coat.*\n {4}without 2 parts or marks not worked out yet/m);
    expect(text).toMatch(/^plate: .* of wall left\n {4}without 1 part or mark not worked out yet/m);
  });

  it('does not make "nothing to fill" of a job that has only such parts', () => {
    const text = sheetText(estimateOf({ ...WORN_JOB, parts: [], unsupported: [left('parts[0]')] }));
    expect(text).toMatch(/^Nothing to fill\n {4}without 1 part or mark not worked out yet/m);
    expect(text).not.toContain('Faces');
  });

  it('says nothing of sections that add no wear', () => {
    const text = sheetText(estimateOf({ ...WORN_JOB, unsupported: [left('climate')] }));
    expect(text).not.toContain('not worked out yet, see');
  });
});

test('names from the file cannot steer the terminal', () => {
  const steering = '\u001b[2Jred\u0007';
  const job = {
    ...WORN_JOB,
    title: steering,
    filler: { ...WORN_JOB.filler, packs: [{ label: steering, mass: 1000, volume: null, selfMixing: false }] },
  };
  // Only line breaks are left of the control characters.
  expect(sheetText(estimateOf(job))).not.toMatch(/[^\P{Cc}\n]/u);
});

describe('figure', () => {
  it.each([
    [142.3, '142'],
    [99.96, '100'],
    [99.94, '99.9'],
    [47.31, '47.3'],
    [9.996, '10.0'],
    [9.99, '9.99'],
    [0.853, '0.85'],
    [0, '0.00'],
    [-3e-15, '0.00'],
    [-0.005, '-0.01'],
    [1234.5, '1235'],
  ])('prints %f as %s', (value, text) => {
    expect(figure(value)).toBe(text);
  });
});
