import { describe, expect, test } from 'vitest';
import type { LogFile } from '../../../geometry/job/job-file.ts';
import { benchTimers } from '../../../web/bench/timers.ts';
import { at, BENCH, MIN, SEVEN } from './bench-results.ts';

/** `kind name phase minutes` of every time that runs so many minutes after seven. Times are those of BENCH: sums and differences. */
function running(log: LogFile, minutes: number): string[] {
  return benchTimers(BENCH, log, SEVEN + minutes * MIN).map(
    ({ kind, name, phase, span }) => `${kind} ${name} ${phase} ${span / MIN}`,
  );
}

describe('the time left in a mix', () => {
  const log = [{ step: 'fill:1', started: at(0) }];
  test('runs from the start of mixing for the working time of 20 min', () => {
    expect(running(log, 5)).toEqual(['mix Mix 1 running 15']);
    expect(running(log, 18)).toEqual(['mix Mix 1 ending 2']);
    expect(running(log, 20)).toEqual(['mix Mix 1 over 0']);
    expect(running(log, 65)).toEqual(['mix Mix 1 over 45']);
  });
  test('a coat has its own, 30 min', () => {
    expect(running([{ step: 'coat:1.2', started: at(0) }], 5)).toEqual(['mix Coat 1, mix 2 running 25']);
  });
  test('also of a mix that the plan has no more', () => {
    expect(running([{ step: 'fill:9', started: at(0) }], 5)).toEqual(['mix Mix 9 running 15']);
  });
  test('a start that lies ahead gives no more than the working time, and is marked', () => {
    const [timer] = benchTimers(BENCH, [{ step: 'fill:1', started: at(30) }], SEVEN);
    expect(timer.span).toBe(20 * MIN);
    expect(timer.isAhead).toBe(true);
  });
  test('ends when it is done or thrown away', () => {
    expect(running([{ step: 'fill:1', started: at(0), done: at(9), outcome: 'discarded' }], 10)).toEqual([]);
  });
});

describe('the window to dress a fill', () => {
  const log = [{ step: 'fill:1', started: at(0), done: at(15) }];
  test('opens 60 min after its end and closes at 120 min', () => {
    expect(running(log, 20)).toEqual(['dress Mix 1 early 55']);
    expect(running(log, 75)).toEqual(['dress Mix 1 open 60']);
    expect(running(log, 125)).toEqual(['dress Mix 1 closing 10']);
    expect(running(log, 140)).toEqual(['dress Mix 1 closed 5']);
  });
  test('goes when its dressing is begun, done or skipped, and is not there when the plan does not dress it', () => {
    expect(running([...log, { step: 'dress:1', started: at(80) }], 85)).toEqual([]);
    expect(running([{ step: 'fill:9', started: at(0), done: at(15) }], 20)).toEqual([]);
  });
  test('a fill that was skipped firms up nowhere', () => {
    expect(running([{ step: 'fill:1', started: at(0), done: at(0), outcome: 'skipped' }], 5)).toEqual([]);
  });
});

describe('the window for the next coat', () => {
  const first = { step: 'coat:1.1', started: at(0), done: at(10) };
  const second = { step: 'coat:1.2', started: at(12), done: at(30) };
  test('waits for the last mix of the coat', () => {
    expect(running([first], 40)).toEqual([]);
  });
  test('opens 240 min after the last mix and closes 1440 min after the first', () => {
    expect(running([first, second], 60)).toEqual(['overcoat Coat 1 early 210']);
    expect(running([first, second], 270)).toEqual(['overcoat Coat 1 open 1180']);
    expect(running([first, second], 1450)).toEqual(['overcoat Coat 1 closed 0']);
  });
  test('goes when the next coat is begun', () => {
    expect(running([first, second, { step: 'coat:2.1', started: at(300) }], 301)).toEqual([
      'mix Coat 2 running 29',
    ]);
  });
});

describe('what just takes its time', () => {
  test('solvent flashes off for 15 min after the wipe, and what follows ends the wait', () => {
    const log = [{ step: 'wipe:plate', started: at(0), done: at(10) }];
    expect(running(log, 12)).toEqual(['wait flash-off waiting 13']);
    expect(running(log, 26)).toEqual(['wait flash-off passed 1']);
    expect(running([...log, { step: 'fill:1', started: at(26) }], 27)).toEqual(['mix Mix 1 running 19']);
  });
  test('the last coat hardens for 1440 min', () => {
    expect(running([{ step: 'coat:2.1', started: at(0), done: at(10) }], 70)).toEqual([
      'wait harden waiting 1380',
    ]);
  });
  test('without a window from the data sheet firming up is a wait of the plan', () => {
    const plan = BENCH.plan.flatMap((each) =>
      each.id === 'fill:2'
        ? [
            each,
            {
              ...each,
              id: 'firm-up:1',
              kind: 'firm-up' as const,
              hands: false,
              after: ['fill:1'],
              minutes: 20,
            },
          ]
        : [each],
    );
    const timers = benchTimers(
      { ...BENCH, plan, filler: { ...BENCH.filler, firmsUp: null } },
      [{ step: 'fill:1', started: at(0), done: at(10) }],
      SEVEN + 15 * MIN,
    );
    expect(timers.map(({ kind, span }) => [kind, span])).toEqual([['wait', 15 * MIN]]);
  });
});

test('several at once stand by urgency: overdue, then what is due next, what is too late behind that', () => {
  const log = [
    { step: 'fill:1', started: at(0), done: at(10) },
    { step: 'fill:2', started: at(101) },
    { step: 'wipe:plate', started: at(90), done: at(118) },
    { step: 'coat:1.1', started: at(80) },
  ];
  expect(running(log, 119)).toEqual([
    'mix Coat 1, mix 1 over 9',
    'mix Mix 2 ending 2',
    'dress Mix 1 open 11',
  ]);
  // Closed for 3 min stands behind a mix that ends in 8.
  const later = [log[0], { step: 'fill:2', started: at(121) }];
  expect(running(later, 133)).toEqual(['mix Mix 2 running 8', 'dress Mix 1 closed 3']);
});
