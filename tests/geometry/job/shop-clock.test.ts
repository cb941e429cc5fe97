import { describe, expect, test } from 'vitest';
import {
  clockOf,
  dayOf,
  later,
  minuteOfDay,
  minutesBetween,
  tomorrowAtSeven,
  wallTime,
} from '../../../geometry/job/shop-clock.ts';

describe('the clock on the wall', () => {
  test.each([
    ['2026-12-01T07:00', 220, '2026-12-01T10:40'],
    ['2026-12-01T23:30', 45, '2026-12-02T00:15'],
    ['2026-12-31T22:00', 26 * 60, '2027-01-02T00:00'],
    // 2028 is a leap year.
    ['2028-02-28T23:59', 1, '2028-02-29T00:00'],
    ['2026-12-01T07:00', 0.6, '2026-12-01T07:01'],
    ['2026-12-01T00:10', -20, '2026-11-30T23:50'],
    // A part so cold that nothing ever sets.
    ['2026-12-01T00:10', 5e19, '9999-12-31T23:59'],
  ])('%s and %d min is %s', (time, minutes, then) => {
    expect(later(time, minutes)).toBe(then);
  });

  test('a day has 24 hours on the days on which Europe and America put their clocks forward and back', () => {
    for (const day of ['2026-03-08', '2026-03-29', '2026-10-25', '2026-11-01']) {
      expect(later(`${day}T00:30`, 6 * 60)).toBe(`${day}T06:30`);
      expect(minutesBetween(`${day}T00:30`, `${day}T06:30`)).toBe(360);
    }
  });

  test('names days as the calendar of 2026 and 2027 has them', () => {
    expect(dayOf('2026-12-01T07:00')).toBe('Tue 1 Dec');
    expect(dayOf('2027-01-31T23:59')).toBe('Sun 31 Jan');
    expect(clockOf('2027-01-31T23:59')).toBe('23:59');
    expect(minuteOfDay('2027-01-31T23:59')).toBe(1439);
  });

  test('shows what the device shows, whatever its zone', () => {
    expect(wallTime(new Date(2026, 11, 1, 7, 5, 59))).toBe('2026-12-01T07:05');
  });

  test('tomorrow is the next day also on the last of a month', () => {
    expect(tomorrowAtSeven('2026-11-30T23:59')).toBe('2026-12-01T07:00');
    expect(tomorrowAtSeven('2026-12-01T00:00')).toBe('2026-12-02T07:00');
  });
});
