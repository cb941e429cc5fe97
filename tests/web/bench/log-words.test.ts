import { expect, test } from 'vitest';
import { itemTimes, itemWords } from '../../../web/bench/log-words.ts';
import { BENCH } from './bench-results.ts';

const NOON = new Date(2026, 11, 1, 12).getTime();

test('an entry shows the times that were stamped, with the day where that is another one', () => {
  const item = { step: 'fill:1', started: '2026-12-01T07:12:30+01:00' };
  expect(itemTimes(item, NOON)).toBe('07:12, running');
  expect(itemTimes({ ...item, done: '2026-12-01T07:31:02+01:00' }, NOON)).toBe('07:12 to 07:31');
  expect(itemTimes({ ...item, done: item.started }, NOON)).toBe('07:12');
  const overnight = {
    step: 'harden',
    started: '2026-11-30T22:00:00+01:00',
    done: '2026-12-01T06:00:00+01:00',
  };
  expect(itemTimes(overnight, NOON)).toBe('2026-11-30 22:00 to 2026-12-01 06:00');
});

test('an entry names grams and packs, and says what became of it', () => {
  const started = '2026-12-01T07:12:30+01:00';
  expect(
    itemWords({ step: 'fill:1', started, massA: 158, massB: 69, packA: 'L1', packB: 'H2' }, BENCH),
  ).toEqual(['A 158 g, B 69 g', 'Pack A L1, B H2']);
  expect(itemWords({ step: 'fill:1', started }, BENCH)).toEqual(['Grams not noted']);
  expect(itemWords({ step: 'dress:1', started, done: started, outcome: 'skipped' }, BENCH)).toEqual([
    'Skipped',
  ]);
  expect(itemWords({ step: 'fill:9', started, massA: 158 }, BENCH)).toEqual([
    'A 158 g',
    'Not in the plan any more',
  ]);
});

test('a cartridge is not asked for grams', () => {
  const bench = { ...BENCH, filler: { ...BENCH.filler, selfMixing: true } };
  expect(itemWords({ step: 'fill:1', started: '2026-12-01T07:12:30+01:00' }, bench)).toEqual([]);
});
