/**
 * Whole jobs against a brute-force calculation that shares nothing with geometry/: independent.mjs made the *.expected.json beside it
 * from jobs/*.job.json. Each expected file says where its numbers come from and how far its two grids lie apart.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { toResult } from '../../geometry/sheet/result.ts';
import type { Expected, ExpectedBalance, ExpectedMix, Vector } from './expected.ts';
import { sameRegion } from './same-region.ts';

const here = import.meta.dirname;
const names = readdirSync(join(here, 'jobs')).map((file) => file.replace('.job.json', ''));

/** What the map's cells may cost at the default size: the promise of `--cell`. */
const VOLUME = 0.002;
/** Half a per cent of an area: nothing is bought by area alone. */
const AREA = 0.005;
/** The smoothing square is whole cells, so what a smoothed edge loses moves with the cell. */
const SMOOTHED = 0.005;
/** A cell's worth of rim on a region of few cells: cm3 and cm2. */
const [RIM_VOLUME, RIM_AREA] = [0.0005, 0.003];
/** Of a standard error: it is added up over blocks wider than cells, and read to two figures. */
const ERROR = 0.02;
/** Of what one more reading is worth: the best place of a coarse list and the best of another one. */
const NEXT = 0.05;
/** Of what leaving readings out shows: the readings alone, no map, through a table of the covariance. */
const LEFT_OUT = 1e-4;
/** mm; a fifth of what a depth gauge can tell. */
const DEPTH = 0.01;
/** Share of the plate's half width by which a centre may lie off: half of what 0.2 % of the fill put on the rim would move it. */
const CENTRE = 0.001;
/** Formulas alone, no map: the expected files keep seven figures. */
const FORMULA = 1e-6;

/** `path` names the number, `relative` and `absolute` are what it may be off. */
function near(path: string, found: number | null | undefined, right: number, off: Off, source: string): void {
  const most = Math.max((off.relative ?? 0) * Math.abs(right), off.absolute ?? 0);
  const message = `${path} is ${found}, should be ${right} (off ${off.relative ?? 0} of it, ${off.absolute ?? 0}): ${source}`;
  expect.soft(Math.abs((found ?? Number.NaN) - right), message).toBeLessThanOrEqual(most);
}

interface Off {
  readonly relative?: number;
  readonly absolute?: number;
}

