import { describe, expect, test } from 'vitest';
import { factor } from '../../../../geometry/depth/kriging/cholesky.ts';
import { candidates } from '../../../../geometry/depth/kriging/choose-covariance.ts';
import { correlation } from '../../../../geometry/depth/kriging/correlation.ts';
import { observed, seeded } from './fields.ts';

/** Readings of a random surface with a known covariance, drawn through its own factor: mean 3 mm, one standard deviation 1 mm. */
function drawn(seed: number, count: number, length: number): [number, number, number][] {
  const random = seeded(seed);
  const gauss = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const places = Array.from({ length: count }, () => [300 * random(), 300 * random()] as const);
  const lower = Float64Array.from(
    places.flatMap(([x, y], i) =>
      places.map(
        ([a, b], j) => correlation('matern-5/2', Math.hypot(x - a, y - b) / length) + (i === j ? 1e-9 : 0),
      ),
    ),
  );
  factor(lower, count);
  const noise = places.map(gauss);
  return places.map(([x, y], i) => {
    let depth = 3;
    for (let k = 0; k <= i; k++) depth += lower[i * count + k] * noise[k];
    return [x, y, depth];
  });
}

describe('a length of 20 and one of 80 mm', () => {
  // Forty draws of sixty readings each: the middle of the lengths found lies within a third of the true one.
  test.each([20, 80])('%i mm is found', (length) => {
    const found = Array.from({ length: 40 }, (_, seed) => {
      const [best] = candidates(observed(drawn(seed, 60, length), 1e-4), 420, {});
      return best.covariance.length;
    }).sort((a, b) => a - b);
    expect(found[20] / length).toBeGreaterThan(0.67);
    expect(found[20] / length).toBeLessThan(1.5);
  });
});

test('many readings judged in blocks find what all of them together find', () => {
  const points = drawn(3, 400, 50);
  const [best] = candidates(observed(points, 1e-4), 420, {});
  expect(best.covariance.length / 50).toBeGreaterThan(0.6);
  expect(best.covariance.length / 50).toBeLessThan(1.7);
});

test('beliefs add up to one and come in order', () => {
  const all = candidates(observed(drawn(1, 20, 50), 0.01), 420, {});
  expect(all.reduce((sum, { belief }) => sum + belief, 0)).toBeCloseTo(1, 9);
  expect(all.every(({ belief }, i) => i === 0 || belief <= all[i - 1].belief)).toBe(true);
});

test('what the person gives is taken as it is', () => {
  const given = { shape: 'exponential', length: 33, sill: 0.4 } as const;
  expect(candidates(observed(drawn(1, 20, 50)), 420, given)).toEqual([{ covariance: given, belief: 1 }]);
  const all = candidates(observed(drawn(1, 20, 50)), 420, { length: 33 });
  expect(new Set(all.map(({ covariance }) => covariance.length))).toEqual(new Set([33]));
});

test.each([
  ['one reading', [[10, 10, 2]]],
  [
    'two',
    [
      [10, 10, 2],
      [200, 100, 3],
    ],
  ],
  ['all equal', Array.from({ length: 9 }, (_, i) => [30 * i, 17 * (i % 3), 2])],
  ['all equal to nothing', Array.from({ length: 9 }, (_, i) => [30 * i, 17 * (i % 3), 0])],
  ['all in a line', Array.from({ length: 9 }, (_, i) => [30 * i, 0, i % 4])],
] as [string, [number, number, number][]][])(
  '%s: a sensible covariance, without and with a gauge error',
  (_name, points) => {
    for (const variance of [0, 0.01]) {
      const [{ covariance }] = candidates(observed(points, variance), 420, {});
      expect(covariance.length).toBeGreaterThan(1);
      expect(covariance.length).toBeLessThanOrEqual(420 + 1e-9);
      expect(covariance.sill).toBeGreaterThan(0);
      expect(covariance.sill).toBeLessThan(100);
    }
  },
);
