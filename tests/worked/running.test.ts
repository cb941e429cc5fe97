/**
 * The running clearance, the metal left, the flow test and the wear history, held to the job format by calculations that share nothing with geometry/
 * (brute/gap.mjs, brute/wall-rules.mjs, brute/flow.mjs, brute/history.mjs): on small jobs that each stand for one thing, on seeded jobs of all kinds, and with
 * breaches planted to see that it sees. Numbers worked out by hand stand in the table.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { type Result, toResult } from '../../geometry/sheet/result.ts';
import { breachesOfFlow } from './brute/flow-rules.mjs';
import { breachesOfGap } from './brute/gap-rules.mjs';
import { breachesOfHistory } from './brute/history-rules.mjs';
import { breachesOfLevers } from './brute/lever-rules.mjs';
import { breachesOfWalls } from './brute/wall-rules.mjs';
import { runningJob } from './running-jobs.ts';

/** mm; two cells make a ring of the mean, which is to be 1 mm wide. */
const CELL = 0.5;
/** Two cores are shared with a browser. */
const SLOW = 60_000;

function resultOf(job: JobFile): Result {
  const reading = readJob(JSON.stringify(job));
  if ('faults' in reading) throw new Error(JSON.stringify(reading.faults));
  return toResult(estimate(measured(reading.job), { cell: CELL }));
}

const breaches = (job: JobFile, result: Result) => [
  ...breachesOfGap(job, result, CELL),
  ...breachesOfFlow(job, result),
  ...breachesOfHistory(job, result),
  ...breachesOfWalls(job, result),
];

const folder = join(import.meta.dirname, 'running');
const jobIn = (file: string): JobFile => JSON.parse(readFileSync(file, 'utf8'));
const small = (name: string) => jobIn(join(folder, `${name}.job.json`));
const sample = jobIn(join(import.meta.dirname, '../../samples/facing-pair.job.json'));

type Ends = readonly [least: number, most: number];

/** Ends of the gap by hand, mm: as found, filled, coated; where they hang on a slope, none. Films are 0.5 mm a face unless said. */
interface ByHand {
  readonly ends: readonly [asFound: Ends, filled: Ends, coated: Ends];
  readonly verdict: string;
  readonly likely?: string;
}

const hand = (asFound: Ends, filled: Ends, coated: Ends, verdict: string, likely = verdict): ByHand => ({
  ends: [asFound, filled, coated],
  verdict,
  likely,
});

const STANDS_FOR: Readonly<Record<string, readonly [what: string, byHand: ByHand | null]>> = {
  'nothing-worn': ['1.5 as new, less two films', hand([1.5, 1.5], [1.5, 1.5], [0.5, 0.5], 'fit')],
  'uniform-ring': [
    'a ring 0.6 deep, too shallow to fill, runs all the way round',
    hand([1.2, 1.8], [1.2, 1.8], [0.2, 0.8], 'tight'),
  ],
  'one-tip': ['1.5 off one tip of three', hand([1.4, 2.9], [1.4, 1.4], [0.4, 0.4], 'fit')],
  'tips-alike': ['every tip worn alike on a slope, round nose, height tapering', null],
  'arc-camber': ['vanes drawn as arcs, the other way round, tapering in thickness', null],
  'dished-at-the-closest': ['a dished face and raked tips: cone and heights open the gap', null],
  'outline-plate': ['a plate of its own outline with a square window about the shaft', null],
  'left-regions': [
    'overruled: 1.6 left on the plate and 2 on one tip, 0.7 filled',
    hand([1.2, 4.8], [1.2, 4.8], [0.2, 3.8], 'both'),
  ],
  'bare-faces': ['no coat on either running face', hand([0.4, 3.1], [0.4, 0.4], [0.4, 0.4], 'fit')],
  'one-tip-coated': [
    'a film on one tip alone, which has 0.7 left open',
    hand([0.9, 1.6], [0.9, 1.6], [0.4, 1.1], 'fit'),
  ],
  'shim-negative': [
    'a shim taken out, 0.35; every tip 0.8 and the plate 0.9 left, no coat',
    hand([1.25, 2.15], [1.25, 2.15], [1.25, 2.15], 'wide'),
  ],
  'one-coat': ['one coat of 0.15 on either face', null],
  'stop-short': [
    'the filler stops 0.5 under both faces, 2 and 1.5 deep; the coats close it',
    hand([2.3, 4.3], [1.3, 1.8], [0.3, 0.8], 'fit'),
  ],
  'allowance-on-the-plate-alone': [
    'it stops short on the plate, three quarters of a turn',
    hand([2.7, 4.7], [1.2, 1.7], [0.2, 0.7], 'tight'),
  ],
  'worn-through': ['two marks add up to more than the plate is thick and the vane is high', null],
  'tight-and-wide': [
    'coats that touch, and a region 1.5 deep left open beside them',
    hand([0.8, 2.3], [0.8, 2.3], [-0.2, 1.3], 'both'),
  ],
  'plate-smaller': [
    'the plate covers the middle of the vanes only',
    hand([1.5, 2.8], [1.5, 2.8], [0.5, 1.8], 'fit'),
  ],
  'no-shared-radius': ['the bore of the plate is wider than the impeller: no gap', null],
  'no-gap-asked-for': ['plate and impeller, and no clearance in the job', null],
  'no-plate': ['an impeller alone', null],
  'no-impeller': ['a plate alone', null],
  'dressed-tips': ['0.3 dressed off the filled tips', hand([2, 2], [1.1, 1.1], [0.1, 0.1], 'tight')],
  'dressed-over-open-wear': [
    'tips worn on a slope too shallow to fill, dressed to a plane half way down it',
    null,
  ],
  'likely-fits': [
    '0.5 against 0.3 to 0.7: 0.35 all at once is too much both ways, 0.194 by squares is not',
    hand([1.5, 1.5], [1.5, 1.5], [0.5, 0.5], 'both', 'fit'),
  ],
  'one-square-vane': ['a single vane with a square nose, bolt holes in the swept ring', null],
  'gauged-and-smoothed': ['readings on the plate, soft strokes on the tips', null],
};

