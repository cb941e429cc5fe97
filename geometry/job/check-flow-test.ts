import { type Fault, shown } from './fault.ts';
import type { JobFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type FlowTest = NonNullable<Readable<JobFile>['flowTest']>;

/** kW that water of 1 kg/m3 takes at 1 m3/h and 1 m: 9.80665 over 3600 s and 1000 W. */
const KILOWATT = 9.80665 / 3.6e6;

/** What a flow test must agree on: nobody can guarantee less power at the shaft than goes into the liquid. */
export function checkFlowTest({ guarantee, density }: FlowTest): Fault[] {
  if (guarantee == null || density == null) return [];
  const { flow, head, power } = guarantee;
  if (flow == null || head == null || power == null) return [];
  const hydraulic = density * KILOWATT * flow * head;
  if (power >= hydraulic) return [];
  const needs = `at least the ${Number(hydraulic.toPrecision(4))} kW that ${flow} m3/h and ${head} m take out of the pump`;
  return [{ field: 'flowTest.guarantee.power', found: shown(power), needs }];
}
