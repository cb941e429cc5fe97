import type { FlowTest, TestRun } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import type { ComparedRuns } from './comparison.ts';
import type { RunEstimate } from './run-estimate.ts';

/** Speeds of the test against rated speed: for flow, head and power; for the efficiency (ISO 9906:2012, 5.7.2, from memory). */
const FAR = [0.5, 1.2] as const;
const NEAR = [0.8, 1.2] as const;
/** Below it an efficiency at good flow is more likely a slip than a pump. */
const LEAST_LIKELY = 0.1;

/** What in the runs should worry someone, run by run. */
export function flowWarnings(
  test: FlowTest,
  runs: readonly RunEstimate[],
  compared: ComparedRuns,
): Warning[] {
  return [
    ...slipWarnings(test),
    ...test.runs.flatMap((run, i) => [
      ...speedWarning(run, i, test.ratedSpeed),
      ...pointWarnings(runs[i], i),
      ...dutyWarning(runs[i], i, test.duty),
    ]),
    ...compared.repeated.map((kind) => ({
      code: 'flow-run-repeated',
      field: 'flowTest.runs',
      text: `Several runs are ${KIND_WORDS[kind]}: the last of them, ${nameOf(runs[compared[kind] ?? 0], compared[kind] ?? 0)}, is compared.`,
    })),
  ];
}

/** A motor this poor is more likely a share typed for a percentage. */
const LEAST_MOTOR = 0.2;
/** No liquid that a pump moves is lighter, kg/m3: more likely g/cm3. */
const LIGHTEST = 300;

/** Values that are more likely a slip of the unit. */
function slipWarnings({ motorEfficiency, density }: FlowTest): Warning[] {
  const warnings: Warning[] = [];
  if (motorEfficiency !== null && motorEfficiency < LEAST_MOTOR)
    warnings.push({
      code: 'flow-motor',
      field: 'flowTest.motorEfficiency',
      text: `A motor of ${percent(motorEfficiency)} efficiency: it is asked in %, such as 88.`,
    });
  if (density < LIGHTEST)
    warnings.push({
      code: 'flow-density',
      field: 'flowTest.density',
      text: `A liquid of ${short(density)} kg/m3: it is asked in kg/m3, such as 998 for water.`,
    });
  return warnings;
}

/** What a run is called in a sentence. */
export function nameOf({ label, when }: Pick<RunEstimate, 'label' | 'when'>, at: number): string {
  return `run ${at + 1}${label.trim() === '' ? '' : ` "${label}"`}${label.trim() === '' && when !== '' ? ` (${KIND_WORDS[when] ?? when})` : ''}`;
}

/** Kinds of run as a person calls them; any other by its own word. */
const KIND_WORDS: Readonly<Record<string, string>> = {
  new: 'as new',
  before: 'as found',
  after: 'after repair',
};

function speedWarning(run: TestRun, at: number, ratedSpeed: number): Warning[] {
  const ratio = run.speed / ratedSpeed;
  const isOutside = ([least, most]: readonly [number, number]) => ratio < least || ratio > most;
  if (!isOutside(NEAR)) return [];
  const what = isOutside(FAR)
    ? 'flow, head and power may be brought over only from 50 to 120 %'
    : 'an efficiency may be brought over only from 80 to 120 %';
  return [
    {
      code: 'flow-speed',
      field: `flowTest.runs[${at}].speed`,
      text: `${nameOf(run, at)} was made at ${percent(ratio)} of rated speed; ${what} (ISO 9906, from memory). Test nearer to rated speed.`,
    },
  ];
}

function pointWarnings(run: RunEstimate, at: number): Warning[] {
  const widest = Math.max(...run.points.map(({ flow }) => flow));
  return run.points.flatMap(({ flow, efficiency }, i): Warning[] => {
    const field = `flowTest.runs[${at}].points[${i}]`;
    const point = `${nameOf(run, at)}, point ${i + 1}`;
    if (efficiency === null)
      return [{ code: 'flow-no-power', field, text: `${point} has no power, so it has no efficiency.` }];
    if (efficiency > 1)
      return [
        {
          code: 'flow-efficiency-high',
          field,
          text: `${point} would be ${percent(efficiency)} efficient. No pump is: check flow, head, power and density.`,
        },
      ];
    if (efficiency < LEAST_LIKELY && flow > 0 && flow >= widest / 2)
      return [
        {
          code: 'flow-efficiency-low',
          field,
          text: `${point} would be only ${percent(efficiency)} efficient: check the numbers.`,
        },
      ];
    return [];
  });
}

function dutyWarning(run: RunEstimate, at: number, duty: number): Warning[] {
  if (run.atDuty !== null || run.head.length === 0) return [];
  const [from, to] = [run.head[0].x, run.head[run.head.length - 1].x];
  return [
    {
      code: 'flow-duty-outside',
      field: 'flowTest.duty',
      text: `The duty of ${short(duty)} m3/h lies outside ${nameOf(run, at)}, which holds ${from === to ? `${short(from)} m3/h alone` : `${short(from)} to ${short(to)} m3/h`} at rated speed. Its curves are not drawn on beyond their ends.`,
    },
  ];
}

const percent = (share: number): string => `${(share * 100).toFixed(Math.abs(share) < 0.1 ? 1 : 0)} %`;
const short = (value: number): string => String(Number(value.toPrecision(4)));
