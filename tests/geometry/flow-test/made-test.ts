import type { FlowTest, TestRun } from '../../../geometry/job/job.ts';

/** A test of water at 1450 r/min and 90 m3/h, on which nothing else is said. */
export function test90(over: Partial<FlowTest> = {}): FlowTest {
  return {
    density: 998,
    ratedSpeed: 1450,
    duty: 90,
    hoursPerYear: null,
    energyPrice: null,
    motorEfficiency: null,
    gauges: 2,
    sameGauges: false,
    repeatability: null,
    guarantee: null,
    runs: [],
    ...over,
  };
}

/** Flow m3/h, head m, power kW. */
type Triple = readonly [flow: number, head: number, power: number];

export function run(when: string, points: readonly Triple[], over: Partial<TestRun> = {}): TestRun {
  return {
    label: '',
    when,
    speed: 1450,
    powerAt: 'shaft',
    density: 998,
    points: points.map(([flow, head, power]) => ({ flow, head, power })),
    ...over,
  };
}

/** A run of one point at duty with that efficiency, head 13.2 m: rho g Q H / P, by hand. */
export function atDuty(when: string, efficiency: number, over: Partial<TestRun> = {}): TestRun {
  const hydraulic = (998 * 9.80665 * (90 / 3600) * 13.2) / 1000;
  return run(when, [[90, 13.2, hydraulic / efficiency]], over);
}
