import { expect, test } from 'vitest';
import { measurementError } from '../../../geometry/flow-test/measurement-error.ts';

// ISO 9906:2012, table 7: flow, head, torque, speed and motor power, and the efficiency that the table prints beside them. From memory; the
// printed efficiencies follow from the others as the root of the sum of squares.
test.each([
  [1, 'shaft', 2.9],
  [2, 'shaft', 6.1],
  [3, 'shaft', 6.1],
  [1, 'through the motor', 3.2],
  [2, 'through the motor', 6.4],
  [3, 'through the motor', 6.4],
  [1, 'motor alone', 2.9],
  [2, 'motor alone', 6.1],
] as const)('grade %i, power %s: efficiency +- %f %%', (gauges, known, printed) => {
  expect(measurementError(gauges, known).efficiency * 100).toBeCloseTo(printed, 1);
});

test('to the digits: 2.909, 6.124 and 6.364 %', () => {
  expect(measurementError(1, 'shaft').efficiency).toBeCloseTo(0.02909, 5);
  expect(measurementError(2, 'shaft').efficiency).toBeCloseTo(0.06124, 5);
  expect(measurementError(2, 'through the motor').efficiency).toBeCloseTo(0.06364, 5);
});
