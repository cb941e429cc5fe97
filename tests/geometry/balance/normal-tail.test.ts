import { expect, test } from 'vitest';
import { normalTail } from '../../../geometry/balance/normal-tail.ts';

// erfc(x / sqrt 2) / 2 by mpmath 1.3 with 30 digits.
test.each([
  [0, 0.5],
  [0.5, 0.3085375387259869],
  [1, 0.158655253931457],
  [1.96, 0.02499789514822043],
  [3, 0.001349898031630095],
  [3.5, 2.32629079035525e-4],
  [3.6, 1.591085901575339e-4],
  [5, 2.866515718791939e-7],
  [8, 6.220960574271784e-16],
  [20, 2.753624118606234e-89],
])('above %f lies %f', (x, tail) => {
  expect(normalTail(x) / tail).toBeCloseTo(1, 11);
  expect(normalTail(-x)).toBeCloseTo(1 - tail, 15);
});

test('nothing lies beyond all bounds', () => {
  expect(normalTail(Infinity)).toBe(0);
  expect(normalTail(-Infinity)).toBe(1);
});
