import { expect, test } from 'vitest';
import { planWarnings } from '../../../geometry/plan/plan-warnings.ts';
import { dayOf } from './made-day.ts';

const mixes = Array.from({ length: 5 }, () => ({ minutes: 12, on: ['plate/face'] }));

test('a day that keeps hours and windows warns of nothing', () => {
  expect(planWarnings(dayOf({ parts: ['plate'], mixes, coats: [[15], [15]] }))).toEqual([]);
});

test('windows missed are one warning: three steps by name, the others counted, and what to change', () => {
  const warnings = planWarnings(dayOf({ parts: ['plate'], mixes }, { minutes: { dress: 20 } }));
  expect(warnings.map(({ code }) => code)).toEqual(['plan-window-missed']);
  expect(warnings[0].text).toContain('Too late for dress 1, dress 2, dress 3 and 2 more');
  expect(warnings[0].text).toContain('Dress with two');
  expect(warnings[0].text).not.toContain('Coat with two');
});

test('work outside the hours is another, with the coat that has no place in them', () => {
  const warnings = planWarnings(
    dayOf(
      { parts: ['plate'], mixes: [], coats: [[15], [15]], overcoat: { from: 600, to: 720 } },
      { start: '2026-12-01T07:00', shift: { from: 420, to: 900 } },
    ),
  );
  expect(warnings.map(({ code }) => code)).toEqual(['plan-outside-shift']);
  expect(warnings[0].text).toContain('no place for touch test 1, coat 2.1.');
});

test('a coat window narrower than the coat names the coat', () => {
  const [warning] = planWarnings(
    dayOf({ parts: ['plate'], mixes: [], coats: [[15], [15]], overcoat: { from: 60, to: 70 } }),
  );
  expect(warning).toMatchObject({ code: 'plan-window-missed', field: null });
  expect(warning.text).toContain('Too late for coat 2.1: ');
  expect(warning.text).toContain('roughen the coat below');
});
