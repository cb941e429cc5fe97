import { expect, test } from 'vitest';
import { inUnits, spreadWords } from '../../../../web/panels/clearance/gap-text.ts';

test('ends that come to one figure are one', () => {
  expect(spreadWords({ least: -0.2, most: 0.5 }, 'mm')).toBe('−0.20 to 0.50 mm');
  expect(spreadWords({ least: 0.301, most: 0.299 }, 'mm')).toBe('0.30 mm');
});

test('words of the engine keep their mm, or have every length in inches, places to a tenth', () => {
  const words = 'along 166 mm, height 9 mm has 3.83 mm of metal left in 2 mixes';
  expect(inUnits(words, 'mm')).toBe(words);
  // 166 / 25.4 = 6.5354, 9 / 25.4 = 0.3543, 3.83 / 25.4 = 0.1508
  const inches = inUnits(words, 'in');
  expect(inches).not.toContain('mm');
  expect(inches.match(/[\d.]+ in\b/g)?.map((length) => Number.parseFloat(length))).toEqual([
    6.5,
    0.4,
    expect.closeTo(0.1508, 3),
  ]);
});
