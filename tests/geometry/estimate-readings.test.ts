import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Mark, Readings } from '../../geometry/job/job.ts';
import { sheetPage } from '../../geometry/sheet/html.ts';
import { toResult } from '../../geometry/sheet/result.ts';
import { sheetText } from '../../geometry/sheet/text.ts';
import { toRadians } from '../../geometry/units.ts';
import { franke, seeded } from './depth/kriging/fields.ts';
import { readAtRandom, readings } from './depth/read-made.ts';
import { evenly, faceOf, job, madeImpeller, patch } from './made.ts';

const COARSE = { cell: 2 };
const field = (x: number, y: number) => 1 + 3 * franke((x + 160) / 320, (y + 160) / 320);
const strewn = (count: number, change: Partial<Readings> = {}) =>
  readings('face', readAtRandom(faceOf('face'), count, seeded(count), field), change);
const resultOf = (marks: readonly Mark[], repair = {}) => toResult(estimate(job(marks, {}, repair), COARSE));
const codes = (marks: readonly Mark[]) =>
  resultOf(marks)
    .warnings.map(({ code }) => code)
    .filter((code) => code.startsWith('reading'));

describe('the result', () => {
  const result = resultOf([patch([60, 80], [0, 30], 2), strewn(20)]);
  const [part] = result.parts;
  const [worth] = part.readings;

  test('names the mark by its place in the file, and what it rests on', () => {
    expect(worth).toMatchObject({ mark: 1, face: 'face', count: 20, used: 20, gaugeError: 0.1, given: [] });
    expect(part.standardError).toBe(worth.fillError);
    expect(part.lostError).toBe(worth.lostError);
    expect(worth.leaveOneOut?.of).toBe(20);
  });

  test('the order is as uncertain as the fill, with its waste on top', () => {
    // 10 % waste in the job.
    expect(result.filler.standardError).toBeCloseTo(1.1 * part.standardError, 12);
  });

  test('what was given is taken and said', () => {
    const covariance = { length: 50 };
    expect(resultOf([strewn(20, { covariance })]).parts[0].readings[0]).toMatchObject({
      given: ['length'],
      covariance: { length: 50 },
    });
  });

  test('without readings nothing is uncertain', () => {
    const plain = resultOf([patch([60, 80], [0, 30], 2)]);
    expect(plain.filler).toMatchObject({ standardError: 0, readings: null });
    expect(plain.parts[0]).toMatchObject({ standardError: 0, lostError: 0, readings: [] });
  });

  test('two marks of readings are independent: their variances add up', () => {
    const half = (from: number) => [
      [62, toRadians(from)] as const,
      [158, toRadians(from)] as const,
      [158, toRadians(from + 80)] as const,
      [62, toRadians(from + 80)] as const,
    ];
    const [one, other] = [strewn(12, { within: half(0) }), strewn(14, { within: half(180) })];
    const alone = [one, other].map((mark) => resultOf([mark]).parts[0].lostError);
    const both = resultOf([one, other]).parts[0].lostError;
    expect(both / Math.hypot(...alone)).toBeCloseTo(1, 2);
  });
});

describe('enough', () => {
  test('a pack that one reading cannot empty: enough; a limit of half a mL: not', () => {
    expect(resultOf([strewn(30)]).filler.readings).toMatchObject({ isEnough: true });
    const strict = resultOf([strewn(30)], { readingWorth: 500 }).filler.readings;
    expect(strict).toMatchObject({ isEnough: false, limit: 0.5 });
  });
  test('readings of what is left to the coat have no say in the order of putty', () => {
    const shallow = readings('bore', [
      [0, 3, 0.6],
      [0.4, 9, 0.7],
    ]);
    const alone = resultOf([strewn(120)]);
    const both = resultOf([strewn(120), shallow]);
    expect(both.parts[0].readings[1]).toMatchObject({ fillError: 0 });
    expect(both.parts[0].readings[1].next?.moves).toBeGreaterThan(alone.filler.readings?.moves ?? 0);
    expect(both.filler.readings?.moves).toBe(alone.filler.readings?.moves);
  });
  test('the more is read the less the next one tells', () => {
    const moves = [8, 30, 120].map((count) => resultOf([strewn(count)]).filler.readings?.moves ?? 0);
    expect(moves[1]).toBeLessThan(moves[0]);
    expect(moves[2]).toBeLessThan(moves[1]);
  });
});

