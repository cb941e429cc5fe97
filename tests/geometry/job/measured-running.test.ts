import { describe, expect, test } from 'vitest';
import {
  measuredClearance,
  measuredFlowTest,
  measuredHistory,
} from '../../../geometry/job/measured-running.ts';

const GAP = { plate: 'plate', impeller: 'impeller', asNew: 0.4, least: 0.3, most: 0.6 };
const POINT = { flow: 60, head: 14.1, power: 4.6 };

describe('a clearance', () => {
  test('that says no more has no shim, no tolerance, and holds everywhere', () => {
    expect(measuredClearance(GAP)).toEqual({
      ...GAP,
      asNewHolds: 'everywhere',
      shim: 0,
      dressTips: 0,
      tolerances: { setting: 0, film: 0, dressing: 0, runOut: 0 },
    });
  });

  test('keeps each tolerance under its own name', () => {
    const file = { ...GAP, tolerance: 0.1, filmTolerance: 0.05, dressTolerance: 0.04, runOut: 0.03 };
    expect(measuredClearance(file).tolerances).toEqual({
      setting: 0.1,
      film: 0.05,
      dressing: 0.04,
      runOut: 0.03,
    });
  });
});

describe('a flow test', () => {
  const bare = { density: 998, ratedSpeed: 1450, duty: 90 };

  test('that says no more is measured at the shaft, by instruments of grade 2, others for each run', () => {
    const { runs, ...test } = measuredFlowTest({
      ...bare,
      runs: [{ when: 'before', speed: 1446, points: [POINT] }],
    });
    expect(test).toMatchObject({ gauges: 2, sameGauges: false, repeatability: null, motorEfficiency: null });
    expect(test).toMatchObject({ hoursPerYear: null, energyPrice: null, guarantee: null });
    expect(runs).toEqual([
      { label: '', when: 'before', speed: 1446, powerAt: 'shaft', density: 998, points: [POINT] },
    ]);
  });

  test('has shares in place of percentages, and a density of its own where a run gives one', () => {
    const test = measuredFlowTest({
      ...bare,
      motorEfficiency: 88,
      gauges: 1,
      repeatability: 2,
      guarantee: { flow: 90, head: 13, efficiency: 70, grade: '1U' },
      runs: [{ when: 'x', speed: 1450, density: 1010, points: [POINT] }],
    });
    expect(test).toMatchObject({ motorEfficiency: 0.88, gauges: 1, repeatability: 0.02 });
    expect(test.guarantee).toEqual({ flow: 90, head: 13, efficiency: 0.7, power: null, grade: '1U' });
    expect(test.runs[0].density).toBe(1010);
  });

  test('knows before, after and new however they are written, and leaves other words alone', () => {
    const when = ['Before', ' AFTER ', 'New', 'Spring 2025'];
    const { runs } = measuredFlowTest({
      ...bare,
      runs: when.map((when) => ({ when, speed: 1450, points: [POINT] })),
    });
    expect(runs.map((run) => run.when)).toEqual(['before', 'after', 'new', 'Spring 2025']);
  });
});

test('a history has volumes in mm3, and null for what was not noted', () => {
  expect(measuredHistory(undefined)).toEqual({ hours: null, repairs: [] });
  const repair = { part: 'plate', date: '2025-02-04', hours: 2900, deepest: 4.1 };
  expect(measuredHistory({ hours: 100, repairs: [{ ...repair, volume: 31 }, repair] })).toEqual({
    hours: 100,
    repairs: [
      { ...repair, mean: null, volume: 31_000, note: '' },
      { ...repair, mean: null, volume: null, note: '' },
    ],
  });
});
