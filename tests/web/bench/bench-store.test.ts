import { beforeEach, expect, test } from 'vitest';
import type { Result } from '../../../geometry/sheet/result.ts';
import { benchTime, type Reading } from '../../../web/bench/bench-clock.ts';
import { benchStore, stampTime, watchBench } from '../../../web/bench/bench-store.ts';
import { jobStore } from '../../../web/job/job-store.ts';
import { estimateStore } from '../../../web/worker/estimate-client.ts';
import { at, BENCH, jobWith, MIN, SEVEN } from './bench-results.ts';

let now: Reading;
let heard: string[];
const device = { read: () => now, alert: (tone: string) => heard.push(tone) };

beforeEach(() => {
  now = { wall: SEVEN + MIN, mono: 1000 };
  heard = [];
  benchStore.setState({ clock: null, said: [], taken: null });
  jobStore.setState({ job: jobWith([{ step: 'fill:1', started: at(0) }]) });
  estimateStore.setState({ result: BENCH as Result });
});

const pass = (wall: number, mono: number) => {
  now = { wall: now.wall + wall, mono: now.mono + mono };
};

test('asleep for 45 min: overdue and the clock are said once, with one alarm', () => {
  const watch = watchBench(device);
  watch.look();
  expect(benchStore.getState().said).toEqual([]);
  pass(45 * MIN, 300);
  watch.look();
  const said = [
    'Mix 1: time is up since 26 min.',
    'The clock went on by 45 min: the device slept or was set. Check the mix.',
  ];
  expect(benchStore.getState().said).toEqual(said);
  pass(1000, 1000);
  watch.look();
  expect(benchStore.getState().said).toEqual(said);
  expect(heard).toEqual(['loud']);
});

test('set back by an hour: nothing is given back, and a stamp stands after the one before it', () => {
  const watch = watchBench(device);
  watch.look();
  pass(-60 * MIN, 5000);
  // The press may come before the next look.
  expect(stampTime(device.read)).toBe(SEVEN + MIN + 5000);
  watch.look();
  const { clock, said } = benchStore.getState();
  expect(clock && benchTime(clock)).toBe(SEVEN + MIN + 5000);
  expect(said).toEqual(['The clock was set back by 1 h. The times here go on as if it had not been.']);
});

test('left and opened again after 10 min: no clock is blamed, and what presses is said without a sound', () => {
  const first = watchBench(device);
  first.look();
  first.stop();
  pass(18 * MIN, 18 * MIN);
  watchBench(device).look();
  expect(benchStore.getState().said).toEqual(['Mix 1: 1 min left.']);
  expect(heard).toEqual([]);
});

test('figures that come late are looked at when they are there', () => {
  estimateStore.setState({ result: null });
  pass(19 * MIN + 1, 0);
  const watch = watchBench(device);
  watch.look();
  expect(benchStore.getState().said).toEqual([]);
  estimateStore.setState({ result: BENCH as Result });
  watch.look();
  expect(benchStore.getState().said).toEqual(['Mix 1: time is up.']);
});
