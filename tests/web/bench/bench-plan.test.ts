import { describe, expect, test } from 'vitest';
import { mixName, mixOf, stepInHand, stepsToDo, stepWords } from '../../../web/bench/bench-plan.ts';
import { lateness, plannedStart } from '../../../web/bench/lateness.ts';
import { benchTimers } from '../../../web/bench/timers.ts';
import { at, BENCH, MIN, SEVEN } from './bench-results.ts';

const inHand = (log: Parameters<typeof stepsToDo>[1], taken: string | null = null) =>
  stepInHand(stepsToDo(BENCH.plan, log), log, taken)?.id ?? null;

describe('the step in hand', () => {
  const wiped = { step: 'wipe:plate', started: at(0), done: at(5) };
  test('is the first one of the hands that is not over: waits are nobody to do', () => {
    expect(inHand([])).toBe('wipe:plate');
    expect(inHand([wiped])).toBe('fill:1');
  });
  test('is one that is begun, before the plan', () => {
    expect(inHand([{ step: 'fill:2', started: at(0) }])).toBe('fill:2');
  });
  test('is the one the person took, until it is over', () => {
    expect(inHand([wiped], 'dress:1')).toBe('dress:1');
    expect(inHand([wiped, { step: 'dress:1', started: at(6), done: at(7) }], 'dress:1')).toBe('fill:1');
  });
  test('is none when all is over', () => {
    const all = BENCH.plan.map(({ id }) => ({ step: id, started: at(0), done: at(1) }));
    expect(inHand(all)).toBeNull();
  });
});

describe('a mix by the id of its step', () => {
  test('is found in the result, also when a coat is one mix', () => {
    expect(mixName('coat:1.2')).toEqual({ material: 'coat', number: 1, coatMix: 2 });
    expect(mixName('coat:2')).toEqual({ material: 'coat', number: 2, coatMix: 1 });
    expect(mixName('wash:plate')).toBeNull();
    expect(mixOf(BENCH, 'fill:2')?.number).toBe(2);
    expect(mixOf(BENCH, 'coat:1.2')?.number).toBe(2);
    expect(mixOf(BENCH, 'fill:7')).toBeNull();
  });
  test('has a name also when the plan has it no more', () => {
    expect(stepWords(BENCH, 'fill:7')).toBe('Mix 7');
    expect(stepWords(BENCH, 'coat:1.2')).toBe('coat:1.2');
    expect(stepWords(BENCH, 'blast:gone')).toBe('blast:gone');
  });
});

test('a step that another part has too says whose it is', () => {
  const [wipe] = BENCH.plan;
  const other = { ...wipe, id: 'wipe:impeller', parts: ['impeller'] };
  const both = { ...BENCH, plan: [wipe, other] };
  expect([stepWords(both, wipe.id), stepWords(both, other.id)]).toEqual([
    `${wipe.step} plate`,
    `${wipe.step} impeller`,
  ]);
  expect(stepWords(BENCH, wipe.id)).toBe(wipe.step);
});

describe('late', () => {
  const [wipe] = BENCH.plan;
  const dress = BENCH.plan[4];
  test('the plan begins by the shop clock', () => {
    expect(plannedStart('2026-12-01T07:00', dress)).toBe(new Date('2026-12-01T08:40').getTime());
    expect(plannedStart(null, dress)).toBeNull();
  });
  test('a step is late from a minute past its time on', () => {
    expect(lateness(wipe, SEVEN, SEVEN + MIN, [])).toBeNull();
    expect(lateness(wipe, SEVEN, SEVEN + 12 * MIN, [])).toEqual({ against: 'plan', by: 12 * MIN });
    expect(lateness(wipe, null, SEVEN + 12 * MIN, [])).toBeNull();
  });
  test('a window that has closed weighs more than the plan', () => {
    const log = [{ step: 'fill:1', started: at(0), done: at(15) }];
    const timers = benchTimers(BENCH, log, SEVEN + 140 * MIN);
    expect(lateness(dress, SEVEN + 100 * MIN, SEVEN + 140 * MIN, timers)).toEqual({
      against: 'window',
      by: 5 * MIN,
    });
  });
});
