import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../../web/fields/parse-quantity.ts';
import type { ScreenUnits } from '../../../web/fields/quantity-units.ts';
import { type Range, rangeText } from '../../../web/fields/range-text.ts';

describe('what a field says it takes', () => {
  it.each<[Range, ScreenUnits, string]>([
    [{ min: 0, max: 320 }, 'mm', '0 to 320 mm'],
    [{ min: 0.05 }, 'mm', '0.05 mm or more'],
    [{ max: 10_000 }, 'mm', 'up to 10000 mm'],
    [{ min: 1, max: 10_000 }, 'in', '0.0394 to 393.7 in'],
    [{ min: -45, max: 45 }, 'in', '-1.771 to 1.771 in'],
    [{}, 'in', 'unit: in'],
  ])('%j on a screen in %s', (range, units, text) => {
    expect(rangeText(range, 'length', units)).toBe(text);
  });

  it('a limit that is even in inches is taken, though 268.2 x 25.4 comes out a rounding above it', () => {
    const range = { min: 0.87, max: 6812.28 };
    expect(parseQuantity('268.2', 'length', 'in', range)).toEqual({ value: 6812.28 });
  });

  it('it does take: both ends as said are within the range', () => {
    const limit = fc.integer({ min: 1, max: 1_000_000 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(limit, limit, fc.constantFrom<ScreenUnits>('mm', 'in'), (a, b, units) => {
        // Nearer together than the figures tell apart, there is nothing between to say.
        fc.pre(Math.abs(a - b) > 0.1 + Math.max(a, b) / 500);
        const range = { min: Math.min(a, b), max: Math.max(a, b) };
        const ends = rangeText(range, 'length', units)
          .replace(/ (mm|in)$/, '')
          .split(' to ');
        for (const end of ends) expect(parseQuantity(end, 'length', units, range)).toHaveProperty('value');
      }),
    );
  });
});
