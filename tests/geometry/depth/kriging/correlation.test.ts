import { describe, expect, test } from 'vitest';
import { correlation, correlationTable, tableScale } from '../../../../geometry/depth/kriging/correlation.ts';

const SHAPES = ['exponential', 'gaussian', 'matern-3/2', 'matern-5/2'] as const;

describe.each(SHAPES)('%s', (shape) => {
  test('is 1 at no distance, falls all the way, and tells nothing far off', () => {
    expect(correlation(shape, 0)).toBe(1);
    for (let h = 0; h < 10; h += 0.1) expect(correlation(shape, h + 0.1)).toBeLessThan(correlation(shape, h));
    expect(correlation(shape, 14)).toBeLessThan(1e-6);
  });

  test('its table is true to 1e-6 between any two entries', () => {
    const table = correlationTable(shape);
    for (let distance = 0; distance < 600; distance += 0.37) {
      const at = distance * tableScale(43);
      const i = Math.floor(at);
      if (i >= table.length - 2) continue;
      const read = table[i] + (at - i) * (table[i + 1] - table[i]);
      expect(Math.abs(read - correlation(shape, distance / 43))).toBeLessThan(1e-6);
    }
  });
});

test('at one length: exp(-1), exp(-1/2), (1 + sqrt 3) exp(-sqrt 3), (1 + sqrt 5 + 5/3) exp(-sqrt 5), by hand', () => {
  expect(SHAPES.map((shape) => correlation(shape, 1))).toEqual([
    expect.closeTo(0.36787944, 8),
    expect.closeTo(0.60653066, 8),
    expect.closeTo(0.48335772, 8),
    expect.closeTo(0.52399411, 8),
  ]);
});
