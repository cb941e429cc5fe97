/**
 * The figures beside the volumes and the plan of the day, held to the job format by a checker that shares nothing with geometry/
 * (brute/day.mjs): on every sample and worked job, on seeded jobs of all kinds, and with breaches planted to see that it sees.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { type Result, toResult } from '../../geometry/sheet/result.ts';
import { breaches, jobAt } from './brute/day.mjs';
import { variedJob } from './varied-jobs.ts';

/** mm; the rules hold for whatever volume the map gives, so the map may be coarse. */
const CELL = 4;
/** Three estimates a job, on two cores shared with a browser. */
const SLOW = 60_000;

const known = new Map<string, Result>();

function resultOf(job: JobFile): Result {
  const text = JSON.stringify(job);
  const result = known.get(text) ?? worked(text);
  known.set(text, result);
  return result;
}

function worked(text: string): Result {
  const reading = readJob(text);
  if ('faults' in reading) throw new Error(JSON.stringify(reading.faults));
  return toResult(estimate(measured(reading.job), { cell: CELL }));
}

function breachesIn(job: JobFile): string[] {
  const others = [10, 30].map((surface) => ({ surface, result: resultOf(jobAt(job, surface)) }));
  return breaches(job, resultOf(job), others);
}

const files = ['samples', 'tests/worked/jobs'].flatMap((folder) =>
  readdirSync(join(import.meta.dirname, '../..', folder))
    .filter((name) => name.endsWith('.job.json'))
    .map((name) => join(folder, name)),
);

test.each(files)('%s keeps every rule', { timeout: SLOW }, (file) => {
  const job: JobFile = JSON.parse(readFileSync(join(import.meta.dirname, '../..', file), 'utf8'));
  expect(job.plan === undefined ? breaches(job, resultOf(job)) : breachesIn(job)).toEqual([]);
});

const [LOTS, OF] = [15, 10];

test.each(Array.from({ length: LOTS }, (_, lot) => OF * lot))(
  'varied jobs from seed %i on keep every rule',
  { timeout: SLOW },
  (first) => {
    for (let seed = first; seed < first + OF; seed += 1) {
      // One in three is also laid out in another shop.
      const job = variedJob(seed);
      const found = seed % 3 === 0 ? breachesIn(job) : breaches(job, resultOf(job));
      expect.soft(found, `job ${seed}`).toEqual([]);
    }
  },
);

test(
  'the varied jobs hold what makes a day hard',
  () => {
    const results = Array.from({ length: LOTS * OF }, (_, seed) => resultOf(variedJob(seed)));
    const share = (holds: (result: Result) => boolean) => results.filter(holds).length / results.length;
    expect(share(({ plan }) => plan.length === 0)).toBeGreaterThan(0.02);
    expect(share(({ filler }) => filler.batches.length > 1)).toBeGreaterThan(0.15);
    expect(share(({ filler }) => filler.passes > 1)).toBeGreaterThan(0.2);
    expect(share(({ coat }) => (coat.layers[0]?.mixes.length ?? 0) > 1)).toBeGreaterThan(0.15);
    expect(share(({ plan }) => plan.some(({ trouble }) => trouble === 'window-missed'))).toBeGreaterThan(0.1);
    expect(share(({ plan }) => plan.some(({ trouble }) => trouble === 'outside-shift'))).toBeGreaterThan(
      0.02,
    );
    expect(share(({ plan }) => plan.length > 0 && plan.every(({ trouble }) => !trouble))).toBeGreaterThan(
      0.3,
    );
    expect(share(({ filler, coat }) => filler.selfMixing || coat.selfMixing)).toBeGreaterThan(0.1);
    expect(share(({ climate }) => climate?.fit === true)).toBeGreaterThan(0.05);
  },
  SLOW,
);

/** A plate in three mixes and two layers, two coats, a short day with a break. */
const HARD_DAY: JobFile = {
  format: 1,
  parts: [
    {
      id: 'plate',
      kind: 'wear-plate',
      density: 7.2,
      outerDiameter: 200,
      boreDiameter: 80,
      thickness: 20,
      wear: [{ kind: 'patch', face: 'face', first: [50, 90], second: [0, 90], depth: 8 }],
    },
  ],
  filler: {
    density: 2.3,
    ratioByVolume: [2, 1],
    densityA: 2.4,
    densityB: 2.1,
    workingTime: { minutes: 20, at: 25, mass: 40 },
    firmsUp: { from: 30, to: 60, at: 25 },
    hard: { minutes: 480, at: 25 },
    mostBuild: 5,
  },
  climate: { air: 21, surface: 20, humidity: 55 },
  plan: { start: '2026-12-01T07:00', shiftEnd: '15:00', breaks: [{ at: '09:30', minutes: 15 }] },
};

type Open<T> = { -readonly [K in keyof T]: Open<T[K]> };

