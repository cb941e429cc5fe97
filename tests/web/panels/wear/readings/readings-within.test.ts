import { expect, it } from 'vitest';
import type { MarkFile } from '../../../../../geometry/job/job-file.ts';
import {
  everywhere,
  lastAreaFor,
  withinArea,
} from '../../../../../web/panels/wear/readings/reading-edits.ts';
import type { ReadingsMark } from '../../../../../web/tools/table-readings.ts';
import { jobOf, PLATES } from '../../../tools/plates.ts';

const read: ReadingsMark = { kind: 'readings', face: 'face', points: [[60, 0, 1]], gaugeError: 0.2 };
const pit: MarkFile = { kind: 'pit', face: 'face', at: [70, 10], diameter: 8, depth: 2, form: 'bowl' };
const outline: [number, number][] = [
  [50, 0],
  [90, 0],
  [90, 40],
];
const area: MarkFile = { kind: 'area', face: 'face', outline, depth: 2 };

it('readings take the outline of an area, which goes; what else was marked stays in its order', () => {
  const job = jobOf(PLATES.round, [area, pit, read]);
  const [{ wear }] = withinArea(job, 0, 2, 0).parts;
  expect(wear).toEqual([pit, { ...read, within: outline }]);
});

it('back on the whole face they are as they were', () => {
  const job = jobOf(PLATES.round, [pit, { ...read, within: outline }]);
  expect(everywhere(job, 0, 1).parts[0].wear).toEqual([pit, read]);
});

it('only the last area of their own face is offered', () => {
  const onBore: MarkFile = { ...area, face: 'bore' };
  expect(lastAreaFor([area, area, onBore, read], read)).toBe(1);
  expect(lastAreaFor([onBore, read], read)).toBeNull();
});

it('a place that is no area, or no readings, changes nothing', () => {
  const job = jobOf(PLATES.round, [pit, read]);
  expect(withinArea(job, 0, 1, 0)).toBe(job);
  expect(everywhere(job, 0, 0)).toBe(job);
});
