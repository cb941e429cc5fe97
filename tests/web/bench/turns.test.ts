import { describe, expect, test } from 'vitest';
import type { LogFile } from '../../../geometry/job/job-file.ts';
import { clockWords } from '../../../web/bench/bench-words.ts';
import { benchTimers } from '../../../web/bench/timers.ts';
import { type Phases, turnsSince } from '../../../web/bench/turns.ts';
import { at, BENCH, MIN, SEVEN } from './bench-results.ts';

const CLOCK = (moment: number) => new Date(moment).toISOString().slice(11, 16);
const MIXING: LogFile = [{ step: 'fill:1', started: at(0) }];

/** What is told at each of these minutes after seven, one look after the other. */
function told(log: LogFile, minutes: readonly number[]) {
  let phases: Phases | null = null;
  return minutes.map((minute) => {
    const turns = turnsSince(phases, benchTimers(BENCH, log, SEVEN + minute * MIN), CLOCK);
    phases = turns.phases;
    return { words: turns.words, tone: turns.tone };
  });
}

const NOTHING = { words: [], tone: null };

describe('what is told', () => {
  test('of a mix: at 2 min left and at 0, once each', () => {
    expect(told(MIXING, [1, 17.9, 18, 19, 20, 21])).toEqual([
      NOTHING,
      NOTHING,
      { words: ['Mix 1: 2 min left.'], tone: 'soft' },
      NOTHING,
      { words: ['Mix 1: time is up.'], tone: 'loud' },
      NOTHING,
    ]);
  });
  test('of a window: when it opens, 10 min before it closes, when it closes', () => {
    const log = [{ step: 'fill:1', started: at(0), done: at(15) }];
    expect(told(log, [20, 75, 125, 135])).toEqual([
      NOTHING,
      { words: ['Mix 1 is firm: dress it now, until 09:15.'], tone: 'soft' },
      { words: ['Mix 1: 10 min left to dress it.'], tone: 'soft' },
      { words: ['Mix 1: too late to dress it soft.'], tone: 'loud' },
    ]);
  });
  test('after a sleep: where it stands now, in one go, and not what was slept through', () => {
    expect(told(MIXING, [1, 46])[1]).toEqual({
      words: ['Mix 1: time is up since 26 min.'],
      tone: 'loud',
    });
    const window = [{ step: 'fill:1', started: at(0), done: at(15) }];
    expect(told(window, [20, 300])[1].words).toEqual(['Mix 1: too late to dress it soft, since 2 h 45 min.']);
  });
  test('at the first look: only what presses, and without a sound', () => {
    expect(told(MIXING, [5])).toEqual([NOTHING]);
    expect(told(MIXING, [46])).toEqual([{ words: ['Mix 1: time is up since 26 min.'], tone: null }]);
  });
});

test('a clock that went on says that the mix is to be checked, when there is one', () => {
  expect(clockWords({ kind: 'on', by: 45 * MIN }, true)).toBe(
    'The clock went on by 45 min: the device slept or was set. Check the mix.',
  );
  expect(clockWords({ kind: 'on', by: 45 * MIN }, false)).toBe(
    'The clock went on by 45 min: the device slept or was set.',
  );
});
