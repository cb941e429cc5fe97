/** Surfaces that are no random field at all, read with a gauge: a published test function, and the wear of a sample job. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { Job, RoundPlate, WearPlate } from '../../geometry/job/job.ts';
import { measured } from '../../geometry/job/measured.ts';
import { readJob } from '../../geometry/job/read-job.ts';
import { toGridPoint } from '../../geometry/part/face.ts';
import { type FacePoint, type Mm, type Mm3, TURN } from '../../geometry/units.ts';
import { franke } from '../geometry/depth/kriging/fields.ts';
import { job, plate } from '../geometry/made.ts';
import { between, type Chance, seeded } from './random-field.ts';
import { calibration, placesOn, readingsAt, type Trial } from './readings-on-plate.ts';

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

/** Readings with a gauge of 0.1 mm at places of the scoured face, on an otherwise clean plate. */
function scouredTrial(
  { sample, worn, lost, depthAt }: Scoured,
  places: readonly FacePoint[],
  chance: Chance,
): Trial {
  const mark = readingsAt(places, depthAt, 0.1, chance);
  const { parts, readings } = estimate({ ...sample, parts: [{ ...worn, marks: [mark] }] }, { cell: 5 });
  return { volume: parts[0].lost.volume, error: readings[0].lost, truth: lost };
}

/** A grid as it is walked: rings of equal areas from the bore to the rim, every other one half a step on; none over a hole. */
function walked(
  { boreRadius, outerRadius, holes }: RoundPlate,
  rings: number,
  spokes: number,
  turn: number,
): FacePoint[] {
  return Array.from({ length: rings * spokes }, (_, k): FacePoint => {
    const ring = Math.floor(k / spokes);
    const share = (ring + 0.5) / rings;
    const angle = turn + (((k % spokes) + (ring % 2) / 2) * TURN) / spokes;
    return [Math.sqrt(boreRadius ** 2 + share * (outerRadius ** 2 - boreRadius ** 2)), angle % TURN];
  }).filter(([r, angle]) =>
    holes.every(({ x, y, radius }) => Math.hypot(r * Math.cos(angle) - x, r * Math.sin(angle) - y) > radius),
  );
}

describe('the volume of the scoured sample lies within its own interval', () => {
  const plateOf = scouredPlate();
  const heldOf = (layouts: number, seed: number, placesOf: (chance: Chance) => readonly FacePoint[]) => {
    const found = calibration(
      Array.from({ length: layouts }, (_, i) => {
        const chance = seeded(1000 * seed + i);
        return scouredTrial(plateOf, placesOf(chance), chance);
      }),
    );
    return { ...found, message: JSON.stringify(found) };
  };

  test.each([
    [4, 5],
    [5, 10],
    [8, 25],
  ])('read on a grid of %i rings and %i spokes, turned anyhow: 17 times in 20 or more', (rings, spokes) => {
    const { held, message } = heldOf(20, rings, (chance) =>
      walked(plateOf.shape, rings, spokes, between(chance, 0, TURN)),
    );
    // Of 20 fair intervals of 95 % fewer than 17 hold once in sixty times.
    expect(held, message).toBeGreaterThanOrEqual(17);
  });

  // Short of 95 with few: chance may miss a scour altogether, and few readings cannot tell how steep it is.
  test.each([
    [20, 85],
    [50, 88],
    [200, 90],
  ])(
    'read at %i chance places: %i times in 100 or more',
    (count, least) => {
      const { held, message } = heldOf(100, count, (chance) => placesOn(plateOf.shape, count, chance));
      expect(held, message).toBeGreaterThanOrEqual(least);
    },
    120_000,
  );
});
