import { describe, expect, test } from 'vitest';
import type { JobFile, PartFile } from '../../../../geometry/job/job-file.ts';
import { readJobValue } from '../../../../geometry/job/read-job.ts';
import type { SectionProfile } from '../../../../geometry/sheet/section.ts';
import { layChoices } from '../../../../web/panels/wear/straightedge/lay-words.ts';
import {
  startSection,
  withoutSection,
  withSection,
  withSections,
} from '../../../../web/panels/wear/straightedge/section-edits.ts';
import { repairWords, sectionSummary } from '../../../../web/panels/wear/straightedge/section-text.ts';
import { impellerJob } from '../../tools/impellers.ts';
import { jobOf, PLATES } from '../../tools/plates.ts';

const [round] = jobOf(PLATES.round).parts;
const [outline] = jobOf(PLATES.outline).parts;
const [impeller] = impellerJob().parts;

describe('the ways to lay it are called by the face', () => {
  test.each([
    [round, 'face', ['Line', 'Spoke', 'Ring']],
    [round, 'bore', ['Line', 'Ring', 'Straight down']],
    [outline, 'face', ['Line', 'Along x', 'Along y']],
    [impeller, 'shroud/front', ['Line', 'Spoke', 'Ring']],
    [impeller, 'vane-1/pressure', ['Line', 'Along', 'Up']],
    [impeller, 'vane-1/tip', ['Line', 'Along', 'Across']],
    [impeller, 'vane-1/leading-edge', ['Line', 'Up', 'Across']],
  ] as const)('%#: %s %s', (part, face, words) => {
    expect(layChoices(part, face).map(({ label }) => label)).toEqual(words);
  });
});

describe('a section to be typed over', () => {
  test.each([
    [round, 'face'],
    [round, 'bore'],
    [outline, 'face'],
    [impeller, 'shroud/back'],
    [impeller, 'vane-2/suction'],
    [impeller, 'vane-2/tip'],
    [impeller, 'vane-2/trailing-edge'],
  ] as const)('%# is sound, however it is laid', (part, face) => {
    for (const { value } of layChoices(part, face)) {
      const job = withSections({ format: 1, parts: [part] }, 0, () => [startSection(part, face, value)]);
      expect(readJobValue(job)).not.toHaveProperty('faults');
    }
  });

  test('runs through the middle of the face', () => {
    expect(startSection(round, 'face', 'along-first')).toEqual({ kind: 'along-first', face: 'face', at: 0 });
    expect(startSection(round, 'face', 'along-second')).toMatchObject({ at: 70 });
    expect(startSection(round, 'face', 'line')).toMatchObject({ from: [40, 0], to: [100, 0] });
    expect(startSection(outline, 'face', 'line')).toMatchObject({ from: [0, 45], to: [120, 45] });
  });
});

test('sections are changed and taken away by their place; a part without any says nothing of them', () => {
  const ring = (at: number) => ({ kind: 'along-second', face: 'face', at }) as const;
  const job: JobFile = { format: 1, parts: [round] };
  const two = withSections(job, 0, () => [ring(60), ring(70)]);
  expect(withSection(two, 0, 1, ring(80)).parts[0].sections).toEqual([ring(60), ring(80)]);
  expect(withoutSection(two, 0, 0).parts[0].sections).toEqual([ring(70)]);
  expect(withoutSection(withoutSection(two, 0, 0), 0, 0)).toEqual(job);
});

describe('in words', () => {
  test('a section says how and where it lies, in the units of the screen', () => {
    const line = { kind: 'line', face: 'face', from: [60, 10], to: [95.26, 200] } as const;
    expect(sectionSummary(line, round, 'mm')).toEqual({
      what: 'Line',
      where: 'from radius 60 mm, 10° to radius 95.3 mm, 200°',
    });
    expect(sectionSummary({ kind: 'along-second', face: 'face', at: 76.2 }, round, 'in').where).toBe(
      'at radius 3 in',
    );
    expect(
      sectionSummary({ kind: 'along-first', face: 'vane-2/tip', at: 1 }, impeller as PartFile, 'mm'),
    ).toEqual({
      what: 'Along, vane 2, tip',
      where: 'at across 1 mm',
    });
  });

  const place = (at: number, depth: number, putty: number, isLeft = false) => ({
    at,
    depth,
    putty,
    isLeft,
    wall: 18,
  });
  const profile = (over: Partial<SectionProfile>): SectionProfile => ({
    line: { length: 40 } as SectionProfile['line'],
    runs: [],
    deepest: { ...place(10, 3, 3), point: [60, 0], action: 'fill' },
    readings: [],
    film: 0,
    isFillKnown: true,
    ...over,
  });

  test('what will be done says how much of the line is filled and left', () => {
    const runs = [
      [place(0, 3, 3), place(10, 3, 3), place(12, 0, 0), place(20, 0.5, 0, true), place(25, 0.5, 0, true)],
    ];
    expect(repairWords(profile({ runs, film: 0.5 }), 'mm')).toBe(
      'Putty on 10 mm of it, up to 3.00 mm thick. Wear on 5 mm of it is left for the coat to fill. Coat 0.50 mm thick over all of it.',
    );
    expect(repairWords(profile({ runs }), 'mm')).toContain('is left bare: this face is not coated');
  });

  test('what is not known, not there or worn through is said as such', () => {
    expect(repairWords(profile({ deepest: null }), 'mm')).toBe('The line meets no metal of this face.');
    expect(repairWords(profile({ isFillKnown: false }), 'mm')).toBe(
      'Putty and coat follow as soon as the figures are worked out.',
    );
    const through = { ...place(10, 18, 18), point: [60, 0], action: 'fill' } as const;
    expect(repairWords(profile({ deepest: through }), 'mm')).toMatch(/^The wall is worn through here/);
  });
});
