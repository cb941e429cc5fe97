import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepQuantity } from '../../../web/fields/step-quantity.ts';

describe('stepping a value', () => {
  it('adds the step and nothing else: a finer value keeps its digits', () => {
    expect(stepQuantity(9.8425, 1, 'length', 'mm')).toBe(10.8425);
    expect(stepQuantity(0.2, 1, 'length', 'mm', { step: 0.1 })).toBe(0.3);
  });

  it('steps by an even size in inches: the nearest 1, 2 or 5 to the step in mm', () => {
    expect(stepQuantity(0, 1, 'length', 'in', { step: 1 })).toBeCloseTo(0.05 * 25.4, 12);
    expect(stepQuantity(0, 1, 'length', 'in', { step: 0.1 })).toBeCloseTo(0.005 * 25.4, 12);
    expect(stepQuantity(0, 1, 'length', 'in', { step: 0.5 })).toBeCloseTo(0.02 * 25.4, 12);
  });

  it('stops at the ends of the range', () => {
    expect(stepQuantity(319.5, 1, 'length', 'mm', { max: 320 })).toBe(320);
    expect(stepQuantity(0.4, -1, 'length', 'mm', { min: 0 })).toBe(0);
  });

  it('comes back where it was, as many steps up as down', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }).map((hundredths) => hundredths / 100),
        fc.integer({ min: 1, max: 20 }),
        fc.constantFrom<'mm' | 'in'>('mm', 'in'),
        (value, steps, units) => {
          let stepped = value;
          for (let i = 0; i < steps; i++) stepped = stepQuantity(stepped, 1, 'length', units, { step: 0.1 });
          for (let i = 0; i < steps; i++) stepped = stepQuantity(stepped, -1, 'length', units, { step: 0.1 });
          expect(stepped).toBeCloseTo(value, 8);
        },
      ),
    );
  });
});
