import { describe, expect, test } from 'vitest';
import { readJobValue } from '../../../geometry/job/read-job.ts';
import {
  binMix,
  differsInLogAlone,
  finishStep,
  isOver,
  lastPacks,
  logOf,
  newestStamp,
  noteItem,
  skipStep,
  startStep,
  stateOf,
  takeBackLast,
} from '../../../web/bench/step-log.ts';
import { at, jobWith, MIN, SEVEN } from './bench-results.ts';

const EMPTY = jobWith([]);

describe('stamps', () => {
  test('start, done: one entry that the job file takes', () => {
    const job = finishStep(startStep(EMPTY, 'fill:1', at(0), { massA: 158, packA: 'A7' }), 'fill:1', at(12));
    expect(job.log).toEqual([{ step: 'fill:1', started: at(0), massA: 158, packA: 'A7', done: at(12) }]);
    expect(readJobValue(job)).not.toHaveProperty('faults');
    expect(isOver(logOf(job), 'fill:1')).toBe(true);
  });
  test('a second start of a step that runs changes nothing', () => {
    const job = startStep(EMPTY, 'fill:1', at(0));
    expect(startStep(job, 'fill:1', at(1))).toBe(job);
  });
  test('done without start is begun and done at once', () => {
    expect(finishStep(EMPTY, 'wash:plate', at(3)).log).toEqual([
      { step: 'wash:plate', started: at(3), done: at(3) },
    ]);
  });
  test('nothing ends before it began, when another clock stamped the start', () => {
    const job = finishStep(startStep(EMPTY, 'fill:1', at(30)), 'fill:1', at(10));
    expect(job.log?.[0].done).toBe(at(30));
    expect(readJobValue(job)).not.toHaveProperty('faults');
  });
  test('a skipped step is over; a mix thrown away is to be made again', () => {
    const skipped = skipStep(EMPTY, 'dress:1', at(5));
    expect(skipped.log?.map(stateOf)).toEqual(['skipped']);
    expect(isOver(logOf(skipped), 'dress:1')).toBe(true);
    const binned = binMix(startStep(EMPTY, 'fill:1', at(0)), 'fill:1', at(25));
    expect(binned.log?.map(stateOf)).toEqual(['discarded']);
    expect(isOver(logOf(binned), 'fill:1')).toBe(false);
    expect(startStep(binned, 'fill:1', at(30)).log).toHaveLength(2);
    expect(binMix(EMPTY, 'fill:1', at(1))).toBe(EMPTY);
  });
});

describe('notes', () => {
  test('of a skipped step leave it skipped', () => {
    const typed = noteItem(skipStep(EMPTY, 'dress:1', at(5)), 0, { note: 'no tools' });
    expect(typed.log).toMatchObject([{ note: 'no tools', outcome: 'skipped' }]);
  });
  test('that are emptied leave no field behind', () => {
    const job = noteItem(jobWith([{ step: 'fill:1', started: at(0), note: 'x', massA: 1 }]), 0, {
      note: '',
      massA: undefined as never,
    });
    expect(job.log).toEqual([{ step: 'fill:1', started: at(0) }]);
  });
});

describe('taking back', () => {
  const begun = startStep(EMPTY, 'fill:1', at(0), { massA: 158 });
  test('the end, then the start, then nothing', () => {
    const done = finishStep(begun, 'fill:1', at(12));
    expect(takeBackLast(done).log).toEqual(begun.log);
    expect(takeBackLast(begun).log).toBeUndefined();
    const { log: _, ...none } = EMPTY;
    expect(takeBackLast(none)).toBe(none);
  });
  test('one press that began and ended a step goes as one', () => {
    expect(takeBackLast(finishStep(begun, 'wash:plate', at(3))).log).toEqual(begun.log);
  });
  test('what stands in the log last need not be what was stamped last', () => {
    // Mix 1 was begun first and ended last.
    const job = finishStep(finishStep(begun, 'dress:2', at(5)), 'fill:1', at(9));
    const log = logOf(takeBackLast(job));
    expect(log.find(({ step }) => step === 'fill:1')?.done).toBeUndefined();
    expect(log.find(({ step }) => step === 'dress:2')?.done).toBe(at(5));
  });
  test('the throwing away of a mix leaves the person their own note', () => {
    const noted = noteItem(begun, 0, { note: 'cold shop' });
    expect(takeBackLast(binMix(noted, 'fill:1', at(9))).log).toEqual(noted.log);
  });
});

test('the newest stamp is the latest, ended or begun', () => {
  expect(newestStamp([])).toBeNull();
  expect(newestStamp(logOf(startStep(finishStep(EMPTY, 'a', at(9)), 'b', at(4))))).toBe(SEVEN + 9 * MIN);
});

test('pack numbers are those noted last for the same material', () => {
  const log = [
    { step: 'fill:1', started: at(0), packA: 'A1', packB: 'B1' },
    { step: 'fill:2', started: at(9), packA: 'A2' },
    { step: 'coat:1.1', started: at(20), packA: 'C1' },
  ];
  expect(lastPacks(log, 'fill')).toEqual({ packA: 'A2', packB: 'B1' });
  expect(lastPacks(log, 'coat')).toEqual({ packA: 'C1', packB: '' });
});

test('two jobs differ in their log alone only when everything else is the very same', () => {
  const job = startStep(EMPTY, 'fill:1', at(0));
  expect(differsInLogAlone(EMPTY, job)).toBe(true);
  expect(differsInLogAlone(EMPTY, { ...job, title: 'other' })).toBe(false);
  expect(differsInLogAlone(job, job)).toBe(false);
});
