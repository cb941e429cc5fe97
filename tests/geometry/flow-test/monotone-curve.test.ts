import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { monotoneCurve, valueAt } from '../../../geometry/flow-test/monotone-curve.ts';

const curveOf = (xs: readonly number[], ys: readonly number[]) =>
  monotoneCurve(xs.map((x, i) => ({ x, y: ys[i] })));

// PchipInterpolator of SciPy 1.17.1 (Fritsch and Butland), to the digits it prints.
describe('against other code', () => {
  const flows = [0, 30, 60, 75, 90, 110];
  test.each([
    [10, 17.402737520128824],
    [45, 16.1927215950036],
    [68, 14.593814194645134],
    [82.5, 13.337468758678146],
    [100, 11.442395134949289],
    [109, 10.242226936135465],
  ])('head at %f', (x, y) => {
    expect(valueAt(curveOf(flows, [17.5, 16.9, 15.2, 14, 12.6, 10.1]), x)).toBeCloseTo(y, 12);
  });

  test.each([
    [10, 2.1120370370370374],
    [45, 3.0432426948051945],
    [68, 3.7233319865319863],
    [82.5, 4.067453917050691],
    [100, 4.32315668202765],
    [109, 4.39532569124424],
  ])('power at %f', (x, y) => {
    expect(valueAt(curveOf(flows, [1.9, 2.6, 3.5, 3.9, 4.2, 4.4]), x)).toBeCloseTo(y, 12);
  });

  test.each([
    [10, 0.21722751322751319],
    [45, 0.63514790228359],
    [68, 0.7159455079168386],
    [82.5, 0.718529197080292],
    [100, 0.672092022940563],
  ])('efficiency over its best at %f', (x, y) => {
    expect(valueAt(curveOf(flows, [0, 0.52, 0.7, 0.722, 0.71, 0.6]), x)).toBeCloseTo(y, 12);
  });

  test.each([
    [2, 2.06666667],
    [5, 3.6354166666666665],
    [25, 4.875],
    [38, 4.18696296],
  ])('three points that turn, at %f', (x, y) => {
    expect(valueAt(curveOf([0, 10, 40], [1, 5, 4]), x)).toBeCloseTo(y, 8);
  });
});

describe('few points', () => {
  test('none, one, two', () => {
    expect(valueAt(monotoneCurve([]), 5)).toBeNull();
    expect(valueAt(curveOf([5], [3]), 5)).toBe(3);
    expect(valueAt(curveOf([5], [3]), 5.001)).toBeNull();
    expect(valueAt(curveOf([0, 10], [1, 3]), 2.5)).toBeCloseTo(1.5, 12);
  });

  test('points of one flow are one at their mean, in whatever order they come', () => {
    const curve = curveOf([60, 30, 60, 90], [4, 2, 6, 8]);
    expect(curve.map(({ x, y }) => [x, y])).toEqual([
      [30, 2],
      [60, 5],
      [90, 8],
    ]);
  });
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const points = fc.array(fc.record({ x: number(0, 500), y: number(0, 100) }), { minLength: 1, maxLength: 12 });

describe('whatever the points', () => {
  const apart = points.map((some) =>
    some.filter(({ x }, i) => some.every((other, k) => k >= i || Math.abs(other.x - x) > 1e-3)),
  );

  test('it goes through each of them', () => {
    fc.assert(
      fc.property(apart, (some) => {
        const curve = monotoneCurve(some);
        for (const { x, y } of some) expect(valueAt(curve, x)).toBeCloseTo(y, 9);
      }),
    );
  });

  test('between two of them it stays between their values, and goes one way', () => {
    fc.assert(
      fc.property(apart, (some) => {
        const curve = monotoneCurve(some);
        for (const [i, to] of curve.slice(1).entries()) {
          const from = curve[i];
          const way = Math.sign(to.y - from.y);
          let last = from.y;
          for (let k = 1; k <= 20; k++) {
            const y = valueAt(curve, from.x + ((to.x - from.x) * k) / 20) ?? Number.NaN;
            expect((y - last) * way).toBeGreaterThanOrEqual(-1e-9);
            expect(y).toBeGreaterThanOrEqual(Math.min(from.y, to.y));
            expect(y).toBeLessThanOrEqual(Math.max(from.y, to.y));
            last = y;
          }
        }
      }),
    );
  });

  test('beyond its ends there is nothing', () => {
    fc.assert(
      fc.property(points, number(0.01, 1000), (some, far) => {
        const curve = monotoneCurve(some);
        expect(valueAt(curve, curve[0].x - far)).toBeNull();
        expect(valueAt(curve, curve[curve.length - 1].x + far)).toBeNull();
      }),
    );
  });
});
