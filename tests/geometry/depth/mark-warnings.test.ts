import { describe, expect, test } from 'vitest';
import { markWarnings } from '../../../geometry/depth/mark-warnings.ts';
import { replay } from '../../../geometry/depth/replay.ts';
import type { Mark } from '../../../geometry/job/job.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { job, patch, pit, plate, polar } from '../made.ts';

/** The plate is 320 / 120 mm with holes of 14 mm on 290 mm at 0, 60 .. degrees; the bore is 18 mm deep. */
const landedOn = (marks: readonly Mark[]): Set<Mark> => {
  const landed = new Set<Mark>();
  for (const face of wearPlate(plate(), 2).faces) replay(face, marks, { landed });
  return landed;
};
const warningsOf = (marks: readonly Mark[]) => markWarnings(job(marks), 0, landedOn(marks));
const misses = (mark: Mark) => warningsOf([mark]).length === 1;

const brush = { face: 'face', radius: 5, depth: 1, edge: 'hard', clear: false, blend: 'deepest' } as const;
const stroke = (...path: (readonly [number, number])[]): Mark => ({ ...brush, kind: 'stroke', path });
const smooth = (...path: (readonly [number, number])[]): Mark => ({
  kind: 'smooth',
  face: 'face',
  path,
  radius: 5,
  strength: 1,
});
const area = (...outline: (readonly [number, number])[]): Mark => ({
  kind: 'area',
  face: 'face',
  blend: 'deepest',
  outline,
  depth: 1,
});

describe('a mark lies wholly off its face when it touches no cell of it', () => {
  test('a patch in the bore, beyond the rim, or within a hole', () => {
    expect(misses(patch([10, 55], [0, 90], 1))).toBe(true);
    expect(misses(patch([165, 200], [0, 360], 1))).toBe(true);
    expect(misses(patch([143, 147], [-0.8, 0.8], 1))).toBe(true);
    expect(misses(patch([10, 65], [0, 90], 1))).toBe(false);
    expect(misses(patch([143, 155], [-0.8, 0.8], 1))).toBe(false);
  });
  test('a patch below the end of the bore', () => {
    const below = (from: number, to: number): Mark => ({
      ...patch([0, 1], [0, 1], 1),
      face: 'bore',
      first: [0, 1],
      second: [from, to],
    });
    expect(misses(below(18.5, 30))).toBe(true);
    expect(misses(below(17, 30))).toBe(false);
  });
  test('a pit on the axis, and one whose rim comes over the edge of the bore', () => {
    expect(misses(pit(0, 0, 100, 1, 'cone'))).toBe(true);
    expect(misses(pit(0, 0, 130, 1, 'cone'))).toBe(false);
  });
  test('an area far out, within the bore, and round everything', () => {
    expect(misses(area(polar(5000, 0), polar(6000, 10), polar(5000, 20)))).toBe(true);
    expect(misses(area(polar(50, 0), polar(50, 120), polar(50, 240)))).toBe(true);
    expect(misses(area(polar(5000, 0), polar(5000, 120), polar(5000, 240)))).toBe(false);
  });
  test('strokes that pass by, and one that crosses the plate between points beside it', () => {
    for (const kind of [stroke, smooth]) {
      expect(misses(kind(polar(170, 0), polar(170, 10)))).toBe(true);
      expect(misses(kind(polar(163, 0)))).toBe(false);
      expect(misses(kind(polar(300, 0), polar(300, 90)))).toBe(true);
      expect(misses(kind(polar(170, 0), polar(170, 60)))).toBe(false);
    }
  });
});

describe('markWarnings', () => {
  const off = pit(400, 0, 10, 1, 'flat');
  const on = pit(100, 0, 10, 1, 'flat');
  test('names one mark by its number and kind', () => {
    expect(warningsOf([on, off, on])).toEqual([
      {
        code: 'mark-off-face',
        field: 'parts[0].wear[1]',
        text: 'plate: mark 2, a pit on face, lies wholly off that face and changes nothing. Check where it is.',
      },
    ]);
  });
  test('names a few by their numbers and counts the rest', () => {
    const [two] = warningsOf([{ ...off }, on, patch([165, 200], [0, 300], 1)]);
    expect(two.text).toBe(
      'plate: marks 1 and 3 lie wholly off their faces and change nothing. Check where they are.',
    );
    const [five] = warningsOf([on, { ...off }, { ...off }, { ...off }, { ...off }, { ...off }]);
    expect(five.text).toBe(
      'plate: marks 2, 3, 4 and 2 more lie wholly off their faces and change nothing. Check where they are.',
    );
  });
  test('counts the marks as the file does', () => {
    const marks = [on, off];
    const made = { ...job(marks), unsupported: [{ field: 'parts[0].wear[0]', what: 'the mark "scan"' }] };
    expect(markWarnings(made, 0, landedOn(marks))[0].field).toBe('parts[0].wear[2]');
  });
});
