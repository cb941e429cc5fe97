import { describe, expect, test } from 'vitest';
import { estimate } from '../../../../geometry/estimate.ts';
import { GENERIC_FILLER } from '../../../../geometry/job/defaults.ts';
import { measured } from '../../../../geometry/job/measured.ts';
import { newPlateJob } from '../../../../geometry/job/new-plate-job.ts';
import { cautions } from '../../../../geometry/material/cautions.ts';
import { toResult } from '../../../../geometry/sheet/result.ts';
import { cautionsOf } from '../../../../web/panels/plan/cautions-of.ts';
import { lawWords } from '../../../../web/panels/plan/law-words.ts';
import { puttyTimes } from '../../../../web/panels/plan/material-times.ts';
import { planDays } from '../../../../web/panels/plan/plan-days.ts';
import { stepLine } from '../../../../web/panels/plan/step-words.ts';
import { doneText, elsewhereText, troubleText } from '../../../../web/panels/plan/summary-words.ts';
import { DAY_START, TWO_PART_DAY } from './two-part-day.ts';

const ALL = cautions({ mixes: true, fills: true });

describe('the day in words', () => {
  test('when it is done, by the clock or by the hour', () => {
    expect(doneText({ start: DAY_START, end: 1870 })).toBe(
      'Done Wed 2 Dec 14:10, 31 h 10 min after the start.',
    );
    expect(doneText({ start: null, end: 1860 })).toBe('Done after 31 h.');
  });
  test('what it costs elsewhere', () => {
    const other = { surface: 10, mixes: 7, end: 1680, handsOn: 320 };
    expect(elsewhereText(other, DAY_START)).toBe(
      'With the part at 10 °C: 7 mixes, 5 h 20 min hands-on, done Wed 2 Dec 11:00.',
    );
    expect(elsewhereText({ ...other, mixes: 1 }, null)).toBe(
      'With the part at 10 °C: 1 mix, 5 h 20 min hands-on, done after 28 h.',
    );
  });
  test('what does not fit is counted', () => {
    expect(troubleText(TWO_PART_DAY)).toBe('1 step does not fit: see the steps.');
    expect(troubleText(TWO_PART_DAY.slice(0, 3))).toBe('');
  });
  test('a step in one line', () => {
    const lineOf = (id: string, start: string | null) =>
      stepLine(TWO_PART_DAY.find((step) => step.id === id) ?? TWO_PART_DAY[0], start);
    expect(lineOf('dress:3', DAY_START)).toBe(
      '12:30 Dress mix 3, impeller: 8 min, hands; opens 11:18, closes 11:47. Its window closes before it can be done.',
    );
    expect(lineOf('harden', null)).toBe('+8:05 Harden, plate and impeller: 25 h, wait.');
    expect(lineOf('test', DAY_START)).toBe('Wed 18:05 Test run: 30 min, hands.');
  });
  test('steps stand under the day they begin on, all of them once', () => {
    const days = planDays(TWO_PART_DAY, DAY_START);
    expect(days.map(({ day }) => day)).toEqual(['Tue 1 Dec', 'Wed 2 Dec']);
    expect(days.flatMap(({ steps }) => steps)).toEqual(TWO_PART_DAY);
    expect(planDays(TWO_PART_DAY, null)).toEqual([{ day: null, steps: TWO_PART_DAY }]);
    expect(planDays([], null)).toEqual([]);
  });
});

describe('cautions beside the steps', () => {
  const care = cautionsOf(TWO_PART_DAY, ALL);
  test('each step has its own, with the source, and none loses a word but what all of them say', () => {
    expect(care.always).toBe("Follow your local rules and the product's own safety sheet.");
    for (const step of TWO_PART_DAY) {
      expect(
        care.of
          .get(step.id)
          ?.map(({ code }) => code)
          .sort(),
      ).toEqual([...step.cautions].sort());
    }
    for (const { code, text, source } of [...care.of.values()].flat()) {
      const whole = ALL.find((caution) => caution.code === code);
      expect(`${text} ${care.always}`).toBe(whole?.text);
      expect(source).toBe(whole?.source);
    }
  });
  test('what comes up for the first time is marked, once for each caution', () => {
    expect([...care.first]).toEqual(['wash:plate', 'blast:plate', 'wipe:plate', 'fill:1', 'dress:1', 'test']);
  });
  test('texts that have no end in common keep all of it', () => {
    const own = cautionsOf(TWO_PART_DAY, [
      { code: 'isolate', text: 'Lock it off. Prove it dead.', source: 'a' },
      { code: 'restart', text: 'Turn it by hand. Stand clear.', source: 'b' },
    ]);
    expect(own.always).toBe('');
    expect(own.of.get('test')?.[0].text).toBe('Turn it by hand. Stand clear.');
  });
});

describe("times at the part's temperature", () => {
  test('the law is named, with the energy the job has or the usual one', () => {
    expect(lawWords(50.5)).toBe('Arrhenius, 50.5 kJ/mol');
    expect(lawWords(undefined)).toBe('Arrhenius, 55 kJ/mol');
    expect(lawWords(null)).toMatch(/^workshop rule, fallback/);
  });
  test('as quoted beside here, and unknown where the data sheet is silent', () => {
    const { hard: _, ...filler } = { ...GENERIC_FILLER, activationEnergy: null };
    const job = { ...newPlateJob(), filler, climate: { surface: 15 } };
    // Workshop rule: 10 degC less is twice the time (common practice).
    expect(puttyTimes(job, toResult(estimate(measured(job), { cell: 5 })))).toEqual([
      { what: 'Working time', quoted: '20 min', at: 25, here: '40 min' },
      { what: 'Firms up', quoted: '30 to 45 min', at: 25, here: '1 h to 1 h 30 min' },
      { what: 'Hard', quoted: 'not on the sheet', at: null, here: 'not known' },
    ]);
  });
});