describe.each(names)('%s', (name) => {
  const text = readFileSync(join(here, 'jobs', `${name}.job.json`), 'utf8');
  const expected: Expected = JSON.parse(readFileSync(join(here, `${name}.expected.json`), 'utf8'));
  const { source } = expected;
  const reading = readJob(text);
  if ('faults' in reading) throw new Error(JSON.stringify(reading.faults));
  const result = toResult(estimate(measured(reading.job)));
  const smoothed = text.includes('"smooth"');
  const volume = { relative: smoothed ? SMOOTHED : VOLUME };
  const small = { ...volume, absolute: RIM_VOLUME };
  const area = { relative: AREA, absolute: RIM_AREA };
  const depth = { absolute: DEPTH };

  test('the expected numbers are this job’s and sure enough to judge by', () => {
    expect(createHash('sha256').update(text).digest('hex')).toBe(expected.job);
    for (const key of ['.parts.lostVolume', '.parts.fillVolume', '.filler.volume', '.coat.volume'])
      expect(expected.ownError[key], key).toBeLessThan(VOLUME / 2);
  });

  test('what each part lost and takes', () => {
    expect(result.parts.map((part) => part.id)).toEqual(expected.parts.map((part) => part.id));
    expected.parts.forEach((part, i) => {
      const found = result.parts[i];
      for (const key of ['lostVolume', 'lostMass', 'fillVolume', 'fillMass'] as const)
        near(`${part.id} ${key}`, found?.[key], part[key], volume, source.parts);
      expect.soft(found?.fillCentroid === null).toBe(part.fillCentroid === null);
      part.fillCentroid?.forEach((c, axis) => {
        const off = { absolute: CENTRE * part.size };
        near(`${part.id} fillCentroid ${axis}`, found?.fillCentroid?.[axis], c, off, source.parts);
      });
      const thinnest = Math.min(...part.faces.map((face) => face.remaining));
      near(`${part.id} thinnest`, found?.thinnest.remaining, thinnest, depth, source.parts);
    });
  });

  test('areas, volumes and the deepest point of each face', () => {
    expected.parts.forEach((part, i) => {
      const faces = result.parts[i]?.faces ?? [];
      expect(faces.map(({ face }) => face).toSorted()).toEqual(part.faces.map(({ face }) => face).toSorted());
      for (const face of part.faces) {
        const found = faces.find((one) => one.face === face.face);
        const title = `${part.id} ${face.face}`;
        for (const key of ['area', 'wornArea'] as const)
          near(`${title} ${key}`, found?.[key], face[key], area, source.parts);
        for (const key of ['lostVolume', 'fillVolume', 'leftVolume'] as const)
          near(`${title} ${key}`, found?.[key], face[key], small, source.parts);
        near(`${title} deepest`, found?.deepest, face.deepest, depth, source.parts);
      }
    });
  });

  test('every damage region and what becomes of it', () => {
    expected.parts.forEach((part, i) => {
      for (const face of part.faces) {
        const left = (result.parts[i]?.regions ?? []).filter((region) => region.face === face.face);
        expect.soft(left.length, `regions on ${part.id} ${face.face}`).toBe(face.regions.length);
        for (const region of face.regions) {
          const title = `${part.id} ${face.face} region at ${region.at.map((x) => x.toFixed(1)).join(', ')}`;
          const found = sameRegion(left, region, face);
          if (found !== undefined) left.splice(left.indexOf(found), 1);
          expect.soft(found?.action, `${title} action`).toBe(region.action);
          near(`${title} area`, found?.area, region.area, area, source.regions);
          near(`${title} deepest`, found?.deepest, region.deepest, depth, source.regions);
          near(`${title} lostVolume`, found?.lostVolume, region.lostVolume, small, source.regions);
          near(`${title} fillVolume`, found?.fillVolume, region.fillVolume, small, source.regions);
        }
      }
    });
  });

  function compareMix(what: 'filler' | 'coat', right: ExpectedMix): void {
    const found = result[what];
    for (const key of ['netVolume', 'volume', 'mass'] as const)
      near(`${what} ${key}`, found[key], right[key], volume, source[what]);
    for (const part of ['partA', 'partB'] as const) {
      near(`${what} ${part} volume`, found[part].volume, right[part].volume, volume, source[what]);
      const { mass } = right[part];
      // The sheet of a job need not say how dense A and B are: their masses are then nobody's to check.
      if (mass !== undefined) near(`${what} ${part} mass`, found[part].mass, mass, volume, source[what]);
    }
    near(`${what} workingTime`, found.workingTime, right.workingTime, { relative: FORMULA }, source[what]);
    expect.soft(found.packs, `${what} packs`).toEqual(right.packs);
  }

  test('filler: mix, passes, batches and packs', () => {
    const { filler } = expected;
    compareMix('filler', filler);
    expect.soft(result.filler.passes, 'passes').toBe(filler.passes);
    near(
      'largestBatch',
      result.filler.largestBatch,
      filler.largestBatch,
      { relative: FORMULA },
      source.filler,
    );
    expect.soft(result.filler.batches.length, 'batches').toBe(filler.batches);
    for (const batch of result.filler.batches)
      near(`batch ${batch.number}`, batch.volume, filler.batchVolume, volume, source.filler);
  });

  test('coat: area, films, mix and packs', () => {
    const { coat } = expected;
    compareMix('coat', coat);
    near('coat area', result.coat.area, coat.area, area, source.coat);
    near('wetFilm', result.coat.wetFilm, coat.wetFilm, { relative: FORMULA }, source.coat);
    expect.soft(result.coat.perCoat.length, 'coats').toBe(coat.perCoat.length);
    coat.perCoat.forEach((right, i) => {
      near(`coat ${i + 1}`, result.coat.perCoat[i], right, volume, source.coat);
    });
  });

  const { readings: readSource } = source;
  if (readSource !== undefined)
    test('what gauge readings leave open', () => {
      expected.parts.forEach((part, i) => {
        const found = result.parts[i];
        for (const key of ['standardError', 'lostError'] as const)
          near(`${part.id} ${key}`, found?.[key], part[key] ?? 0, { relative: ERROR }, readSource);
        expect(found?.readings.length).toBe(part.readings?.length ?? 0);
        for (const right of part.readings ?? []) {
          const one = found?.readings.find(({ mark }) => mark === right.mark);
          const title = `${part.id} readings of mark ${right.mark}`;
          expect.soft(one?.used, `${title} used`).toBe(right.used);
          for (const key of ['fillError', 'lostError'] as const)
            near(`${title} ${key}`, one?.[key], right[key], { relative: ERROR }, readSource);
          const { rms, ...counts } = right.leaveOneOut;
          near(`${title} left out`, one?.leaveOneOut?.rms, rms, { relative: LEFT_OUT }, readSource);
          expect.soft(one?.leaveOneOut, `${title} left out`).toMatchObject(counts);
          near(`${title} next to`, one?.next?.to, right.next.to, { relative: ERROR }, readSource);
          near(`${title} next moves`, one?.next?.moves, right.next.moves, { relative: NEXT }, readSource);
        }
      });
      const { standardError = 0 } = expected.filler;
      near('filler', result.filler.standardError, standardError, { relative: ERROR }, readSource);
    });

  const { balance } = expected;
  if (balance === undefined) return;
  test('unbalance of the rotor', () => {
    const found = (result as unknown as { readonly balance?: FoundBalance | null }).balance;
    const { scale, coupleScale, permissible } = balance;
    const apart = (key: 'added' | 'net' | 'couple', most: number) => {
      const off = distance(found?.[key], balance[key]);
      const message = `${key} is ${JSON.stringify(found?.[key])}, should be ${JSON.stringify(balance[key])}: ${source.balance}`;
      expect.soft(off, message).toBeLessThanOrEqual(most);
    };
    apart('added', VOLUME * scale);
    apart('net', VOLUME * scale);
    apart('couple', VOLUME * coupleScale);
    for (const key of ['permissible', 'permissibleEccentricity'] as const)
      near(key, found?.[key], balance[key], { relative: FORMULA }, source.balance ?? '');
    near(
      'ratio',
      found?.ratio,
      balance.ratio,
      { absolute: (VOLUME * scale) / permissible },
      source.balance ?? '',
    );
    // Force and ratio are both the net unbalance times a constant of the rotor.
    const each = found === undefined || found === null ? 0 : found.force / found.ratio;
    if (balance.ratio > 0)
      near('force', each, balance.force / balance.ratio, { relative: 2 * FORMULA }, source.balance ?? '');
    const spread = { relative: source.readings ? ERROR : VOLUME, absolute: 0.02 * VOLUME * scale };
    near('standardError', found?.standardError, balance.standardError, spread, source.balance ?? '');
    const [least, most] = balance.chanceRange;
    expect.soft(found?.chanceOver).toBeGreaterThanOrEqual(least - FORMULA);
    expect.soft(found?.chanceOver).toBeLessThanOrEqual(most + FORMULA);
    expect.soft(found?.verdict).toBe(balance.verdict);
  });
});

/** What the result says of a rotor. */
type FoundBalance = Omit<ExpectedBalance, 'planes' | 'scale' | 'coupleScale' | 'chanceRange'>;

/** How far two vectors lie apart; NaN when one is missing. */
function distance(a: Vector | undefined, b: Vector): number {
  const turn = (((a?.angle ?? Number.NaN) - b.angle) * Math.PI) / 180;
  const [p, q] = [a?.amount ?? Number.NaN, b.amount];
  return Math.sqrt(Math.max(0, p * p + q * q - 2 * p * q * Math.cos(turn)));
}
