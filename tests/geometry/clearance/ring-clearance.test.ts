import { expect, test } from 'vitest';
import { ringClearance } from '../../../geometry/clearance/ring-clearance.ts';

/** The lookups of checks, F5: both columns as service manuals print the table of API 610. */
test.each([
  [49, 0.25],
  [50, 0.28],
  [120, 0.41],
  [215, 0.51],
  [310, 0.61],
  [649.9, 0.94],
  [700, 0.99],
])('a ring of %f mm runs with %f mm at the least', (diameter, clearance) => {
  expect(ringClearance(diameter).mm).toBeCloseTo(clearance, 9);
});

/** inch: <2: .010, 2-2.4999: .011, .001 more per half inch to 4.999 (.016), 5-5.999: .017, .001 per inch to 25-25.999 (.037). */
test.each([
  [1.9, 0.01],
  [2, 0.011],
  [2.4999, 0.011],
  [2.5, 0.012],
  [4.999, 0.016],
  [5, 0.017],
  [5.999, 0.017],
  [6, 0.018],
  [25.999, 0.037],
])('a ring of %f in with %f in', (inches, clearance) => {
  expect(ringClearance(inches * 25.4).inch).toBeCloseTo(clearance, 9);
});

test('beyond the last row mm go on by a thousandth to the mm, inches are not printed', () => {
  expect(ringClearance(650)).toMatchObject({ mm: 0.94, inch: 0.037 });
  expect(ringClearance(1650).mm).toBeCloseTo(1.94, 9);
  expect(ringClearance(26.1 * 25.4).inch).toBeNull();
});

test('the columns are no conversions of each other: 25 thousandths are printed 0.63 and not 0.64', () => {
  const at = ringClearance(13.5 * 25.4);
  expect(at.inch).toBeCloseTo(0.025, 9);
  expect(at.mm).toBe(0.63);
});
