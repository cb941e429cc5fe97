import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lostOf, MOST_WASTE, wasteOf } from '../../../../web/panels/fill/lost-share.ts';
import { even } from '../../even.ts';

test('p on top of the need is p of every 100 + p mixed, and back', () => {
  // By hand: 20 on 100 are 120 mixed, 20 of them lost; a fifth lost leaves four fifths, a quarter on top.
  expect(lostOf(20)).toBeCloseTo(16.6667, 4);
  expect(wasteOf(20)).toBe(25);
  expect(wasteOf(0)).toBe(0);
  fc.assert(
    fc.property(even(0, MOST_WASTE), (waste) => {
      expect(wasteOf(lostOf(waste))).toBeCloseTo(waste, 3);
    }),
  );
});

test('the most that is taken one way is the most the other way', () => {
  expect(wasteOf(lostOf(MOST_WASTE))).toBe(MOST_WASTE);
});
