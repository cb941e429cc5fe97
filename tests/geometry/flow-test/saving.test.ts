import { describe, expect, test } from 'vitest';
import { flowTestOf } from '../../../geometry/flow-test/flow-test.ts';
import type { FlowTest, TestRun } from '../../../geometry/job/job.ts';
import { atDuty, test90 } from './made-test.ts';

const saved = (over: Partial<FlowTest> = {}, run: Partial<TestRun> = {}) =>
  flowTestOf(test90({ runs: [atDuty('before', 0.62, run), atDuty('after', 0.705, run)], ...over })).saving;

// 998 kg/m3, 90 m3/h, 13.2 m: 5.20923 kW at 62 %, 4.58117 kW at 70.5 %; x 4000 h = 2512.25 kWh; x 0.25 = 628.063. Definition of efficiency,
// worked out by other code.
describe('what a better efficiency saves', () => {
  test('power at the shaft, energy a year and money', () => {
    const found = saved({ hoursPerYear: 4000, energyPrice: 0.25 });
    expect(found?.before).toBeCloseTo(5.20923, 5);
    expect(found?.after).toBeCloseTo(4.58117, 5);
    expect(found?.power).toBeCloseTo(0.62806, 5);
    expect(found?.energy).toBeCloseTo(2512.25, 2);
    expect(found?.money).toBeCloseTo(628.063, 3);
    expect(found?.isShaftOnly).toBe(true);
  });

  test('at the meter it is more by what the motor loses', () => {
    const found = saved({ hoursPerYear: 4000, motorEfficiency: 0.88 });
    expect(found?.energy).toBeCloseTo(2512.25 / 0.88, 2);
    expect(found).toMatchObject({ isShaftOnly: false, money: null });
  });

  test('the efficiency of pump and motor together holds the motor already', () => {
    const found = saved({ hoursPerYear: 4000 }, { powerAt: 'motor' });
    expect(found?.energy).toBeCloseTo(2512.25, 2);
    expect(found?.isShaftOnly).toBe(false);
  });

  test('without hours no energy, without a price no money; never 0', () => {
    expect(saved()).toMatchObject({ energy: null, energyError: null, money: null });
    expect(saved({ energyPrice: 0.25 })?.money).toBeNull();
    expect(saved({ hoursPerYear: 0 })?.energy).toBe(0);
  });

  test('both efficiencies add to its error as squares', () => {
    // Derivative of P = h / e is -P / e: 6.124 % of each power.
    const found = saved({ hoursPerYear: 1000 });
    expect(found?.powerError).toBeCloseTo(Math.hypot(5.20923 * 0.06124, 4.58117 * 0.06124), 3);
    expect(found?.energyError).toBeCloseTo((found?.powerError ?? 0) * 1000, 9);
  });
});
