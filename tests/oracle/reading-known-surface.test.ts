/** Surfaces that are no random field at all, read with a gauge: a published test function, and the wear of a sample job. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Job, RoundPlate, WearPlate } from '../../geometry/job/job.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm, Mm3 } from '../../geometry/units.ts';
import { job, plate } from '../geometry/made.ts';
import { seeded } from './random-field.ts';
import { calibration, placesOn, readingsAt, type Trial } from './readings-on-plate.ts';

/** Franke's test function on the unit square: R. Franke, A critical comparison of some methods for interpolation of scattered data, NPS-53-79-003, 1979. */
function franke(x: number, y: number): number {
  const [p, q] = [9 * x, 9 * y];
  return (
    0.75 * Math.exp(-((p - 2) ** 2 + (q - 2) ** 2) / 4) +
    0.75 * Math.exp(-((p + 1) ** 2) / 49 - (q + 1) / 10) +
    0.5 * Math.exp(-((p - 7) ** 2 + (q - 3) ** 2) / 4) -
    0.2 * Math.exp(-((p - 4) ** 2) - (q - 7) ** 2)
  );
}

/** Its integral over the unit square, by quadrature. */
const FRANKE = 0.40696959;
const [SIDE, DEEP] = [200, 4];

/** Van der Corput's numbers in base 2 and 3: spread out without a grid (Halton, Numer. Math. 2, 1960, from memory). */
function halton(i: number, base: number): number {
  let [sum, share, rest] = [0, 1 / base, i];
  for (; rest > 0; rest = Math.floor(rest / base), share /= base) sum += (rest % base) * share;
  return sum;
}

describe.each([
  // Far closer than a gauge can say: intervals wider than these would hold anything.
  { count: 50, widest: 0.01 },
  { count: 200, widest: 0.001 },
])('the volume of a published function from $count exact readings', ({ count, widest }) => {
  test.each([0, 1, 2])('lies within its own interval, layout %i', (layout) => {
    const places = Array.from({ length: count }, (_, i): FacePoint => {
      const number = layout * count + i + 1;
      return [SIDE * halton(number, 2), SIDE * halton(number, 3)];
    });
    const mark = readingsAt(places, ([x, y]) => DEEP * franke(x / SIDE, y / SIDE), 0, seeded(1));
    const edge = [
      [0, 0],
      [SIDE, 0],
      [SIDE, SIDE],
      [0, SIDE],
    ] as const;
    const worn: WearPlate = { ...plate({}, [mark]), shape: { kind: 'outline', edge, holes: [] } };
    const { parts, readings } = estimate({ ...job([]), parts: [worn] }, { cell: 2 });
    const truth = SIDE * SIDE * DEEP * FRANKE;
    const [off, error] = [parts[0].lost.volume - truth, readings[0].lost];
    const message = `off ${off / truth} of it, standard error ${error / truth} of it`;
    expect(error / truth, message).toBeLessThan(widest);
    expect(Math.abs(off), message).toBeLessThanOrEqual(1.96 * error);
  });
});

test('the published function has its published values', () => {
  // Worked out from the formula by another program, double precision.
  expect(franke(0, 0)).toBeCloseTo(0.766420591, 9);
  expect(franke(0.5, 0.5)).toBeCloseTo(0.325762089, 9);
  expect(franke(4 / 9, 7 / 9)).toBeCloseTo(0.00382160537, 11);
});

/** The worn face of the scoured plate, as its marks press it: smooth scours with sound metal between them over almost half the face. */
interface Scoured {
  readonly sample: Job;
  readonly worn: WearPlate;
  readonly shape: RoundPlate;
  readonly lost: Mm3;
  readonly depthAt: (place: FacePoint) => Mm;
}

function scouredPlate(): Scoured {
  const reading = readJob(
    readFileSync(join(import.meta.dirname, '../../samples/scoured-plate.job.json'), 'utf8'),
  );
  if ('faults' in reading) throw new Error(JSON.stringify(reading.faults));
  const sample = measured(reading.job);
  const [worn] = sample.parts;
  const pressed = estimate(sample, { cell: 1 }).parts[0].faces.find(({ face }) => face.name === 'face');
  if (worn.kind !== 'wear-plate' || worn.shape.kind !== 'round' || !pressed)
    throw new Error('no round plate');
  const { face, map, lost } = pressed;
  const { grid, depth } = map;
  return {
    sample,
    worn,
    shape: worn.shape,
    lost: lost.volume,
    depthAt: (place) => {
      const [u, v] = toGridPoint(face, place);
      const [row, column] = [Math.floor((u - grid.u0) / grid.du), Math.floor((v - grid.v0) / grid.dv)];
      return depth[row * grid.columns + column];
    },
  };
}

/** One chance layout of readings on the scoured face, on an otherwise clean plate. */
function scouredTrial({ sample, worn, shape, lost, depthAt }: Scoured, count: number, seed: number): Trial {
  const chance = seeded(1000 * count + seed);
  const mark = readingsAt(placesOn(shape, count, chance), depthAt, 0.1, chance);
  const { parts, readings } = estimate({ ...sample, parts: [{ ...worn, marks: [mark] }] }, { cell: 5 });
  return { volume: parts[0].lost.volume, error: readings[0].lost, truth: lost };
}

describe('the volume of the scoured sample from readings at chance places', () => {
  const plateOf = scouredPlate();
  const held = (count: number) => {
    const found = calibration(Array.from({ length: 20 }, (_, seed) => scouredTrial(plateOf, count, seed)));
    // Of 20 fair intervals of 95 % fewer than 17 hold once in sixty times.
    expect(found.held, JSON.stringify(found)).toBeGreaterThanOrEqual(17);
  };

  test('lies within its own interval 17 times in 20: 50 readings', () => held(50), 120_000);

  // Short of it, and known to be: of 100 layouts 91 hold with 20 readings, 94 with 50 and 86 with 200. A few readings cannot tell how
  // steep the scours are; many leave so narrow an interval that cutting the surface off at 0, where it swings below sound metal, puts
  // the volume 3.5 % up: not cut off, it is right to 0.04 % on average.
  test.fails('falls short of it: 20 readings', () => held(20), 120_000);
  test.fails('falls short of it: 200 readings', () => held(200), 120_000);
});
