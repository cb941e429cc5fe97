import { expect, test } from 'vitest';
import { formatQuantity } from '../../../web/fields/format-quantity.ts';
import { parseQuantity } from '../../../web/fields/parse-quantity.ts';
import type { Quantity } from '../../../web/fields/quantity-units.ts';

// US gallon 231 in3, foot 0.3048 m, horsepower 550 ft.lbf/s = 0.745 699 872 kW: definitions, worked out by hand.
test.each<[string, Quantity, number]>([
  ['90', 'flow', 90],
  ['90,5 m3/h', 'flow', 90.5],
  ['25 L/s', 'flow', 90],
  ['1500 l/min', 'flow', 90],
  ['400 gpm', 'flow', 90.849882816],
  ['13.2', 'head', 13.2],
  ['50 ft', 'head', 15.24],
  ['5.5 kW', 'kilowatts', 5.5],
  ['5500 W', 'kilowatts', 5.5],
  ['10 hp', 'kilowatts', 7.45699872],
  ['998', 'liquidDensity', 998],
  ['1.05 g/cm3', 'liquidDensity', 1050],
  ['4000 h', 'hours', 4000],
])('%s as %s is %f', (text, quantity, value) => {
  for (const units of ['mm', 'in'] as const) {
    const parsed = parseQuantity(text, quantity, units);
    expect('value' in parsed ? parsed.value : parsed.fault).toBeCloseTo(value, 9);
  }
});

test('they stand in SI on both screens, so that fields, curves and sheet say the same', () => {
  for (const units of ['mm', 'in'] as const) {
    expect(formatQuantity(90.125, 'flow', units, { as: 'typed' })).toBe('90.125');
    expect(formatQuantity(13.2, 'head', units)).toBe('13.20');
    expect(formatQuantity(5.5, 'kilowatts', units)).toBe('5.50');
  }
});
