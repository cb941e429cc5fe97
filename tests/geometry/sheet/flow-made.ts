import { estimate } from '../../../geometry/estimate.ts';
import type { FlowTest } from '../../../geometry/job/job.ts';
import type { FlowTestResult } from '../../../geometry/sheet/flow-result.ts';
import { toResult } from '../../../geometry/sheet/result.ts';
import { run, test90 } from '../flow-test/made-test.ts';
import { job } from '../made.ts';

const triple = (flow: number, head: number, efficiency: number) =>
  [flow, head, (998 * 9.80665 * flow * head) / 3.6e6 / efficiency] as const;

/** Invented runs whose efficiency at 90 m3/h is 72 % as new, 60 % as found, 69 % after the repair. */
export const THREE_RUNS: FlowTest['runs'] = [
  run('new', [triple(60, 15.5, 0.66), triple(90, 13.6, 0.72), triple(110, 11.8, 0.68)], {
    label: 'works test',
  }),
  run('before', [triple(60, 14, 0.55), triple(90, 12, 0.6), triple(110, 10.3, 0.56)]),
  run('after', [triple(60, 15.3, 0.63), triple(90, 13.2, 0.69), triple(110, 11.5, 0.65)], {
    label: 'repaired',
  }),
];

export const estimated = (over: Partial<FlowTest> = {}) =>
  estimate({ ...job([]), flowTest: test90({ runs: THREE_RUNS, ...over }) }, { cell: 8 });

export function flowTestOver(over: Partial<FlowTest> = {}): FlowTestResult {
  const { flowTest } = toResult(estimated(over));
  if (flowTest === null) throw new Error('flowTestOver: needs a job with a flow test');
  return flowTest;
}
