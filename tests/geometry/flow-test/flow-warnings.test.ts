import { describe, expect, test } from 'vitest';
import { flowTestOf } from '../../../geometry/flow-test/flow-test.ts';
import type { FlowTest, TestRun } from '../../../geometry/job/job.ts';
import { run, test90 } from './made-test.ts';

const warned = (runs: readonly TestRun[], over: Partial<FlowTest> = {}) =>
  flowTestOf(test90({ runs, ...over })).warnings.map(({ code, field }) => [code, field]);
const SOUND = [
  [60, 15, 3.6],
  [110, 10, 4.9],
] as const;

describe('what should worry someone', () => {
  test('a sound run does not', () => {
    expect(warned([run('before', SOUND)])).toEqual([]);
  });

  // ISO 9906:2012, 5.7.2, from memory: 50 to 120 % for flow, head and power, 80 to 120 % for the efficiency.
  test.each([
    [0.79, /80 to 120 %/],
    [0.49, /50 to 120 %/],
    [1.21, /50 to 120 %/],
  ])('a test at %f of rated speed', (share, words) => {
    const [warning] = flowTestOf(test90({ runs: [run('x', SOUND, { speed: 1450 * share })] })).warnings;
    expect(warning).toMatchObject({ code: 'flow-speed', field: 'flowTest.runs[0].speed' });
    expect(warning.text).toMatch(words);
  });

  test('within the limits of speed there is no warning of it', () => {
    for (const share of [0.8, 1, 1.2])
      expect(warned([run('x', SOUND, { speed: 1450 * share })]).flat()).not.toContain('flow-speed');
  });

  test('more than 100 %, and less than 10 % where there is flow', () => {
    const found = warned([
      run('before', [
        [10, 17, 6],
        [60, 15, 2.4],
        [90, 13, 45],
        [100, 12, 4],
      ]),
    ]);
    expect(found).toEqual([
      ['flow-efficiency-high', 'flowTest.runs[0].points[1]'],
      ['flow-efficiency-low', 'flowTest.runs[0].points[2]'],
    ]);
  });

  test('a share typed for a percentage, and g/cm3 for kg/m3', () => {
    const { warnings } = flowTestOf({ ...test90({ runs: [] }), motorEfficiency: 0.0088, density: 0.998 });
    expect(warnings.map(({ code, field }) => [code, field])).toEqual([
      ['flow-motor', 'flowTest.motorEfficiency'],
      ['flow-density', 'flowTest.density'],
    ]);
    expect(warnings[0].text).toContain('0.9 %');
  });

  test('a point without power', () => {
    expect(warned([run('before', [...SOUND, [90, 13, 0]])])).toEqual([
      ['flow-no-power', 'flowTest.runs[0].points[2]'],
    ]);
  });

  test('a duty that no run reaches, with what the run holds', () => {
    const found = flowTestOf(test90({ runs: [run('before', SOUND, { label: 'as found' })], duty: 120 }));
    expect(found.runs[0].atDuty).toBeNull();
    expect(found.warnings[0]).toMatchObject({ code: 'flow-duty-outside', field: 'flowTest.duty' });
    expect(found.warnings[0].text).toContain(
      '120 m3/h lies outside run 1 "as found", which holds 60 to 110 m3/h',
    );
  });
});
