import { describe, expect, test } from 'vitest';
import { countdownText, instantOf, timeText } from '../../../web/bench/instant.ts';
import { MIN, SEVEN } from './bench-results.ts';

test('a moment is written with the distance of the shop from UTC, whole seconds (RFC 3339)', () => {
  expect(instantOf(SEVEN + 750_900, 60)).toBe('2026-12-01T08:12:30+01:00');
  expect(instantOf(SEVEN, 0)).toBe('2026-12-01T07:00:00+00:00');
  expect(instantOf(SEVEN, -210)).toBe('2026-12-01T03:30:00-03:30');
  expect(instantOf(SEVEN, 345)).toBe('2026-12-01T12:45:00+05:45');
  expect(Date.parse(instantOf(SEVEN + 999, -210))).toBe(SEVEN);
});

describe('a length of time', () => {
  test.each([
    [0, '0 s'],
    [59_999, '59 s'],
    [MIN, '1 min'],
    [-45 * MIN, '45 min'],
    [60 * MIN, '1 h'],
    [65 * MIN, '1 h 5 min'],
    [24 * 60 * MIN, '1 d'],
    [51.5 * 60 * MIN, '2 d 3 h'],
  ])('%d ms is said as %s', (span, words) => expect(timeText(span)).toBe(words));
  test.each([
    [0, '0:00'],
    [59_999, '0:59'],
    [19 * MIN + 5000, '19:05'],
    [62.5 * MIN, '1:02:30'],
  ])('%d ms counts down as %s', (span, words) => expect(countdownText(span)).toBe(words));
});
