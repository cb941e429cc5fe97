import { expect, test } from 'vitest';
import { gapCost, ROUNDED_TIP_LEAK } from '../../../geometry/clearance/gap-cost.ts';

/** Checks, F6: closing from 1.5 to 0.25 mm may raise efficiency by up to 10 points, so 8 to the mm; nothing is published beyond. */
test('the whole published range is worth 10 points at the most', () => {
  const cost = gapCost(1.5, 0.25);
  expect(cost).toMatchObject({ way: 'gain', outside: 0 });
  expect(cost?.most).toBeCloseTo(10, 9);
  expect(cost?.within).toBeCloseTo(1.25, 9);
});

test('opening loses as much as closing gains', () => {
  expect(gapCost(0.4, 0.9)).toMatchObject({ way: 'loss' });
  expect(gapCost(0.4, 0.9)?.most).toBeCloseTo(4, 9);
  expect(gapCost(0.9, 0.4)?.most).toBeCloseTo(4, 9);
});

test('what lies outside the range is told and not counted', () => {
  const cost = gapCost(2.1, 0.5);
  expect(cost?.within).toBeCloseTo(1, 9);
  expect(cost?.outside).toBeCloseTo(0.6, 9);
  expect(cost?.most).toBeCloseTo(8, 9);
  const below = gapCost(1, 0.1);
  expect(below?.within).toBeCloseTo(0.75, 9);
  expect(below?.outside).toBeCloseTo(0.15, 9);
});

test('nothing is said of a change outside the range, of none, or of parts that meet', () => {
  expect(gapCost(1, -0.2)).toBeNull();
  expect(gapCost(1, 0)).toBeNull();
  expect(gapCost(5, 1.6)).toBeNull();
  expect(gapCost(0.1, 0.24)).toBeNull();
  expect(gapCost(0.8, 0.8)).toBeNull();
});

/** Ishida, Ueki and Senoo 1990, from checks F6: leak coefficients 0.91 round, 0.73 sharp. */
test('a rounded tip leaks a quarter more', () => {
  expect(ROUNDED_TIP_LEAK).toBeCloseTo(1.247, 3);
});
