import { describe, expect, test } from 'vitest';
import { krige, type Places, varianceAt } from '../../../../geometry/depth/kriging/kriging.ts';
import { bearing, sumsOver } from '../../../../geometry/depth/kriging/weighed-sum.ts';
import { observed } from './fields.ts';

/** Midpoints of a box, and the area of each. */
function midpoints(
  width: number,
  height: number,
  columns: number,
  rows: number,
): { places: Places; weight: Float64Array } {
  const places = new Float64Array(3 * rows * columns);
  for (let i = 0; i < rows; i++)
    for (let j = 0; j < columns; j++)
      places.set([((j + 0.5) * width) / columns, ((i + 0.5) * height) / rows, 0], 3 * (i * columns + j));
  return { places, weight: new Float64Array(rows * columns).fill((width * height) / rows / columns) };
}

describe('integrals of a line from 0 to 1 with an unknown mean', () => {
  // Rasmussen and Ghahramani, Bayesian Monte Carlo (2003), with the unknown mean of ordinary kriging; closed forms by the error
  // function, worked out apart. Midpoints of 2000 pieces are off by 1e-7.
  const line = midpoints(1, 1, 2000, 1);
  const on = (x: readonly number[], y: readonly number[], length: number, variance: number) => {
    const kriging = krige(
      observed(
        x.map((at, i) => [at, 0.5, y[i]] as const),
        variance,
      ),
      { shape: 'gaussian', length, sill: 1 },
    );
    const { means, covariances } = sumsOver(kriging, { places: line.places, weights: [line.weight] });
    return [means[0], covariances[0][0]];
  };
  test('0, 1, 0 at 0, 1/2, 1: 0.616507246, variance 5.56092279e-4', () => {
    const [mean, variance] = on([0, 0.5, 1], [0, 1, 0], 0.5, 0);
    expect(mean).toBeCloseTo(0.616507246, 5);
    expect(variance / 5.56092279e-4).toBeCloseTo(1, 2);
  });
  test('1, 1, 1 gives exactly 1: a constant is not pulled towards nothing', () => {
    expect(on([0, 0.5, 1], [1, 1, 1], 0.5, 0)[0]).toBeCloseTo(1, 12);
  });
  test('1, 2, 1.5 at 0.1, 0.5, 0.9 with an error of variance 0.01: 1.58426416, variance 4.55938529e-3', () => {
    const [mean, variance] = on([0.1, 0.5, 0.9], [1, 2, 1.5], 0.3, 0.01);
    expect(mean).toBeCloseTo(1.58426416, 5);
    expect(variance / 4.55938529e-3).toBeCloseTo(1, 3);
  });
});

describe('the volume under a face of 40 x 30 mm with five readings', () => {
  const points = [
    [5, 5, 1],
    [35, 5, 1.4],
    [20, 15, 2.6],
    [5, 25, 0.8],
    [35, 25, 1.2],
  ] as const;
  const covariance = { shape: 'gaussian', length: 15, sill: 1 } as const;
  // A box in two dimensions is the product of two lines; closed forms, worked out apart.
  test.each([
    ['without a gauge error', 0, 1933.29968, 56.6218612],
    ['with one of 0.1 mm', 0.01, 1926.131, 80.2022177],
  ])('%s', (_name, variance, volume, error) => {
    const { places, weight } = midpoints(40, 30, 100, 75);
    const { means, covariances } = sumsOver(krige(observed(points, variance), covariance), {
      places,
      weights: [weight],
    });
    expect(means[0] / volume).toBeCloseTo(1, 4);
    expect(Math.sqrt(covariances[0][0]) / error).toBeCloseTo(1, 3);
  });

  test('sums go with their weights: twice the weight is four times the variance, and a sum with itself is one', () => {
    const { places, weight } = midpoints(40, 30, 12, 9);
    const double = weight.map((value) => 2 * value);
    const { means, covariances } = sumsOver(krige(observed(points, 0.01), covariance), {
      places,
      weights: [weight, double],
    });
    expect(means[1]).toBeCloseTo(2 * means[0], 9);
    expect(covariances[1][1]).toBeCloseTo(4 * covariances[0][0], 6);
    expect(covariances[0][1]).toBeCloseTo(covariances[1][0], 6);
    expect(covariances[0][1]).toBeCloseTo(2 * covariances[0][0], 6);
  });

  test('what a further reading takes off the variance is what is left of it once that reading is there', () => {
    const { places, weight } = midpoints(40, 30, 12, 9);
    const sums = { places, weights: [weight] };
    const kriging = krige(observed(points, 0.01), covariance);
    const before = sumsOver(kriging, sums);
    for (const [x, y] of [
      [30, 20],
      [12, 12],
      [39, 1],
    ]) {
      const at = Float64Array.of(x, y, 0);
      const bears = bearing(kriging, sums, before.solved[0], at, 0);
      const promised = before.covariances[0][0] - bears ** 2 / (varianceAt(kriging, at, 0) + 0.01);
      const after = sumsOver(krige(observed([...points, [x, y, 1]], 0.01), covariance), sums);
      expect(after.covariances[0][0] / promised).toBeCloseTo(1, 4);
    }
  });
});
