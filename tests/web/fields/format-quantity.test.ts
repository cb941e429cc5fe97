import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../../web/fields/format-quantity.ts';
import type { Quantity, ScreenUnits } from '../../../web/fields/quantity-units.ts';

describe('figures', () => {
  // A depth gauge reads 0.01 mm or 0.0005 in (common practice).
  it.each<[number, Quantity, ScreenUnits, string]>([
    [3.5, 'length', 'mm', '3.50'],
    [3.175, 'length', 'mm', '3.18'],
    [1.005, 'length', 'mm', '1.01'],
    [320, 'length', 'mm', '320.00'],
    [3.175, 'length', 'in', '0.1250'],
    [3.5, 'length', 'in', '0.1380'],
    [250, 'length', 'in', '9.8425'],
    [250, 'film', 'mm', '250'],
    [254, 'film', 'in', '10.0'],
    [7.2, 'density', 'in', '7.20'],
    [21.04, 'temperature', 'mm', '21.0'],
    [-0.004, 'length', 'mm', '0.00'],
    [-2.505, 'length', 'mm', '-2.51'],
    [1234567.8, 'volume', 'mm', '1234567.8'],
  ])('%d %s on a screen in %3$s reads %s', (value, quantity, units, text) => {
    expect(formatQuantity(value, quantity, units)).toBe(text);
  });
});

describe('values in a field', () => {
  it.each<[number, ScreenUnits, string]>([
    [320, 'mm', '320'],
    [300, 'mm', '300'],
    [3.5, 'mm', '3.5'],
    [3.175, 'mm', '3.175'],
    [0, 'mm', '0'],
    [3.175, 'in', '0.125'],
    [254, 'in', '10'],
    [3.50012, 'mm', '3.5'],
  ])('%d mm on a screen in %s reads %s', (value, units, text) => {
    expect(formatQuantity(value, 'length', units, { as: 'typed' })).toBe(text);
  });
});

it('shows digits, one dot at most and a sign, never an exponent or a mark for thousands', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.constantFrom<Quantity>('length', 'density', 'volume', 'film', 'plain'),
      fc.constantFrom<ScreenUnits>('mm', 'in'),
      fc.constantFrom<'figure' | 'typed'>('figure', 'typed'),
      (value, quantity, units, as) => {
        expect(formatQuantity(value, quantity, units, { as })).toMatch(/^-?\d+(\.\d+)?$/);
      },
    ),
  );
});

it('is not asked for what is no number', () => {
  expect(() => formatQuantity(Number.NaN, 'length', 'mm')).toThrow(
    'formatQuantity needs a finite length, got NaN',
  );
});
