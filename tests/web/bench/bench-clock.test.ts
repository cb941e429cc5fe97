import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BenchClock,
  benchTime,
  keptOf,
  lookAtClock,
  MINUTE,
  openClock,
  type Reading,
} from '../../../web/bench/bench-clock.ts';
import { SEVEN } from './bench-results.ts';

const HOUR = 60 * MINUTE;
const START: Reading = { wall: SEVEN, mono: 5000 };

/** Looks once a second for a while, then takes the last reading. */
function watched(seconds: number, from: BenchClock = openClock(null, START, null).clock): BenchClock {
  let clock = from;
  for (let i = 1; i <= seconds; i++) {
    clock = lookAtClock(
      clock,
      { wall: from.seen.wall + i * 1000, mono: from.seen.mono + i * 1000 },
      true,
    ).clock;
  }
  return clock;
}

const later = ({ seen }: BenchClock, wall: number, mono: number): Reading => ({
  wall: seen.wall + wall,
  mono: seen.mono + mono,
});

describe('a clock that runs as it should', () => {
  test('shows the calendar, and has no news', () => {
    const clock = watched(90);
    expect(benchTime(clock)).toBe(SEVEN + 90_000);
    expect(lookAtClock(clock, later(clock, 60_000, 60_000), true).news).toEqual([]);
  });
});

describe('a clock that is set back', () => {
  test('by an hour gives no time back, and says so once', () => {
    const before = watched(90);
    const { clock, news } = lookAtClock(before, later(before, -HOUR + 1000, 1000), true);
    expect(benchTime(clock)).toBe(SEVEN + 91_000);
    expect(news).toEqual([{ kind: 'back', by: HOUR }]);
    const next = lookAtClock(clock, later(clock, 1000, 1000), true);
    expect(next.news).toEqual([]);
    expect(benchTime(next.clock)).toBe(SEVEN + 92_000);
  });
  test('twice adds up', () => {
    let clock = watched(10);
    for (let i = 0; i < 2; i++) clock = lookAtClock(clock, later(clock, -HOUR + 1000, 1000), true).clock;
    expect(benchTime(clock)).toBe(SEVEN + 12_000);
  });
  test('in many small steps gives no more than 2 s back', () => {
    let clock = watched(1);
    // 0.5 s back at each look of a second, for a minute.
    for (let i = 0; i < 60; i++) clock = lookAtClock(clock, later(clock, 500, 1000), true).clock;
    expect(benchTime(clock)).toBeGreaterThan(SEVEN + 61_000 - 2001);
    expect(benchTime(clock)).toBeLessThanOrEqual(SEVEN + 61_000);
  });
  test('while the page was closed gives no time back either: it is at least as late as when it was seen last', () => {
    const kept = keptOf(watched(90));
    const { clock, news } = openClock(kept, { wall: SEVEN + 90_000 - HOUR, mono: 10 }, SEVEN);
    expect(benchTime(clock)).toBe(SEVEN + 90_000);
    expect(news).toEqual([{ kind: 'back', by: HOUR }]);
  });
  test('while the page was closed from years ahead is taken for a clock that was wrong all along', () => {
    const { clock, news } = openClock({ seen: SEVEN + 1e12, back: 0, backAt: null }, START, SEVEN);
    expect(benchTime(clock)).toBe(SEVEN);
    expect(news).toEqual([]);
  });
});

describe('a clock that goes on', () => {
  test('45 min while the device sleeps counts as passed, whether the page clock stood still or not', () => {
    for (const mono of [200, 45 * MINUTE]) {
      const before = watched(60);
      const { clock, news } = lookAtClock(before, later(before, 45 * MINUTE, mono), true);
      expect(benchTime(clock)).toBe(SEVEN + 60_000 + 45 * MINUTE);
      expect(news).toEqual([{ kind: 'on', by: 45 * MINUTE }]);
    }
  });
  test('up to 2 min is no news: a tab in the background is woken once a minute', () => {
    const before = watched(5);
    expect(lookAtClock(before, later(before, 2 * MINUTE, 2 * MINUTE), true).news).toEqual([]);
  });
  test('when the screen was left meanwhile only what the two clocks disagree on is news', () => {
    const before = watched(5);
    expect(lookAtClock(before, later(before, 10 * MINUTE, 10 * MINUTE), false).news).toEqual([]);
    expect(lookAtClock(before, later(before, 10 * MINUTE, 1 * MINUTE), false).news).toEqual([
      { kind: 'on', by: 9 * MINUTE },
    ]);
  });
  test('while the page was closed is told as that', () => {
    const kept = keptOf(watched(60));
    const { news } = openClock(kept, { wall: SEVEN + 60_000 + 12 * MINUTE, mono: 3 }, SEVEN);
    expect(news).toEqual([{ kind: 'away', by: 12 * MINUTE }]);
  });
});

describe('what it was set back by', () => {
  const back = lookAtClock(watched(1), { wall: SEVEN - HOUR, mono: 6000 }, true).clock;
  test('outlives a reload', () => {
    const { clock, news } = openClock(keptOf(back), { wall: SEVEN - HOUR + 3000, mono: 1 }, SEVEN);
    expect(benchTime(clock)).toBe(benchTime(back) + 3000);
    expect(news).toEqual([]);
  });
  test('lapses two days later, unless something was stamped in the last half day', () => {
    const wall = SEVEN - HOUR + 49 * HOUR;
    expect(openClock(keptOf(back), { wall, mono: 1 }, SEVEN).clock.back).toBe(0);
    expect(openClock(keptOf(back), { wall, mono: 1 }, SEVEN + 45 * HOUR).clock.back).toBe(back.back);
  });
});

test('whatever the two clocks do, bench time falls back by 2 s at most, and lags the page clock by 2 s at most', () => {
  const steps = fc.array(
    fc.record({
      wall: fc.integer({ min: -2 * HOUR, max: 2 * HOUR }),
      mono: fc.integer({ min: 0, max: HOUR }),
    }),
    { maxLength: 40 },
  );
  fc.assert(
    fc.property(steps, (moves) => {
      let { clock } = openClock(null, START, null);
      let most = benchTime(clock);
      for (const { wall, mono } of moves) {
        clock = lookAtClock(clock, later(clock, wall, mono), true).clock;
        expect(benchTime(clock)).toBeGreaterThanOrEqual(most - 2000);
        expect(benchTime(clock) - SEVEN).toBeGreaterThanOrEqual(clock.seen.mono - START.mono - 2000);
        most = Math.max(most, benchTime(clock));
      }
    }),
  );
});