/** Cut all the way by marks with straight walls, a least or most is the depth itself, held in single precision. */
const SINGLE = 1e-6;

test('every small job stands in the table', () => {
  const names = readdirSync(folder).map((name) => name.replace('.job.json', ''));
  expect(names.toSorted()).toEqual(Object.keys(STANDS_FOR).toSorted());
});

test.each(Object.entries(STANDS_FOR).map(([name, [what, byHand]]) => [name, what, byHand] as const))(
  '%s: %s',
  { timeout: SLOW },
  (name, _, byHand) => {
    const job = small(name);
    const result = resultOf(job);
    expect(breaches(job, result)).toEqual([]);
    if (byHand === null) return;
    const { clearance } = result;
    const states = [clearance?.asFound, clearance?.filled, clearance?.coated];
    states.forEach((state, i) => {
      const [least, most] = byHand.ends[i] ?? [];
      expect(Math.abs((state?.least ?? Number.NaN) - (least ?? 0))).toBeLessThan(SINGLE);
      expect(Math.abs((state?.most ?? Number.NaN) - (most ?? 0))).toBeLessThan(SINGLE);
    });
    expect([clearance?.verdict, clearance?.likely]).toEqual([byHand.verdict, byHand.likely]);
  },
);

test('no gap is null, with a warning where the parts share no radius', () => {
  for (const name of ['no-shared-radius', 'no-gap-asked-for', 'no-plate', 'no-impeller'])
    expect(resultOf(small(name)).clearance).toBeNull();
  const codes = (name: string) => resultOf(small(name)).warnings.map(({ code }) => code);
  expect(codes('no-shared-radius')).toContain('clearance-apart');
  expect(codes('no-gap-asked-for')).not.toContain('clearance-apart');
});

test.each([
  'left-regions',
  'stop-short',
  'one-tip-coated',
  'arc-camber',
  'dished-at-the-closest',
  'tight-and-wide',
])('%s: a lever brings the gap where the job with it pulled has it', { timeout: SLOW }, (name) => {
  const job = small(name);
  const result = resultOf(job);
  expect(result.clearance?.levers.length).toBeGreaterThan(3);
  expect(breachesOfLevers(job, result)).toEqual([]);
});

describe('facing-pair', () => {
  const result = resultOf(sample);

  test('keeps every rule', { timeout: SLOW }, () => {
    expect(breaches(sample, result)).toEqual([]);
  });

  test('filled flush it runs free, and two coat systems close it: the warning says so', () => {
    const { clearance, warnings } = result;
    const band = sample.clearance;
    if (clearance === null || band === undefined) throw new Error('facing-pair has no clearance');
    const worst = clearance.tolerance.worstCase;
    expect(clearance.filled.least - worst).toBeGreaterThanOrEqual(band.least);
    expect(clearance.coated.least).toBeLessThan(band.least);
    // Two coats of 250 um on either face.
    expect(clearance.filled.least - clearance.coated.least).toBeCloseTo(2 * 2 * 0.25, 9);
    expect(clearance.verdict).toMatch(/tight|both/);
    const words = warnings.find(({ code }) => code === 'clearance-tight')?.text ?? '';
    expect(words).toMatch(/Filled it would run free/);
    expect(words).toMatch(/coats on both faces take 2 x 0\.50 mm/);
    expect(warnings.some(({ code }) => code === 'clearance-rub')).toBe(clearance.coated.least - worst <= 0);
  });
});

