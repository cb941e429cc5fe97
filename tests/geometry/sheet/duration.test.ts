import { describe, expect, test } from 'vitest';
import {
  dayAndClock,
  durationText,
  momentText,
  spanText,
  windowText,
} from '../../../geometry/sheet/duration.ts';

const START = '2026-12-01T07:00';

describe('how long', () => {
  test.each([
    [0, '0 min'],
    [0.2, '1 min'],
    [45, '45 min'],
    [59.6, '1 h'],
    [65, '1 h 05 min'],
    [31 * 60, '31 h'],
    [1999.5, '33 h 20 min'],
  ])('%d min reads %s', (minutes, text) => {
    expect(durationText(minutes)).toBe(text);
  });
  test('a span names its unit once where both ends have it alone', () => {
    expect(spanText({ from: 30, to: 45 })).toBe('30 to 45 min');
    expect(spanText({ from: 45, to: 90 })).toBe('45 min to 1 h 30 min');
    expect(spanText({ from: 60, to: 240 })).toBe('1 h to 4 h');
  });
});

describe('when', () => {
  test('by the clock, with the weekday once it is another day than where the reader is', () => {
    expect(momentText(START, 220)).toBe('10:40');
    expect(momentText(START, 17 * 60, 220)).toBe('Wed 00:00');
    expect(momentText(START, 17 * 60 - 1, 220)).toBe('23:59');
    expect(momentText(START, 220, 25 * 60)).toBe('Tue 10:40');
    expect(dayAndClock(START, 31 * 60 + 10)).toBe('Wed 2 Dec 14:10');
  });
  test('hours from the start when the day is not known', () => {
    expect(momentText(null, 220, 3000)).toBe('+3:40');
    expect(momentText(null, 59.2)).toBe('+1:00');
    expect(momentText(null, 31 * 60 + 5)).toBe('+31:05');
    expect(dayAndClock(null, 220)).toBeNull();
  });
  test('what begins as its window opens is said to begin when it opens', () => {
    const opens = 209.3;
    expect(windowText(START, { opens, closes: 239 }, opens)).toBe(
      `opens ${momentText(START, opens)}, closes 10:59`,
    );
  });
  test('a window is never said to be wider than it is', () => {
    expect(windowText(START, { opens: 220.2, closes: 400.9 }, 230)).toBe('opens 10:41, closes 13:40');
    expect(windowText(START, { opens: 220 + 1e-9, closes: 400 - 1e-9 }, 230)).toBe(
      'opens 10:40, closes 13:40',
    );
    expect(windowText(START, { opens: 900, closes: 1100 }, 900)).toBe('opens 22:00, closes Wed 01:20');
    expect(windowText(null, { opens: 220, closes: 400 }, 230)).toBe('opens +3:40, closes +6:40');
  });
});
