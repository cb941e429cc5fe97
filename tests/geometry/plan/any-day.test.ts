import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planDay } from '../../../geometry/plan/plan-day.ts';
import { DUST, dayFaults } from './day-rules.ts';
import { choicesOf, workOf } from './made-day.ts';
import { isShopOpen } from './open-hours.ts';
import { madeChoices, madeDays } from './random-day.ts';

const RUNS = { numRuns: 200 };

describe('any day', () => {
  test('breaks no rule: hands, hours, order, waits, windows, and each mix once', () => {
    fc.assert(
      fc.property(madeDays, madeChoices, (made, chosen) => {
        const [work, choices] = [workOf(made), choicesOf(chosen)];
        expect(dayFaults(planDay(work, choices), work, choices)).toEqual([]);
      }),
      RUNS,
    );
  });

  test('comes out the same twice', () => {
    fc.assert(
      fc.property(madeDays, madeChoices, (made, chosen) => {
        const [work, choices] = [workOf(made), choicesOf(chosen)];
        expect(planDay(work, choices)).toEqual(planDay(structuredClone(work), structuredClone(choices)));
      }),
      { numRuns: 50 },
    );
  });

  test('without a clock is never shorter than its handwork, and nothing lies outside hours', () => {
    fc.assert(
      fc.property(madeDays, madeChoices, (made, chosen) => {
        const day = planDay(workOf(made), choicesOf({ ...chosen, start: null }));
        expect(day.end).toBeGreaterThanOrEqual(day.handsOn - DUST);
        expect(day.steps.filter(({ trouble }) => trouble === 'outside-shift')).toEqual([]);
      }),
      RUNS,
    );
  });

  test('misses a dressing window only when dressing takes longer than the window is wide', () => {
    fc.assert(
      fc.property(madeDays, madeChoices, (made, chosen) => {
        const choices = choicesOf(chosen);
        const { steps } = planDay(workOf(made), choices);
        const late = steps.filter(({ kind, trouble }) => kind === 'dress' && trouble === 'window-missed');
        const width = made.firmsUp ? made.firmsUp.to - made.firmsUp.from : Number.POSITIVE_INFINITY;
        if (width >= choices.minutes.dress) expect(late).toEqual([]);
        else for (const { start, window } of late) expect(start).toBeCloseTo(Number(window?.opens), 5);
      }),
      RUNS,
    );
  });

  test('works outside hours only when no start of that work, on any later day, is inside them', () => {
    fc.assert(
      fc.property(madeDays, madeChoices, (made, chosen) => {
        const choices = choicesOf(chosen);
        const { steps } = planDay(workOf(made), choices);
        const seen = new Set<string>();
        for (const { id, kind, minutes, trouble } of steps) {
          // What takes no time is done at any moment, even of a shop that is always shut.
          if (trouble !== 'outside-shift' || minutes === 0 || kind === 'coat' || kind === 'touch-test')
            continue;
          // One of a kind says it for all that take as long.
          const mix = made.mixes[Number(id.split(':')[1]) - 1];
          const like = `${kind} ${minutes} ${mix?.minutes}`;
          if (seen.has(like)) continue;
          seen.add(like);
          const inside = quartersOfADay.filter((start) => {
            if (kind !== 'dress') return isShopOpen(choices, start, start + minutes);
            const filled = start + mix.minutes;
            const { from, to } = made.firmsUp ?? { from: 20, to: 5000 };
            const last = Math.max(from, to - minutes);
            return (
              isShopOpen(choices, start, filled) &&
              quartersBetween(filled + from, filled + last).some((at) =>
                isShopOpen(choices, at, at + minutes),
              )
            );
          });
          expect([id, inside]).toEqual([id, []]);
        }
      }),
      { numRuns: 60 },
    );
  });
});

/** The second day, which every later one is like. */
const quartersOfADay = quartersBetween(1440, 2880);

function quartersBetween(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, Math.floor((to - from) * 4)) + 1 }, (_, i) => from + i / 4);
}
