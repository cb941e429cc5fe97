import { describe, expect, test } from 'vitest';
import { depthsAt, krige, varianceAt } from '../../../../geometry/depth/kriging/kriging.ts';
import type { Covariance } from '../../../../geometry/job/job.ts';
import { observed } from './fields.ts';

describe('the seven samples of the textbook', () => {
  // E. Isaaks and R. Srivastava, An Introduction to Applied Geostatistics (1989), chapter 12: the samples about (65, 137) and the five
  // figures. Printed there as 593 and 8.96, 593 and 17.91, 559 and 4.78, 597 and 10.31, 572 and 5.76; more digits worked out apart.
  const samples = [
    [61, 139, 477],
    [63, 140, 696],
    [64, 129, 227],
    [68, 128, 646],
    [71, 140, 606],
    [73, 141, 791],
    [75, 128, 783],
  ] as const;
  const at = Float64Array.of(65, 137, 0);
  const figures: readonly [
    name: string,
    covariance: Covariance,
    nugget: number,
    depth: number,
    variance: number,
  ][] = [
    ['12.3', { shape: 'exponential', length: 1 / 0.3, sill: 10 }, 0, 592.728943, 8.95605279],
    ['12.6', { shape: 'exponential', length: 1 / 0.3, sill: 20 }, 0, 592.728943, 17.9121056],
    ['12.8', { shape: 'gaussian', length: Math.sqrt(1 / 0.06), sill: 10 }, 0, 559.370023, 4.78059738],
    // The book foresees a new sample with its nugget of 5; ours is the surface under it, 5 less.
    ['12.10', { shape: 'exponential', length: 1 / 0.3, sill: 5 }, 5, 596.777007, 10.3058522 - 5],
    ['12.12', { shape: 'exponential', length: 1 / 0.15, sill: 10 }, 0, 572.389874, 5.75849972],
  ];
  test.each(figures)('figure %s', (_name, covariance, nugget, depth, variance) => {
    const kriging = krige(observed(samples, nugget), covariance);
    // The table of the covariance is true to 1e-6 of the sill.
    expect(depthsAt(kriging, at)[0]).toBeCloseTo(depth, 3);
    expect(varianceAt(kriging, at, 0)).toBeCloseTo(variance, 4);
  });
});

test('between readings of a line: 0.675106855 without a mean, and exact at the readings', () => {
  const covariance: Covariance = { shape: 'gaussian', length: 0.5, sill: 1 };
  const kriging = krige(
    observed([
      [0, 0, 0],
      [0.5, 0, 1],
      [1, 0, 0],
    ]),
    covariance,
  );
  const depths = depthsAt(kriging, Float64Array.of(0, 0, 0, 0.5, 0, 0, 1, 0, 0));
  expect([...depths]).toEqual([expect.closeTo(0, 5), expect.closeTo(1, 5), expect.closeTo(0, 5)]);
  expect(varianceAt(kriging, Float64Array.of(0.5, 0, 0), 0)).toBeLessThan(1e-5);
});

test('a face of 40 x 30 mm, five readings, gauge 0.1: 1.97178095 mm at (12, 12), variance 0.0503374913', () => {
  // Worked out apart by dense algebra; gauge error on the diagonal alone.
  const kriging = krige(
    observed(
      [
        [5, 5, 1],
        [35, 5, 1.4],
        [20, 15, 2.6],
        [5, 25, 0.8],
        [35, 25, 1.2],
      ],
      0.01,
    ),
    { shape: 'gaussian', length: 15, sill: 1 },
  );
  const at = Float64Array.of(12, 12, 0);
  expect(depthsAt(kriging, at)[0]).toBeCloseTo(1.97178095, 5);
  expect(varianceAt(kriging, at, 0)).toBeCloseTo(0.0503374913, 5);
});

test('one reading says the same everywhere, and is sure of itself alone', () => {
  const kriging = krige(observed([[10, 10, 2.5]]), { shape: 'matern-5/2', length: 20, sill: 1 });
  const at = Float64Array.of(10, 10, 0, 30, 10, 0, 500, 10, 0);
  for (const depth of depthsAt(kriging, at)) expect(depth).toBeCloseTo(2.5, 9);
  expect(varianceAt(kriging, at, 0)).toBeLessThan(1e-6);
  // Far off, both the surface and the mean are as uncertain as the sill: 1 + 1.
  expect(varianceAt(kriging, at, 2)).toBeCloseTo(2, 6);
});

test('readings so close that a smooth covariance is singular to the last bit still give a surface', () => {
  const close = Array.from({ length: 40 }, (_, i) => [i * 0.01, 0, 1 + i * 0.001] as const);
  const kriging = krige(observed(close), { shape: 'gaussian', length: 100, sill: 1 });
  for (const depth of depthsAt(kriging, Float64Array.of(0.2, 0, 0, 50, 0, 0))) expect(depth).not.toBeNaN();
});

test('no reading, and two at one place without an error, are refused', () => {
  const covariance: Covariance = { shape: 'matern-5/2', length: 20, sill: 1 };
  expect(() => krige(observed([]), covariance)).toThrow('at least one reading');
});