describe('the checker catches', () => {
  const right = resultOf(HARD_DAY);

  test('nothing in a sound day', () => {
    expect(right.filler.batches.length).toBeGreaterThan(2);
    expect(right.filler.passes).toBe(2);
    expect(breaches(HARD_DAY, right)).toEqual([]);
  });

  test.each<[string, RegExp, (result: Open<Result>) => void]>([
    ['a gram too much', /batch 1: .* is nearer/, (r) => weigh(r).partA++],
    ['half a gram on a scale of grams', /is no step of 1 g/, (r) => (weigh(r).partB += 0.5)],
    ['a mix left unweighed', /batch 1 is not weighed/, (r) => (r.filler.batches[0].weigh = null)],
    ['a ratio turned about', /batch 1 partA mass/, (r) => (r.filler.batches[0].partA.mass /= 2)],
    ['a mix too few', /batches, should be/, (r) => r.filler.batches.pop()],
    ['a layer that no mix lays', /no pass 2/, (r) => r.filler.batches.forEach(firstLayerOnly)],
    [
      'the doubling rule where none was asked for',
      /filler.firmsUp.to/,
      (r) => (firmsUp(r).to = 60 * Math.SQRT2),
    ],
    ['a dew point by other coefficients', /climate.dewPoint/, (r) => (climate(r).dewPoint = 11.6158)],
    ['a dry part called wet', /climate.fit/, (r) => (climate(r).fit = false)],
    ['a comb read one tooth off', /comb/, (r) => (r.coat.comb = { wet: 275, dry: 300 })],
    ['waste as a share of the need', /lostShare/, (r) => (r.coat.lostShare = 0.2)],
    ['a coat brushed too fast', /coat 2 mix 1 placing/, (r) => (r.coat.layers[1].mixes[0].placing /= 2)],
    ['a face left out of the coat', /coat.faces by area/, (r) => r.coat.faces.pop()],
    ['a step left out', /touch-test:1 is missing/, (r) => drop(r, 'touch-test:1')],
    ['a step done twice', /two steps have one id/, (r) => r.plan.push({ ...step(r, 'check') })],
    ['a fill on wet solvent', /before flash-off:plate ends/, (r) => move(r, 'fill:1', -5)],
    [
      'a layer on soft putty',
      /fill:\d starts at .* before firm-up:1 ends/,
      (r) => move(r, lastFill(r), -200),
    ],
    ['two layers in one mix, and not a word', /lays two layers/, (r) => r.plan.forEach(keepQuiet)],
    ['a dressing too soon', /its window opens/, (r) => move(r, 'dress:1', -10)],
    ['a dressing too late', /its window closes/, (r) => move(r, 'dress:1', 50)],
    ['a false alarm', /its window closes/, (r) => (step(r, 'dress:1').trouble = 'window-missed')],
    ['a coat past its window', /coat:2.1 ends at .* its window closes/, (r) => move(r, 'coat:2.1', 900)],
    ['a coat on undressed putty', /coat:1.1 starts at .* before dress:/, (r) => move(r, 'coat:1.1', -60)],
    [
      'a window of its own making',
      /window.closes/,
      (r) => (step(r, 'coat:2.1').window = { opens: 0, closes: 9000 }),
    ],
    ['two things at once', /want the hands at once/, (r) => move(r, 'blast:plate', -1)],
    ['work in the break', /wash:plate at 140 .* outside the shop's hours/, (r) => move(r, 'wash:plate', 140)],
    ['work in the night', /test at .* outside the shop's hours/, (r) => move(r, 'test', 600)],
    [
      'a service before it is hard',
      /dress-hard:plate starts at .* before harden ends/,
      (r) => move(r, 'dress-hard:plate', -300),
    ],
    ['time that stands still', /harden minutes/, (r) => (step(r, 'harden').minutes = 960)],
    ['waiting that begins late', /firm-up:1 start/, (r) => move(r, 'firm-up:1', 1)],
    ['an end before the end', /day.end/, (r) => (r.day.end -= 1)],
    ['hands that wait', /day.handsOn/, (r) => (r.day.handsOn += 10)],
  ])('%s', (_, sentence, plant) => {
    const result = structuredClone(right) as Open<Result>;
    plant(result);
    const found = breaches(HARD_DAY, result);
    expect(
      found.some((one) => sentence.test(one)),
      `${sentence} in\n${found.join('\n')}`,
    ).toBe(true);
  });

  test('a winter that is no slower', () => {
    const others = [{ surface: 10, result: right }];
    expect(breaches(HARD_DAY, right, others).join()).toMatch(/elsewhere at 10 degC: end/);
  });
});

function there<T>(value: T | null | undefined): T {
  if (value === null || value === undefined)
    throw new Error('the hard day lacks what a breach is planted in');
  return value;
}

const weigh = (r: Open<Result>) => there(r.filler.batches[0].weigh);
const firmsUp = (r: Open<Result>) => there(r.filler.firmsUp);
const climate = (r: Open<Result>) => there(r.climate);
const step = (r: Open<Result>, id: string) => there(r.plan.find((one) => one.id === id));
const lastFill = (r: Open<Result>) => `fill:${r.filler.batches.length}`;

function move(r: Open<Result>, id: string, minutes: number): void {
  step(r, id).start += minutes;
}

function drop(r: Open<Result>, id: string): void {
  r.plan.splice(r.plan.indexOf(step(r, id)), 1);
}

function firstLayerOnly(batch: Open<Result['filler']['batches'][number]>): void {
  for (const cover of batch.covers) cover.pass = 1;
}

function keepQuiet(one: Open<Result['plan'][number]>): void {
  one.note = '';
}
