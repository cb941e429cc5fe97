import { describe, expect, it } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import type { JobFile, MarkFile } from '../../../../geometry/job/job-file.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { type Result, toResult } from '../../../../geometry/sheet/result.ts';
import { newImpeller } from '../../../../web/panels/part/new-impeller.ts';
import { estimatedFigures, figureSet } from '../../../../web/panels/shell/figure-set.ts';
import { liveFigures } from '../../../../web/panels/shell/live-figures.ts';

const fresh = newPlateJob();
const RING: MarkFile = { kind: 'patch', face: 'face', first: [90, 120], second: [0, 360], depth: 3 };
const worn = (wear: readonly MarkFile[], leastThickness?: number): JobFile => ({
  ...fresh,
  parts: fresh.parts.map((part) => ({ ...part, wear: [...wear], ...(leastThickness && { leastThickness }) })),
});
const resultOf = (job: JobFile): Result => toResult(estimate(measured(job)));
const figuresOf = (job: JobFile, units: 'mm' | 'in' = 'mm') =>
  figureSet(estimatedFigures(resultOf(job), job), units);

describe('the five figures', () => {
  it('are those of the result', () => {
    const job = worn([{ ...RING, depth: 8 }], 10);
    const { filler } = resultOf(job);
    const [putty, parts, , deepest, thinnest] = figuresOf(job);
    // Three digits: 0.5 % at worst.
    expect(Number(putty.value) / filler.volume).toBeCloseTo(1, 2);
    expect(putty.note).toBe(`in ${filler.batches.length} mixes`);
    const [a, b] = parts.value.split(' : ').map(Number);
    expect(a / filler.partA.mass).toBeCloseTo(1, 2);
    expect(b / filler.partB.mass).toBeCloseTo(1, 2);
    expect(deepest).toMatchObject({ value: '8.00', unit: 'mm', note: 'on the face' });
    expect(thinnest).toMatchObject({ value: '12.00', note: 'Least 10.00 mm', isBad: false });
  });

  it('flag a wall under its least, and a wall worn through', () => {
    expect(figuresOf(worn([RING], 18))[4]).toMatchObject({ isBad: true, note: 'Under the least, 18.00 mm' });
    expect(figuresOf(worn([{ ...RING, depth: 20 }]))[4]).toMatchObject({ isBad: true, note: 'Worn through' });
  });

  it('end in the least clearance where the job asks for one, and flag it when it does not fit', () => {
    const pair: JobFile = {
      ...fresh,
      parts: [...fresh.parts, newImpeller()],
      clearance: { plate: 'plate', impeller: 'impeller', asNew: 0.8, least: 0.3, most: 0.6 },
    };
    // As new and coated with two coats of 0.25 mm on both faces, 0.8 mm closes to -0.2 mm (job format, "Clearance").
    expect(figuresOf(pair)[4]).toEqual({
      label: 'Least clearance',
      short: 'Clearance',
      value: '−0.20',
      unit: 'mm',
      isBad: true,
      note: 'Tight, 0.30 to 0.60',
    });
    const bare = { ...pair, repair: { coatedFaces: ['impeller:*'] } };
    expect(figuresOf(bare)[4]).toMatchObject({ value: '0.30', isBad: false, note: 'Fits, 0.30 to 0.60' });
  });

  it('say so when nothing is marked, without a figure that looks measured', () => {
    const [putty, parts, , deepest] = figuresOf(worn([]));
    expect([putty.value, putty.note]).toEqual(['0', 'Nothing to fill']);
    expect(parts.value).toBe('0 : 0');
    expect([deepest.value, deepest.note]).toEqual(['0', 'Nothing marked']);
  });

  it('follow the units of the screen', () => {
    const [putty, , , deepest] = figuresOf(worn([RING]), 'in');
    expect([deepest.value, deepest.unit]).toEqual(['0.1180', 'in']);
    expect(putty.unit).toBe('mL');
  });
});

describe('the figures in the middle of a stroke', () => {
  const job = worn([RING]);
  const result = resultOf(job);
  const before = estimatedFigures(result, job);
  const live = (lostChange: Record<string, number>, pointerDepth: number | null) =>
    liveFigures(before, { lostChange, lostPull: {}, pointerDepth }, result, job);

  it('bring the unbalance to what the estimate says, where the metal goes', () => {
    const turning = (wear: readonly MarkFile[]) => {
      const impeller = { ...newImpeller(), wear: [...wear] };
      return { ...job, parts: [impeller], rotor: { part: impeller.id, mass: 12, speed: 1450, grade: 6.3 } };
    };
    const eaten: MarkFile = {
      kind: 'edge',
      face: 'vane-1/leading-edge',
      profile: [
        [0, 3],
        [30, 3],
      ],
    };
    const hole: MarkFile = {
      kind: 'pit',
      face: 'shroud/front',
      at: [110, 90],
      diameter: 14,
      depth: 4,
      form: 'flat',
    };
    const [one, two] = [turning([eaten]), turning([eaten, hole])];
    const [was, is] = [resultOf(one), resultOf(two)];
    const lost = (is.parts[0].lostVolume - was.parts[0].lostVolume) * 1000;
    // At radius 110, angle 90 deg: all of the moment is along y.
    const totals = {
      lostChange: { x: lost },
      lostPull: { impeller: [0, 110 * lost] as const },
      pointerDepth: 4,
    };
    const shown = liveFigures(estimatedFigures(was, one), totals, was, one).unbalance;
    // A dab of 14 mm taken at its middle: 1 % of what it changes.
    const changed = Math.abs((is.balance?.net.amount ?? 0) - (was.balance?.net.amount ?? 0));
    expect(changed).toBeGreaterThan(50);
    expect(Math.abs((shown?.net ?? 0) - (is.balance?.net.amount ?? 0))).toBeLessThan(0.01 * changed);
  });

  it('are the estimate while no brush moves', () => {
    expect(live({}, 5)).toBe(before);
  });

  it('come to what the estimate says once the stroke is a mark', () => {
    const more: MarkFile = { kind: 'patch', face: 'face', first: [70, 90], second: [0, 180], depth: 4 };
    const after = worn([RING, more]);
    const [was, is] = [result, resultOf(after)];
    const lost = (is.parts[0].lostVolume - was.parts[0].lostVolume) * 1000;
    const figures = live({ 'plate:face': lost }, 4);
    const estimated = estimatedFigures(is, after);
    expect(figures.putty).toBeCloseTo(estimated.putty, 6);
    expect(figures.partA).toBeCloseTo(estimated.partA, 6);
    expect(figures.mixes).toBe(estimated.mixes);
    expect(figures.deepest?.depth).toBe(4);
    expect(figures.thinnest?.wall).toBeCloseTo(estimated.thinnest?.wall ?? 0, 6);
  });
});