const [LOTS, OF] = [12, 5];
const seeded = Array.from({ length: LOTS * OF }, (_, seed) => runningJob(seed));
const known = new Map<number, Result>();

test.each(Array.from({ length: LOTS }, (_, lot) => OF * lot))(
  'seeded jobs from %i on keep every rule',
  { timeout: SLOW },
  (first) => {
    for (let seed = first; seed < first + OF; seed += 1) {
      const job = seeded[seed];
      if (job === undefined) throw new Error(`no job ${seed}`);
      const result = resultOf(job);
      known.set(seed, result);
      expect.soft(breaches(job, result), `job ${seed}`).toEqual([]);
    }
  },
);

test('the seeded jobs hold what makes a gap hard', { timeout: SLOW }, () => {
  const results = seeded.map((job, seed) => known.get(seed) ?? resultOf(job));
  const share = (holds: (result: Result) => boolean) => results.filter(holds).length / results.length;
  for (const verdict of ['tight', 'wide', 'both', 'fit'])
    expect(
      share(({ clearance }) => clearance?.verdict === verdict),
      verdict,
    ).toBeGreaterThan(0.04);
  expect(share(({ clearance }) => clearance?.verdict !== clearance?.likely)).toBeGreaterThan(0.02);
  expect(share(({ clearance }) => (clearance?.mismatch ?? 0) > 0.5)).toBeGreaterThan(0.2);
  expect(
    share(({ clearance }) => (clearance?.filled.most ?? 0) > (clearance?.filled.least ?? 0) + 0.2),
  ).toBeGreaterThan(0.2);
  expect(share(({ flowTest }) => flowTest?.comparison?.verdict === 'inside the error')).toBeGreaterThan(0.02);
  expect(share(({ flowTest }) => flowTest?.comparison === null)).toBeGreaterThan(0.1);
  for (const verdict of ['met', 'not met', 'not covered'])
    expect(
      share(({ flowTest }) => flowTest?.acceptance?.verdict === verdict),
      verdict,
    ).toBeGreaterThan(0.02);
  expect(share(({ history }) => history?.rates.some(({ range }) => range !== null) ?? false)).toBeGreaterThan(
    0.2,
  );
});

type Open<T> = { -readonly [K in keyof T]: Open<T[K]> };
type Gap = NonNullable<Result['clearance']>;
type Flow = NonNullable<Result['flowTest']>;

