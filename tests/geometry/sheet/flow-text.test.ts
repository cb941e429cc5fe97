import { describe, expect, test } from 'vitest';
import type { FlowTest, Guarantee } from '../../../geometry/job/job.ts';
import {
  acceptanceRows,
  dutyRows,
  flowHeadlines,
  flowLines,
  pointRows,
} from '../../../geometry/sheet/flow-text.ts';
import { sheetBody } from '../../../geometry/sheet/html.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { sheetText } from '../../../geometry/sheet/text.ts';
import { atDuty, run } from '../flow-test/made-test.ts';
import { estimated, flowTestOver, THREE_RUNS } from './flow-made.ts';

const GUARANTEE: Guarantee = { flow: 90, head: 13.5, efficiency: 0.72, power: 4.6, grade: '2B' };
const said = (over: Partial<FlowTest> = {}) => flowLines(flowTestOver(over)).join('\n');

describe('the result', () => {
  test('is in the units of the file: efficiency in %, what came back as a share', () => {
    const found = flowTestOver();
    expect(found.runs.map(({ atDuty }) => atDuty?.efficiency?.toFixed(6))).toEqual([
      '72.000000',
      '60.000000',
      '69.000000',
    ]);
    expect(found.recovered).toBeCloseTo(69 / 72, 9);
    expect(found.returned).toBeCloseTo(0.75, 9);
    expect(found.runs[0].points[0]).toMatchObject({ flow: 60, head: 15.5 });
    // 13.6 m and its 3.5 % of a grade 2 gauge.
    expect(found.runs[0].atDuty?.error.head).toBeCloseTo(13.6 * 0.035, 9);
  });

  test('a job without a flow test has none', () => {
    const none = estimated();
    expect(toResult({ ...none, flowTest: null }).flowTest).toBeNull();
  });

  test('odd runs bring no number that is none', () => {
    // toResult throws on NaN and infinity, wherever they stand.
    const odd = flowTestOver({
      runs: [run('before', [[0, 0, 0]]), run('after', [[90, 13, 0]]), run('', [[0, 17, 2]])],
      guarantee: GUARANTEE,
    });
    expect(odd.comparison).toBeNull();
    expect(odd.runs[1].atDuty).toMatchObject({ head: 13, efficiency: null });
    expect(odd.runs[2].points[0].efficiency).toBe(0);
    expect(flowTestOver({ runs: [] })).toMatchObject({ runs: [], saving: null, acceptance: null });
  });
});

describe('the working of the saving', () => {
  test('holds the numbers that someone can work out again', () => {
    // 998, 90 m3/h, 13.2 m, 62 to 70.5 %: 0.6281 kW, 2512 kWh, 628.1 (worked out by other code).
    const { saving } = flowTestOver({
      runs: [atDuty('before', 0.62), atDuty('after', 0.705)],
      hoursPerYear: 4000,
      energyPrice: 0.25,
    });
    expect(saving?.working).toBe(
      '998 kg/m3 x 9.80665 m/s2 x 90 m3/h x 13.2 m / 3600000 = 3.23 kW in the liquid; ' +
        '3.23 kW x (1 / 0.62 - 1 / 0.705) = 0.6281 kW; 0.6281 kW x 4000 h = 2512 kWh; 2512 kWh x 0.25 = 628.1',
    );
  });
});

