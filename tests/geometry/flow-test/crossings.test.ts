import { expect, test } from 'vitest';
import { crossings } from '../../../geometry/flow-test/crossings.ts';
import { monotoneCurve } from '../../../geometry/flow-test/monotone-curve.ts';

// Straight stretches have closed forms.
test('a straight curve meets a level, a slope and its own ends', () => {
  const curve = monotoneCurve([
    { x: 0, y: 20 },
    { x: 100, y: 10 },
  ]);
  expect(crossings(curve, 13)[0]).toBeCloseTo(70, 9);
  // 20 - x / 10 = x / 5.
  expect(crossings(curve, 0, 0.2)[0]).toBeCloseTo(200 / 3, 9);
  expect(crossings(curve, 20)).toEqual([0]);
  expect(crossings(curve, 10)).toEqual([100]);
  expect(crossings(curve, 9.9)).toEqual([]);
});

test('a curve that rises and falls meets a level twice', () => {
  const curve = monotoneCurve([
    { x: 0, y: 10 },
    { x: 50, y: 12 },
    { x: 100, y: 10 },
  ]);
  const [first, second, ...more] = crossings(curve, 11);
  expect(more).toEqual([]);
  expect(first + second).toBeCloseTo(100, 9);
});

test('a single point is met where it lies', () => {
  expect(crossings([{ x: 90, y: 13, slope: 0 }], 13)).toEqual([90]);
  expect(crossings([{ x: 90, y: 13, slope: 0 }], 12)).toEqual([]);
  expect(crossings([], 12)).toEqual([]);
});
