import { expect, test } from 'vitest';
import { forceAt, shareOfWeight } from '../../../geometry/balance/force.ts';

// F = U w^2; worked out by other code to the digits given.
test.each([
  [1000, 1450, 23.0565],
  [1000, 2900, 92.226],
  [1000, 3000, 98.696],
  [250, 980, 2.63299],
  [589.159, 1450, 13.5839],
])('%f g.mm at %f r/min pull with %f N', (unbalance, speed, force) => {
  expect(forceAt(unbalance, speed) / force).toBeCloseTo(1, 5);
});

test('589.159 g.mm at 1450 r/min are 9.7548 % of what a rotor of 14.2 kg weighs', () => {
  expect(100 * shareOfWeight(forceAt(589.159, 1450), 14_200)).toBeCloseTo(9.7548, 4);
});