describe('in words', () => {
  test('the verdict comes first', () => {
    expect(said()).toMatch(
      /^Efficiency at duty from 60\.0 to 69\.0 %: a gain of 9\.0 points, beyond the error of measurement \(\+- 5\.6 points, 8\.7 % of it\)\./,
    );
    expect(said({ runs: [atDuty('before', 0.62), atDuty('after', 0.66)] })).toMatch(
      /^Efficiency at duty from 62\.0 to 66\.0 %: inside the error of measurement/,
    );
    expect(said({ runs: [atDuty('before', 0.72), atDuty('after', 0.6)] })).toContain('a loss of 12.0 points');
    expect(said({ runs: [atDuty('before', 0.62)] })).toMatch(/^No run after the repair yet\./);
  });

  test('says what the error is made of', () => {
    expect(said()).toContain('Two tests that know nothing of each other: each efficiency is true to 6.1 %');
    expect(said({ sameGauges: true })).toContain(
      'how well they repeat is not known, so the full error stays',
    );
    expect(said({ sameGauges: true, repeatability: 0.02 })).toContain('only how well they repeat counts');
  });

  test('what came back, what it saves, and whose efficiency it is', () => {
    expect(said()).toContain(
      'The pump has 95.8 % of its efficiency as new. Of what had been lost, 75 % came back.',
    );
    expect(said()).toContain('Shaft power only');
    expect(said({ motorEfficiency: 0.9 })).toContain('At the meter.');
    const motors = THREE_RUNS.map((one) => ({ ...one, powerAt: 'motor' as const }));
    expect(said({ runs: motors })).toMatch(/^Efficiency of pump and motor at duty from 60\.0 to 69\.0 %/);
  });

  test('a best point at the end may not be the best', () => {
    expect(said()).not.toContain('outside the measured range');
    expect(said({ runs: [atDuty('after', 0.7)] })).toContain(
      'the best efficiency may lie outside the measured range',
    );
  });

  test('runs are named by their label, else by number and kind', () => {
    expect(flowTestOver().runs.map(({ name }) => name)).toEqual([
      'works test',
      'run 2 (as found)',
      'repaired',
    ]);
  });

  test('the headline waits for two runs', () => {
    expect(flowHeadlines(flowTestOver())[0].lead).toBe('Efficiency at duty from 60.0 to 69.0 %');
    expect(flowHeadlines(flowTestOver({ runs: [] }))).toEqual([]);
  });
});

describe('tables', () => {
  test('what is not reached is said, not left empty', () => {
    const rows = dutyRows(flowTestOver({ duty: 120 }));
    expect(rows.map(([, head]) => head)).toEqual(['not reached', 'not reached', 'not reached']);
  });

  test('one row a point, the name once', () => {
    expect(pointRows(flowTestOver()).map(([name]) => name)).toEqual([
      'works test',
      '',
      '',
      'run 2 (as found)',
      '',
      '',
      'repaired',
      '',
      '',
    ]);
  });

  test('the guarantee: value, what is allowed, verdict', () => {
    // 2B up to 10 kW: head 8, flow 10 %, from memory; 13.5 x 0.92 = 12.42, x 1.08 = 14.58.
    const rows = acceptanceRows(flowTestOver({ guarantee: GUARANTEE }));
    expect(rows[0]).toEqual(['head 13.5 m, at 90 m3/h', '13.2 m', '12.4 to 14.6 m', 'met']);
    expect(rows[1].slice(2)).toEqual(['81.0 to 99.0 m3/h', 'met']);
    // 4.6 kW: 72 x (1 - (0.1 x 0.54 + 0.07)) = 63.07 %.
    expect(rows[2][2]).toBe('at least 63.1 %');
    expect(acceptanceRows(flowTestOver())).toEqual([]);
  });
});

describe('on the sheet', () => {
  test('text and print hold the section, and only with runs', () => {
    const [with3, without] = [estimated({ guarantee: GUARANTEE }), estimated({ runs: [] })];
    expect(sheetText(with3)).toContain('\nFlow test\n');
    expect(sheetText(with3)).toContain('Flow test at rated speed:');
    expect(sheetBody(with3)).toContain('<h2>Flow test</h2>');
    expect(sheetText(without)).not.toContain('Flow test');
    expect(sheetBody(without)).not.toContain('Flow test');
  });

  test('a name that is markup stays text', () => {
    const runs = THREE_RUNS.map((one) => ({ ...one, label: '"><img src=x>' }));
    expect(sheetBody(estimated({ runs }))).not.toContain('<img');
  });

  test('warnings of the runs are among those of the job', () => {
    const runs = [run('before', [[90, 13, 0]])];
    expect(toResult(estimated({ runs })).warnings.map(({ code }) => code)).toContain('flow-no-power');
  });
});
