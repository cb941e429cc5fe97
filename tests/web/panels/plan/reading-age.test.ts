import { expect, test } from 'vitest';
import { readingAge } from '../../../../web/panels/plan/reading-age.ts';

const NOW = '2026-12-01T12:00';

test.each([
  [undefined, 'unknown', 'When it was read is not known.'],
  ['2026-12-01T12:00', 'fresh', 'Taken just now.'],
  ['2026-12-01T11:48', 'fresh', 'Taken 12 min ago.'],
  ['2026-12-01T08:00', 'fresh', 'Taken 4 h ago.'],
  ['2026-12-01T07:59', 'old', 'Taken 4 h ago: read again.'],
  ['2026-12-01T06:30', 'old', 'Taken 5 h ago: read again.'],
  ['2026-11-30T22:00', 'old', 'Taken 14 h ago: read again.'],
  ['2026-11-28T12:00', 'old', 'Taken 3 days ago: read again.'],
  // Two clocks may differ by some minutes; more is a slip in the day or the hour.
  ['2026-12-01T12:05', 'fresh', 'Taken just now.'],
] as const)('read at %s it is %s', (takenAt, kind, text) => {
  expect(readingAge(takenAt, NOW)).toEqual({ kind, text });
});

test('a clock that stands before the reading is said, not taken for a fresh reading', () => {
  expect(readingAge('2026-12-01T12:06', NOW)).toEqual({
    kind: 'ahead',
    text: "Taken 6 min ahead of this device's clock: set the time of the reading, or the clock, right.",
  });
  expect(readingAge('2026-12-11T12:00', NOW).text).toMatch(/^Taken 10 days ahead/);
});