describe('warnings', () => {
  test('a good set has none', () => {
    expect(codes([strewn(30)])).toEqual([]);
  });
  test('too few', () => {
    expect(codes([strewn(4)])).toEqual(['readings-few']);
  });
  test('off the face or in a hole: by their numbers in the list', () => {
    const off = { at: [300, 0] as const, depth: 1 };
    const mark = strewn(20);
    const [warning] = resultOf([{ ...mark, points: [...mark.points, off] }]).warnings;
    expect(warning).toMatchObject({ code: 'readings-off-face', field: 'parts[0].wear[0].points' });
    expect(warning.text).toContain('reading 21 is off the face');
  });
  test('twice at one place and far apart', () => {
    const mark = strewn(20);
    const [first] = mark.points;
    const again = { ...first, depth: first.depth + 2 };
    expect(codes([{ ...mark, points: [...mark.points, again] }])).toContain('readings-contradict');
  });
  test('a slip of the decimal point: 23 for 2.3 mm is found among smooth readings', () => {
    const mark = strewn(30);
    const slipped = mark.points.map((point, i) => (i === 11 ? { ...point, depth: 5 * point.depth } : point));
    const found = resultOf([{ ...mark, points: slipped }]).warnings.filter(
      ({ code }) => code === 'reading-far-off',
    );
    expect(found.map(({ text }) => text).join()).toContain('reading 12 is');
  });
  test('a covariance that fits none of them: one warning, not one a reading', () => {
    const random = seeded(9);
    const jagged = strewn(29, { gaugeError: 0, covariance: { shape: 'gaussian', length: 300, sill: 1 } });
    const points = jagged.points.map(({ at }) => ({ at, depth: 4 * random() }));
    expect(codes([{ ...jagged, points }])).toEqual(['readings-misfit']);
  });
  test('all off the face: the mark is named as one that changes nothing', () => {
    const all = readings('face', [[300, 0, 1]]);
    expect(resultOf([all]).warnings.map(({ code }) => code)).toContain('mark-off-face');
  });
});

describe('the sheet', () => {
  const done = estimate(job([strewn(20)]), COARSE);
  test('shows value +- two standard errors, where to read next, and how it was found', () => {
    const text = sheetText(done).replace(/\s+/g, ' ');
    const { volume, standardError } = toResult(done).filler;
    const decimals = volume >= 99.95 ? 0 : 1;
    expect(text).toContain(
      `Mix ${volume.toFixed(decimals)} +- ${(2 * standardError).toFixed(decimals)} mL of putty`,
    );
    expect(text).toContain('Measure next at plate face, radius');
    expect(text).toContain('Ordinary kriging');
    expect(sheetPage(done)).toContain('Gauge readings');
  });
  test('without readings it says nothing of them', () => {
    const text = sheetText(estimate(job([patch([60, 80], [0, 30], 2)]), COARSE));
    expect(text).not.toContain('+-');
    expect(text).not.toContain('Gauge readings');
  });
});

describe('balance', () => {
  const rotor = {
    part: 'impeller',
    mass: 14_000,
    speed: 1450,
    grade: 6.3,
    planes: 1,
    planeSpacing: null,
    asFound: { amount: 0, angle: 0 },
    densityError: 0,
    corrections: [],
  } as const;
  const balanceOf = (marks: readonly Mark[]) => {
    const made = madeImpeller({}, {}, marks);
    return estimate({ ...job([]), parts: [made], rotor }, COARSE).balance;
  };
  const side = (depth: number) =>
    readings('vane-1/pressure', [
      [10, 5, depth],
      [60, 15, depth],
      [120, 25, depth],
      [150, 8, depth],
    ]);
  test('readings make the net vector uncertain, a patch does not', () => {
    expect(balanceOf([evenly('vane-1/pressure', 0.5)])?.standardError).toBe(0);
    const read = balanceOf([side(0.5)]);
    expect(read?.standardError).toBeGreaterThan(1);
    expect(read?.chanceOver).toBeGreaterThan(0);
    expect(read?.chanceOver).toBeLessThan(1);
  });
});
