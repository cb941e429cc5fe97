/**
 * The bench while its screen is open: the time, what was said last, and the person's choices. Nothing of the job is here: what was
 * mixed when stands in its log, and every time follows from that.
 */
import { useStore } from 'zustand/react';
import { createStore } from 'zustand/vanilla';
import { jobStore } from '../job/job-store.ts';
import { estimateStore } from '../worker/estimate-client.ts';
import {
  type BenchClock,
  benchTime,
  type ClockLook,
  keptOf,
  lookAtClock,
  type Ms,
  openClock,
  type Reading,
  SECOND,
} from './bench-clock.ts';
import { clockOn, clockWords } from './bench-words.ts';
import { keepBench, keptBench } from './kept-bench.ts';
import { logOf, newestStamp } from './step-log.ts';
import { benchTimers } from './timers.ts';
import { type Phases, turnsSince } from './turns.ts';

export interface BenchState {
  readonly clock: BenchClock | null;
  /** Read out and shown until seen. */
  readonly said: readonly string[];
  /** id of the step the person took in hand; null follows the plan. */
  readonly taken: string | null;
  readonly isMuted: boolean;
  readonly isKeptAwake: boolean;
  set(change: Partial<Pick<BenchState, 'said' | 'taken' | 'isMuted' | 'isKeptAwake'>>): void;
}

/** What the bench takes from the device. */
export interface BenchDevice {
  read(): Reading;
  /** Makes itself heard and felt. */
  alert(tone: 'loud' | 'soft'): void;
}

export const benchStore = createStore<BenchState>()((set) => {
  const { isMuted, isKeptAwake } = keptBench();
  return { clock: null, said: [], taken: null, isMuted, isKeptAwake, set: (change) => set(change) };
});

export function useBench<T>(select: (state: BenchState) => T): T {
  return useStore(benchStore, select);
}

/** The device is told what the clock showed this often, ms. */
const KEEP_EVERY: Ms = 5 * SECOND;

export interface BenchWatch {
  /** Looks at the clocks, and says what turned since. */
  look(): void;
  stop(): void;
}

/** Opens the bench: from now on each `look` tells what turned. */
export function watchBench({ read, alert }: BenchDevice): BenchWatch {
  let isWatched = false;
  let phases: Phases | null = null;
  let keptAt = -Infinity;
  // What was said before the screen was left is old by now.
  benchStore.setState({ said: [] });

  const look = () => {
    const reading = read();
    const { clock, news } = nextLook(reading, isWatched);
    isWatched = true;
    benchStore.setState({ clock });
    const log = logOf(jobStore.getState().job);
    const { result } = estimateStore.getState();
    const timers = result === null ? [] : benchTimers(result, log, benchTime(clock));
    const isMixing = timers.some(({ kind }) => kind === 'mix');
    const turns = turnsSince(phases, timers, clockOn(clock.seen.wall, clock.back));
    // Times come with the first figures; until then nothing was looked at.
    if (result !== null) phases = turns.phases;
    const told = news.filter(({ kind }) => kind !== 'away' || isMixing);
    const words = [...turns.words, ...told.map((each) => clockWords(each, isMixing))];
    if (words.length > 0) benchStore.setState({ said: words });
    if (turns.tone !== null) alert(turns.tone);
    if (news.length > 0 || Math.abs(reading.wall - keptAt) >= KEEP_EVERY) {
      keptAt = reading.wall;
      keep();
    }
  };
  const stopKeeping = benchStore.subscribe((now, before) => {
    if (now.isMuted !== before.isMuted || now.isKeptAwake !== before.isKeptAwake) keep();
  });
  return {
    look,
    stop() {
      stopKeeping();
      keep();
      benchStore.setState({ taken: null });
    },
  };
}

/** Looks at the clock for a stamp, so that two presses never stand in the wrong order. @returns bench time */
export function stampTime(read: BenchDevice['read']): Ms {
  const before = benchStore.getState().clock;
  const { clock } = before === null ? nextLook(read(), false) : lookAtClock(before, read(), true);
  return benchTime(clock);
}

function nextLook(reading: Reading, isWatched: boolean): ClockLook {
  const { clock } = benchStore.getState();
  if (clock !== null) return lookAtClock(clock, reading, isWatched);
  return openClock(keptBench().clock, reading, newestStamp(logOf(jobStore.getState().job)));
}

function keep(): void {
  const { clock, isMuted, isKeptAwake } = benchStore.getState();
  keepBench({ clock: clock === null ? null : keptOf(clock), isMuted, isKeptAwake });
}
