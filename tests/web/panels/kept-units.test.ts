import { expect, test } from 'vitest';
import { keptUnits } from '../../../web/panels/kept-units.ts';

test('a number stays with its unit, and words may part', () => {
  expect(keptUnits('−0.20 to 0.50 mm filled, ± 1.3 points in 3 intervals')).toBe(
    '−0.20 to 0.50\u00a0mm filled, ±\u00a01.3\u00a0points in 3 intervals',
  );
  expect(keptUnits('0.4 in, 90 m³/h at 13.5 m, 69.0 % of it, 8450 h.')).toBe(
    '0.4\u00a0in, 90\u00a0m³/h at 13.5\u00a0m, 69.0\u00a0% of it, 8450\u00a0h.',
  );
});
