import { describe, expect, test } from 'vitest';
import { planDay } from '../../../geometry/plan/plan-day.ts';
import { dayFaults } from './day-rules.ts';
import { choicesOf, dayOf, handsIn, type MadeChoices, stepIn, workOf } from './made-day.ts';

/** 20 + 30 + 5 + 5 min of washing to wiping and 10 of flashing off: a part begun at 0 takes filler or coat at 70. */
const READY = 70;
/** 07:00 to 16:00. */
const DAY_SHIFT: MadeChoices = { start: '2026-12-01T07:00', shift: { from: 420, to: 960 } };
const plateMix = { minutes: 12, on: ['plate/face'] };
const ONE_MIX = { parts: ['plate'], mixes: [plateMix] };

describe('a day without a clock', () => {
  test('fills one part while the other firms up', () => {
    const day = dayOf({
      parts: ['plate', 'impeller'],
      mixes: [plateMix, { minutes: 12, on: ['impeller/vane-1/tip'] }],
      coats: [[15], [15]],
    });
    // Both parts prepared take 120 min. Mix 1 firms up from 132 to 162, and mix 2 goes on at 132. Dressed 30 min after each: 162 and 174.
    // Coat 1 ends at 197, takes the next from 257 on; coat 2 ends at 274 and is hard 960 min later.
    expect(handsIn(day)).toEqual([
      'wash:plate 0-20',
      'blast:plate 20-50',
      'blow-down:plate 50-55',
      'wipe:plate 55-60',
      'wash:impeller 60-80',
      'blast:impeller 80-110',
      'blow-down:impeller 110-115',
      'wipe:impeller 115-120',
      'fill:1 120-132',
      'fill:2 132-144',
      'dress:1 162-170',
      'dress:2 174-182',
      'coat:1.1 182-197',
      'touch-test:1 257-259',
      'coat:2.1 259-274',
      'dress-hard:plate 1234-1249',
      'dress-hard:impeller 1249-1264',
      'check 1264-1284',
      'assemble 1284-1344',
      'test 1344-1374',
    ]);
    // 2 x 60 + 2 x 12 + 2 x 8 + 2 x 15 + 2 + 2 x 15 + 20 + 60 + 30.
    expect(day).toMatchObject({ start: null, end: 1374, handsOn: 332 });
    expect(stepIn(day, 'dress:2').window).toEqual({ opens: 174, closes: 189 });
    expect(stepIn(day, 'coat:2.1').window).toEqual({ opens: 257, closes: 437 });
    expect(stepIn(day, 'coat:1.1').after).toEqual(['dress:1', 'dress:2']);
    expect(stepIn(day, 'firm-up:1')).toMatchObject({
      start: 132,
      minutes: 30,
      hands: false,
      parts: ['plate'],
    });
    expect(stepIn(day, 'harden')).toMatchObject({ start: 274, minutes: 960, after: ['coat:2.1'] });
  });

  test('lets dressing wait inside its window for a mix that just does not fit before it', () => {
    // Mixes of 16 and 30 min of waiting: 70-86, 86-102, and the third would run from 102 past 116, when mix 1 could be dressed.
    // It may wait until 131 - 8, so the third goes on first, 102-118.
    const day = dayOf({
      parts: ['plate'],
      mixes: Array.from({ length: 3 }, () => ({ ...plateMix, minutes: 16 })),
    });
    expect(handsIn(day).slice(4, 10)).toEqual([
      'fill:1 70-86',
      'fill:2 86-102',
      'fill:3 102-118',
      'dress:1 118-126',
      'dress:2 132-140',
      'dress:3 148-156',
    ]);
  });

  test('puts a second layer on the first one dressed', () => {
    const day = dayOf({
      parts: ['plate'],
      mixes: [
        { minutes: 12, on: ['plate/face/1'] },
        { minutes: 12, on: ['plate/face/2'] },
      ],
    });
    // Firm from 112, dressed until 120; the second is firm at 162.
    expect(handsIn(day).slice(4, 8)).toEqual([
      'fill:1 70-82',
      'dress:1 112-120',
      'fill:2 120-132',
      'dress:2 162-170',
    ]);
    expect(stepIn(day, 'fill:2').after).toEqual(['flash-off:plate', 'dress:1']);
  });

  test('moves no dressing behind the layer that was put on it', () => {
    // Ground b is firm first, so its second layer looks for a place before the dressing of a, which its own second layer has counted on.
    const made = {
      parts: ['plate'],
      mixes: ['plate/b/1', 'plate/a/1', 'plate/a/2', 'plate/b/2'].map((on) => ({ minutes: 16, on: [on] })),
      firmsUp: { from: 30, to: 70 },
    };
    expect(dayFaults(dayOf(made), workOf(made), choicesOf({}))).toEqual([]);
  });

  test('hardens from the last filler where there is no coat, and dresses hard edges after that', () => {
    const day = dayOf(ONE_MIX);
    expect(stepIn(day, 'harden')).toMatchObject({ start: 82, minutes: 480, after: ['fill:1'] });
    expect(stepIn(day, 'dress-hard:plate')).toMatchObject({ start: 562, after: ['harden', 'dress:1'] });
  });

  test('prepares a part that is only coated, and leaves out one that is neither filled nor coated', () => {
    const made = { parts: ['plate', 'impeller'], mixes: [plateMix], coats: [[15]] };
    expect(stepIn(dayOf(made), 'coat:1.1')).toMatchObject({
      parts: ['plate', 'impeller'],
      after: ['dress:1', 'flash-off:impeller'],
    });
    const { steps } = dayOf({ ...made, uncoated: 'impeller' });
    expect(steps.filter(({ parts }) => parts.includes('impeller'))).toEqual([]);
    expect(stepIn(dayOf({ ...made, coats: [] }), 'check').parts).toEqual(['plate']);
  });

  test('is empty when nothing goes on, and when mixes are too many to be listed', () => {
    const nothing = { steps: [], start: null, end: 0, handsOn: 0 };
    expect(dayOf({ parts: ['plate'], mixes: [] })).toEqual(nothing);
    const work = workOf(ONE_MIX);
    expect(planDay({ ...work, filler: { ...work.filler, batches: [] } }, choicesOf({}))).toEqual(nothing);
  });

  test('begins dressing that takes longer than its window as soon as it opens, and says so', () => {
    const step = stepIn(dayOf(ONE_MIX, { minutes: { dress: 20 } }), 'dress:1');
    expect(step).toMatchObject({ start: 112, window: { opens: 112, closes: 127 }, trouble: 'window-missed' });
  });

  test('has no window for the next coat when the first mix is past it before the last is ready', () => {
    // Two mixes of 20: ready 10 min after the second, but 25 after the first is too late.
    const made = { parts: ['plate'], mixes: [], coats: [[20, 20], [20]], overcoat: { from: 10, to: 25 } };
    const step = stepIn(dayOf(made), 'coat:2.1');
    expect(step).toMatchObject({ window: null, trouble: 'window-missed', start: READY + 40 + 10 + 2 });
  });
});

