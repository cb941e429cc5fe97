/**
 * Whether the standard error of a volume read with a gauge is honest when nothing is known of the surface but the readings: random
 * surfaces of known covariance and exactly known volume, read at random places, the covariance left for the estimate to find.
 */
import { describe, expect, test } from 'vitest';
import { estimate } from '../../geometry/estimate.ts';
import type { RoundPlate } from '../../geometry/job/job.ts';
import { job, ROUND } from '../geometry/made.ts';
import { between, depthOf, type FieldShape, randomField, seeded, volumeOnDisc } from './random-field.ts';
import { calibration, placesOn, readingsAt, type Trial } from './readings-on-plate.ts';

const SHAPES: readonly FieldShape[] = ['matern-3/2', 'matern-5/2', 'gaussian'];
const COUNTS = [12, 20, 50];
const FIELDS = 200;
/** mm, one standard deviation. */
const GAUGE = 0.1;
/** mm. Next to 0.5 mm it moves a volume and its standard error by some 0.03 %, a tenth of the least standard error here, and saves most of the time. */
const CELL = 10;

/** One surface, read `count` times. Depths stay well above 0 on all but a few thousandths of the plate. */
function trial(seed: number): Trial & { readonly count: number } {
  const chance = seeded(seed);
  const count = COUNTS[seed % COUNTS.length];
  const field = randomField(chance, {
    shape: SHAPES[Math.floor(seed / COUNTS.length) % SHAPES.length],
    length: between(chance, 25, 80),
    sd: between(chance, 0.5, 1.2),
    mean: between(chance, 3, 4),
  });
  const depthAt = ([r, angle]: readonly [number, number]) =>
    depthOf(field, r * Math.cos(angle), r * Math.sin(angle));
  const mark = readingsAt(placesOn(ROUND, count, chance), depthAt, GAUGE, chance);
  const { parts, readings } = estimate(job([mark]), { cell: CELL });
  return { count, volume: parts[0].lost.volume, error: readings[0].lost, truth: volumeOn(ROUND) };

  function volumeOn({ outerRadius, boreRadius, holes }: RoundPlate): number {
    const [whole, ...out] = [
      { x: 0, y: 0, radius: outerRadius },
      { x: 0, y: 0, radius: boreRadius },
      ...holes,
    ].map((disc) => volumeOnDisc(field, disc));
    return out.reduce((left, volume) => left - volume, whole);
  }
}

describe('the 95 % interval of a volume read with a gauge', () => {
  test(`holds the truth of ${FIELDS} random surfaces`, () => {
    const trials = Array.from({ length: FIELDS }, (_, seed) => trial(seed));
    // Of 200 fair trials 190 +- 3.1 hold; what is allowed here is what a covariance found from so few readings may cost.
    const all = calibration(trials);
    expect.soft(all.held / all.of, `${JSON.stringify(all)}`).toBeGreaterThanOrEqual(0.9);
    expect.soft(all.held / all.of, `${JSON.stringify(all)}`).toBeLessThanOrEqual(0.98);
    expect.soft(all.rms).toBeGreaterThan(0.8);
    expect.soft(all.rms).toBeLessThan(1.25);
    // No number of readings may do well at the cost of another: of 67 fair trials fewer than 58 hold once in three hundred times.
    for (const count of COUNTS) {
      const some = calibration(trials.filter((one) => one.count === count));
      expect.soft(some.held / some.of, `${count} readings: ${JSON.stringify(some)}`).toBeGreaterThan(0.86);
    }
  }, 120_000);
});

test('the volume of a wave on a disc is its integral', () => {
  const field = { mean: 2, height: 0.7, waves: [[0.05, -0.02, 0.4]] as const };
  const disc = { x: 30, y: -12, radius: 41 };
  const [steps, ways] = [400, 400];
  let sum = 0;
  for (let i = 0; i < steps; i += 1)
    for (let j = 0; j < ways; j += 1) {
      const r = ((i + 0.5) / steps) * disc.radius;
      const angle = (2 * Math.PI * j) / ways;
      sum += depthOf(field, disc.x + r * Math.cos(angle), disc.y + r * Math.sin(angle)) * r;
    }
  const byMidpoints = sum * (disc.radius / steps) * ((2 * Math.PI) / ways);
  expect(Math.abs(volumeOnDisc(field, disc) / byMidpoints - 1)).toBeLessThan(1e-5);
});