describe('the checker catches', () => {
  /** Stops short on both faces, one tip worn less than the others; the tolerance decides. */
  const job: JobFile = {
    ...small('left-regions'),
    clearance: {
      plate: 'plate',
      impeller: 'impeller',
      asNew: 1.2,
      least: 0.28,
      most: 5,
      shim: 0.2,
      tolerance: 0.08,
      filmTolerance: 0.06,
    },
    ...(sample.flowTest === undefined ? {} : { flowTest: sample.flowTest }),
    ...(sample.history === undefined ? {} : { history: sample.history }),
  };
  const right = resultOf(job);

  test('nothing in a sound result', () => {
    expect(breaches(job, right)).toEqual([]);
    expect([right.clearance?.verdict, right.clearance?.likely]).toEqual(['tight', 'fit']);
  });

  test.each<[string, RegExp, (result: Open<Result>) => void]>([
    ['films that open the gap', /coated.least is/, (r) => everyEnd(gap(r).coated, 2)],
    ['one face of two coated', /between filled and coated/, (r) => everyEnd(gap(r).coated, 0.5)],
    ['a film on the sheet that is not in the gap', /film on the tips/, (r) => (gap(r).films.tips = 0)],
    ['the mean for the most', /asFound.most is/, (r) => (gap(r).asFound.most = gap(r).asFound.mean)],
    ['the mean weighed by area', /mean of the rings/, (r) => (gap(r).asFound.mean += 0.01)],
    ['a tolerance left out', /verdict is fit, should be tight/, (r) => (gap(r).verdict = 'fit')],
    ['the worst case called likely', /likely is tight/, (r) => (gap(r).likely = 'tight')],
    ['squares that are summed plainly', /rootSumSquare/, (r) => (gap(r).tolerance.rootSumSquare = 0.14)],
    ['a shim that closes', /filled.least is/, (r) => shimmed(gap(r), -0.4)],
    ['rings a few mm off', /at radius/, (r) => outwards(gap(r), 4)],
    ['vanes in the wrong order', /vane 1 /, (r) => gap(r).byVane.reverse()],
    ['a widest place elsewhere', /widest place does not/, (r) => (gap(r).widest.on = [40, 0])],
    ['a gap that is tight without a word', /too tight is said/, (r) => silence(r, 'clearance-tight')],
    ['a wall as thick as new', /is left, should be/, (r) => (wall(r).remaining = wall(r).asNew)],
    ['the wrong law of power', /run 2 point 1 power/, (r) => (point(r).power *= 1461 / 1450)],
    ['a head brought over by the speed itself', /run 2 point 1 head/, (r) => (point(r).head *= 1461 / 1450)],
    ['an efficiency of another speed', /run 2 point 1 eff/, (r) => (point(r).efficiency *= 1450 / 1461)],
    ['straight lines between the points', /run 2 head at/, (r) => straight(flow(r))],
    ['a gain for what was recovered', /recovered/, (r) => (flow(r).recovered = 0.755)],
    ['a gain proven inside its error', /gainError/, (r) => (comparison(r).gainError /= 2)],
    ['energy at the shaft for the meter', /saving.power/, (r) => (saving(r).power *= 0.88)],
    ['a grade without the allowance of small pumps', /limit of eff/, (r) => (limits(r).efficiency = -0.05)],
    ['a pump turned down that passes', /is not met, should be met/, (r) => (check(r).verdict = 'not met')],
    ['a mean of rates for the rate', /rate of plate deepest/, (r) => (rate(r).per1000 *= 1.01)],
    ['a normal range for three intervals', /low of plate deepest/, (r) => narrow(r)],
    ['a gap due by the plate alone', /gap of both due/, (r) => (due(r).hours = (due(r).hours ?? 0) * 1.9)],
  ])('%s', (_, sentence, plant) => {
    const result = structuredClone(right) as Open<Result>;
    plant(result);
    const found = breaches(job, result);
    expect(
      found.some((one) => sentence.test(one)),
      `${sentence} in\n${found.join('\n')}`,
    ).toBe(true);
  });
});

function there<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('the job lacks what a breach is planted in');
  return value;
}

const gap = (r: Open<Result>) => there(r.clearance) as Open<Gap>;
const wall = (r: Open<Result>) => there(r.parts[0]?.walls.find(({ face }) => face === 'face'));
const flow = (r: Open<Result>) => there(r.flowTest) as Open<Flow>;
const point = (r: Open<Result>) =>
  there(flow(r).runs[1]?.points[0]) as { power: number; head: number; efficiency: number };
const comparison = (r: Open<Result>) => there(flow(r).comparison);
const saving = (r: Open<Result>) => there(flow(r).saving);
const limits = (r: Open<Result>) => there(flow(r).acceptance).limits;
const check = (r: Open<Result>) => there(flow(r).acceptance?.checks[0]);
const rate = (r: Open<Result>) =>
  there(r.history?.rates.find(({ part, of }) => part === 'plate' && of === 'deepest'));
const due = (r: Open<Result>) => there(r.history?.due.find(({ what }) => what === 'gap'));

function everyEnd(ends: { least: number; mean: number; most: number }, more: number): void {
  ends.least += more;
  ends.mean += more;
  ends.most += more;
}

function shimmed({ asFound, filled, coated }: Open<Gap>, more: number): void {
  for (const ends of [asFound, filled, coated]) everyEnd(ends, more);
}

function outwards({ byRadius }: Open<Gap>, more: number): void {
  for (const ring of byRadius) ring.radius += more;
}

function silence(r: Open<Result>, code: string): void {
  r.warnings = r.warnings.filter((one) => one.code !== code);
}

function straight(test: Open<Flow>): void {
  const curve = there(test.runs[1]?.curves.head);
  curve.forEach((knot, i) => {
    const next = curve[i + 1] ?? knot;
    knot.slope = next === knot ? knot.slope : (next.value - knot.value) / (next.flow - knot.flow);
  });
}

/** 1.96 for Student's 4.303. */
function narrow(r: Open<Result>): void {
  const { range, per1000 } = rate(r);
  const half = ((there(range).high - per1000) * 1.96) / 4.303;
  there(range).low = per1000 - half;
  there(range).high = per1000 + half;
}