describe('a day by the shop clock', () => {
  test('holds a mix back when a break would fall on its dressing', () => {
    // Shut 115 to 145: dressing 145-153 keeps a window of 45 min only when the mix is in place by 108 or later.
    const day = dayOf(ONE_MIX, { ...DAY_SHIFT, breaks: [{ at: 535, minutes: 30 }] });
    expect(stepIn(day, 'fill:1').start).toBe(96);
    expect(stepIn(day, 'dress:1')).toMatchObject({
      start: 145,
      window: { opens: 138, closes: 153 },
      trouble: null,
    });
  });

  test('never breaks off a mix for a break', () => {
    // Shut 80 to 110.
    const day = dayOf(ONE_MIX, { ...DAY_SHIFT, breaks: [{ at: 500, minutes: 30 }] });
    expect(handsIn(day).slice(4, 6)).toEqual(['fill:1 110-122', 'dress:1 152-160']);
  });

  test('pushes coat 1 to the morning when coat 2 would come after the shift, and blasts then', () => {
    // Begun at 11:00, coat 1 could end at 12:25; the next is due five to seven hours later, after 16:00. At 07:00, minute 1200, it is blasted,
    // coated from 1250 to 1265, and takes the next from 1565, 13:05, on.
    const day = dayOf(
      { parts: ['plate'], mixes: [], coats: [[15], [15]], overcoat: { from: 300, to: 420 } },
      { ...DAY_SHIFT, start: '2026-12-01T11:00' },
    );
    expect(handsIn(day).slice(0, 7)).toEqual([
      'wash:plate 0-20',
      'blast:plate 1200-1230',
      'blow-down:plate 1230-1235',
      'wipe:plate 1235-1240',
      'coat:1.1 1250-1265',
      'touch-test:1 1565-1567',
      'coat:2.1 1567-1582',
    ]);
    expect(day.steps.filter(({ trouble }) => trouble !== null)).toEqual([]);
  });

  test('coats after hours, and says so, when no day has hours for the windows', () => {
    // 07:00 to 15:00; ten to twelve hours after a coat the shop is always shut.
    const day = dayOf(
      { parts: ['plate'], mixes: [], coats: [[15], [15]], overcoat: { from: 600, to: 720 } },
      { ...DAY_SHIFT, shift: { from: 420, to: 900 } },
    );
    expect(stepIn(day, 'coat:1.1')).toMatchObject({ start: READY, trouble: null });
    expect(stepIn(day, 'touch-test:1')).toMatchObject({ start: 685, trouble: 'outside-shift' });
    expect(stepIn(day, 'coat:2.1')).toMatchObject({ start: 687, trouble: 'outside-shift' });
  });

  test('begins work that is longer than any shift at the first moment of work, and says so', () => {
    const day = dayOf(ONE_MIX, { ...DAY_SHIFT, minutes: { blast: 600 } });
    expect(stepIn(day, 'blast:plate')).toMatchObject({ start: 20, trouble: 'outside-shift' });
    // 07:00 of the next day.
    expect(stepIn(day, 'blow-down:plate')).toMatchObject({ start: 1440, trouble: null });
  });

  test('blasts a part late when the other one takes the whole morning', () => {
    const mixes = Array.from({ length: 24 }, (_, i) => ({
      minutes: 15,
      on: [i < 20 ? 'plate/face' : 'impeller/face'],
    }));
    const day = dayOf({ parts: ['plate', 'impeller'], mixes }, { start: '2026-12-01T07:00' });
    const blast = stepIn(day, 'blast:impeller');
    const first = Math.min(...[21, 22, 23, 24].map((n) => stepIn(day, `fill:${n}`).start));
    expect(first - (blast.start + blast.minutes)).toBeLessThanOrEqual(240);
    expect(day.steps.filter(({ note }) => note.includes('again lightly'))).toEqual([]);
  });
});
