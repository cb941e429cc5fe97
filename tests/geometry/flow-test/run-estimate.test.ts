import { describe, expect, test } from 'vitest';
import { flowTestOf } from '../../../geometry/flow-test/flow-test.ts';
import { runEstimate } from '../../../geometry/flow-test/run-estimate.ts';
import { run, test90 } from './made-test.ts';

// Affinity laws: flow with the speed, head with its square, power with its cube. Worked out by other code; the second row was read off a
// nomogram as 235, 83, 8.1 in a published bulletin (units do not matter).
describe('brought to rated speed', () => {
  test.each([
    [1446, 1450, [60, 14.1, 7.9], [60.166, 14.1781, 7.96574]],
    [1700, 2000, [200, 60, 5], [235.294, 83.045, 8.14166]],
    [2965, 2900, [98.3, 33.1, 12.4], [96.145, 31.6646, 11.6022]],
  ] as const)('%f to %f r/min', (speed, ratedSpeed, [flow, head, power], [q, h, p]) => {
    const test = test90({ ratedSpeed });
    const found = runEstimate(run('before', [[flow, head, power]], { speed }), test).points[0];
    expect(found.flow / q).toBeCloseTo(1, 5);
    expect(found.head / h).toBeCloseTo(1, 5);
    expect(found.power / p).toBeCloseTo(1, 5);
    const measured = runEstimate(run('before', [[flow, head, power]]), test90()).points[0];
    expect(found.efficiency).toBeCloseTo(measured.efficiency ?? Number.NaN, 12);
  });

  test('the specific speed of a pump does not change with the speed it was tested at', () => {
    // A textbook pump: 300 gpm, 21.9258 ft, 2.07838 hp at 1170 r/min is 448.718 gpm, 49.0523 ft, 6.95476 hp at 1750; Ns 2000 at both.
    const [gpm, foot, hp] = [0.003785411784 * 60, 0.3048, 0.745699872];
    const slow = run('new', [[300 * gpm, 21.9258 * foot, 2.07838 * hp]], { speed: 1170, density: 999.55 });
    // Water of 62.4 lb/ft3.
    const at = (ratedSpeed: number) => runEstimate(slow, test90({ ratedSpeed, density: 999.55 }));
    expect(at(1170).best?.specificSpeed?.us).toBeCloseTo(2000, 1);
    expect(at(1750).best?.specificSpeed?.us).toBeCloseTo(2000, 1);
    expect(at(1750).points[0].flow / gpm).toBeCloseTo(448.718, 3);
    expect(at(1750).points[0].head / foot).toBeCloseTo(49.0523, 3);
    expect(at(1750).points[0].power / hp).toBeCloseTo(6.95476, 4);
    expect(at(1750).best?.efficiency).toBeCloseTo(0.8, 3);
  });

  test('a heavier liquid takes power in proportion, and the efficiency is that of the pump all the same', () => {
    const light = runEstimate(run('before', [[90, 12.5, 5.2]]), test90());
    const heavy = runEstimate(run('before', [[90, 12.5, 5.2 * 1.05]], { density: 998 * 1.05 }), test90());
    expect(heavy.points[0].power).toBeCloseTo(5.2, 12);
    expect(heavy.points[0].efficiency).toBeCloseTo(light.points[0].efficiency ?? Number.NaN, 12);
  });
});

describe('power taken at the motor', () => {
  const points = [[90, 12.5, 6]] as const;
  test('with the efficiency of the motor it is brought to the shaft', () => {
    const found = runEstimate(run('before', points, { powerAt: 'motor' }), test90({ motorEfficiency: 0.9 }));
    expect(found.of).toBe('pump');
    expect(found.points[0].power).toBeCloseTo(5.4, 12);
    // 3.05845 kW in the liquid over 5.4 kW.
    expect(found.points[0].efficiency).toBeCloseTo(3.05845 / 5.4, 5);
    expect(found.error.efficiency).toBeCloseTo(0.06364, 5);
  });

  test('without, it is the efficiency of pump and motor together, and named so', () => {
    const found = runEstimate(run('before', points, { powerAt: 'motor' }), test90());
    expect(found.of).toBe('set');
    expect(found.points[0].power).toBe(6);
    expect(found.points[0].efficiency).toBeCloseTo(3.05845 / 6, 5);
  });
});

describe('odd points', () => {
  test('no flow is no efficiency, 0; no power is none to work out, null', () => {
    const found = runEstimate(
      run('before', [
        [0, 17, 2],
        [0, 17, 0],
        [90, 13, 0],
        [45, 15, 3.2],
      ]),
      test90(),
    );
    expect(found.points.map(({ efficiency }) => efficiency === null)).toEqual([false, true, true, false]);
    expect(found.points[0].efficiency).toBe(0);
    expect(found.atDuty?.efficiency).toBeNull();
    expect(found.atDuty?.head).toBe(13);
  });

  test('one point alone holds its own flow and no other', () => {
    const one = run('before', [[90, 13, 4.5]]);
    expect(runEstimate(one, test90()).atDuty?.head).toBe(13);
    expect(runEstimate(one, test90({ duty: 91 })).atDuty).toBeNull();
  });

  test('no runs: nothing to say, and no fault', () => {
    const found = flowTestOf(
      test90({ guarantee: { flow: 90, head: 13, efficiency: null, power: null, grade: '2B' } }),
    );
    expect(found).toMatchObject({
      runs: [],
      comparison: null,
      saving: null,
      recovered: null,
      acceptance: null,
      warnings: [],
    });
    expect(found.notCompared).toMatch(/^No run/);
  });
});

test('the best point is the best measured, and says when it is the last one', () => {
  const middle = runEstimate(
    run('new', [
      [60, 15, 3.6],
      [90, 13, 4.5],
      [110, 10, 4.9],
    ]),
    test90(),
  );
  expect(middle.best).toMatchObject({ flow: 90, head: 13, isAtEnd: false });
  const rising = runEstimate(
    run('new', [
      [60, 15, 3.6],
      [90, 13, 4.5],
    ]),
    test90(),
  );
  expect(rising.best).toMatchObject({ flow: 90, isAtEnd: true });
});
