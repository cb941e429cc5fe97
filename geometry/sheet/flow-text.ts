/** The flow test in words: a headline, sentences, rows for tables, and how it was worked out. */
import type { FlowTest } from '../job/job.ts';
import type { Basis } from './basis.ts';
import { figure, plain } from './figure.ts';
import type { AcceptanceResult, ComparisonResult, FlowRunResult, FlowTestResult } from './flow-result.ts';
import type { Headline } from './headline.ts';

/** To be read from two metres, and what belongs to it; none before two runs can be compared. */
export function flowHeadlines(result: FlowTestResult): Headline[] {
  const { comparison, saving, acceptance } = result;
  if (comparison === null) return [];
  return [
    {
      lead: `${whose(comparison)} at duty ${change(comparison)}`,
      notes: [
        gainWords(comparison),
        ...(saving === null ? [] : [savingWords(result)]),
        ...(acceptance === null
          ? []
          : [`guarantee of grade ${acceptance.grade}: ${ACCEPTED[acceptance.verdict]}`]),
      ],
    },
  ];
}

/** What the test says, one sentence each, the verdict first. */
export function flowLines(result: FlowTestResult): string[] {
  return [
    ...gainLines(result),
    ...recoverySentence(result),
    ...savingSentences(result),
    ...restLines(result),
  ];
}

/** The verdict, and why the error is as large as it is. */
export function gainLines(result: FlowTestResult): string[] {
  const { comparison, notCompared } = result;
  if (comparison === null) return notCompared === null || notCompared === '' ? [] : [notCompared];
  return [
    `${whose(comparison)} at duty ${change(comparison)}: ${gainWords(comparison)}.`,
    errorSentence(comparison, result),
  ];
}

/** What belongs to it beside the saving, which a screen shows as figures. */
export function furtherLines(result: FlowTestResult): string[] {
  return [...recoverySentence(result), ...restLines(result)];
}

const restLines = (result: FlowTestResult): string[] => [
  ...acceptanceSentences(result),
  ...bestSentences(result),
  ...setSentences(result),
];

const whose = ({ of }: Pick<ComparisonResult, 'of'>): string =>
  of === 'set' ? 'Efficiency of pump and motor' : 'Efficiency';

/** `60.0 to 69.0 %`. */
const change = ({ before, after }: ComparisonResult): string =>
  `from ${before.toFixed(1)} to ${after.toFixed(1)} %`;

/** `a gain of 8.5 points, more than the error of +- 5.7`. */
function gainWords({ gain, gainError, relativeError, verdict }: ComparisonResult): string {
  const error = `+- ${gainError.toFixed(1)} points, ${relativeError.toFixed(1)} % of it`;
  const points = Math.abs(gain).toFixed(1);
  if (verdict === 'gain') return `a gain of ${points} points, beyond the error of measurement (${error})`;
  if (verdict === 'loss') return `a loss of ${points} points, beyond the error of measurement (${error})`;
  return `inside the error of measurement (${error})`;
}

function errorSentence({ error }: ComparisonResult, { runs, compared }: FlowTestResult): string {
  if (error === 'repeatability')
    return 'The same gauges were used in the same places, so only how well they repeat counts.';
  const [before, after] = [compared.before, compared.after].map((at) =>
    at === null ? '' : `${runs[at].relativeError.efficiency.toFixed(1)} %`,
  );
  const both = `each efficiency is true to ${before === after ? before : `${before} and ${after}`} of it, and errors add as squares`;
  return error === 'independent'
    ? `Two tests that know nothing of each other: ${both}.`
    : `The same gauges were used, but how well they repeat is not known, so the full error stays: ${both}.`;
}

function recoverySentence({ recovered, returned }: FlowTestResult): string[] {
  if (recovered === null) return [];
  const share =
    returned === null ? '' : ` Of what had been lost, ${(returned * 100).toFixed(0)} % came back.`;
  return [`The pump has ${(recovered * 100).toFixed(1)} % of its efficiency as new.${share}`];
}

/** What is saved in a year, as far as the job tells. */
function savingWords({ saving }: FlowTestResult): string {
  if (saving === null) return '';
  const { power, powerError, energy, energyError, money, moneyError } = saving;
  const verb = power < 0 ? 'costs' : 'saves';
  const amount = (value: number, error: number, unit: string): string =>
    `${figure(Math.abs(value))} ${unit} (+- ${figure(error)})`;
  const parts = [
    amount(power, powerError, 'kW'),
    ...(energy === null || energyError === null ? [] : [`${amount(energy, energyError, 'kWh')} a year`]),
    ...(money === null || moneyError === null ? [] : [amount(money, moneyError, 'in money a year')]),
  ];
  return `${verb} ${parts.join(', ')}`;
}

function savingSentences(result: FlowTestResult): string[] {
  const { saving } = result;
  if (saving === null) return [];
  const words = savingWords(result);
  const where = saving.isShaftOnly
    ? ' Shaft power only: the meter sees more, by what the motor loses.'
    : ' At the meter.';
  return [`${words.charAt(0).toUpperCase()}${words.slice(1)}.${where}`];
}

const ACCEPTED = {
  met: 'met',
  'not met': 'not met',
  'not covered': 'not covered by the run',
} as const;

function acceptanceSentences({ acceptance, guarantee, runs }: FlowTestResult): string[] {
  if (acceptance === null || guarantee === null) return [];
  const { run, grade, verdict, isSmall } = acceptance;
  const small = isSmall ? ' Up to 10 kW the wider limits of the standard hold.' : '';
  const isUnknown = runs[run].of === 'set' && (guarantee.efficiency !== null || guarantee.power !== null);
  const motor = isUnknown
    ? ' Power was taken at the motor, so efficiency and power of the pump are not known.'
    : '';
  return [
    `Guarantee of grade ${grade}, ${plain(guarantee.flow)} m3/h at ${plain(guarantee.head)} m: ${ACCEPTED[verdict]}, judged by ${quoted(runs[run].name)}.${motor}${small}`,
  ];
}

function bestSentences({ runs, compared }: FlowTestResult): string[] {
  const at = compared.after ?? compared.before ?? compared.new ?? (runs.length > 0 ? runs.length - 1 : null);
  const best = at === null ? null : runs[at].best;
  if (at === null || best === null) return [];
  const speed = best.specificSpeed;
  const number =
    speed === null
      ? ''
      : `, specific speed nq ${speed.nq.toFixed(1)} (r/min, m3/s, m), ${speed.us.toFixed(0)} in US units, ${speed.dimensionless.toFixed(3)} without units`;
  const end = best.isAtEnd
    ? ' It is the last point of the run: the best efficiency may lie outside the measured range.'
    : '';
  return [
    `Best measured in ${quoted(runs[at].name)}: ${best.efficiency.toFixed(1)} % at ${figure(best.flow)} m3/h and ${figure(best.head)} m${number}.${end}`,
  ];
}

/** A name of the person's own in a sentence; a run without one is called by its number. */
const quoted = (name: string): string => (/^run \d/.test(name) ? name : `"${name}"`);

function setSentences({ runs }: FlowTestResult): string[] {
  if (runs.every(({ of }) => of === 'pump')) return [];
  return [
    'Where power was taken at the motor and its efficiency is not given, power and efficiency are those of pump and motor together.',
  ];
}

export const DUTY_HEADS = ['run', '>head m', '>power kW', '>efficiency %'] as const;

/** One row a run: what it does at duty, with the error of measurement. */
export function dutyRows({ runs }: FlowTestResult): string[][] {
  return runs.map(({ name, of, atDuty }) => {
    const called = of === 'set' ? `${name}, pump and motor` : name;
    if (atDuty === null) return [called, 'not reached', '', ''];
    const { head, power, efficiency, error } = atDuty;
    return [
      called,
      `${figure(head)} +- ${figure(error.head)}`,
      `${figure(power)} +- ${figure(error.power)}`,
      efficiency === null ? 'no power' : `${efficiency.toFixed(1)} +- ${error.efficiency.toFixed(1)}`,
    ];
  });
}

export const POINT_HEADS = ['run', '>no', '>flow m3/h', '>head m', '>power kW', '>efficiency %'] as const;

/** One row a point, at rated speed. */
export function pointRows({ runs }: FlowTestResult): string[][] {
  return runs.flatMap(({ name, points }) =>
    points.map(({ flow, head, power, efficiency }, i) => [
      i === 0 ? name : '',
      String(i + 1),
      flow.toFixed(1),
      head.toFixed(2),
      power.toFixed(2),
      efficiency === null ? '' : efficiency.toFixed(1),
    ]),
  );
}

export const ACCEPTANCE_HEADS = ['guaranteed', '>measured', '>allowed', 'verdict'] as const;

/** One row a check of the guarantee; none without one. */
export function acceptanceRows({ acceptance, guarantee }: FlowTestResult): string[][] {
  if (acceptance === null || guarantee === null) return [];
  return acceptance.checks.map(({ what, value, least, most, verdict }) => [
    checkName(what, guarantee),
    value === null ? 'not reached' : `${figure(value)} ${UNITS[what]}`,
    `${rangeWords(least, most)} ${UNITS[what]}`,
    ACCEPTED[verdict],
  ]);
}

const UNITS = { head: 'm', flow: 'm3/h', efficiency: '%', power: 'kW' } as const;

function checkName(
  what: AcceptanceResult['checks'][number]['what'],
  { flow, head, efficiency, power }: NonNullable<FlowTestResult['guarantee']>,
): string {
  if (what === 'head') return `head ${plain(head)} m, at ${plain(flow)} m3/h`;
  if (what === 'flow') return `or flow ${plain(flow)} m3/h, at ${plain(head)} m`;
  return what === 'efficiency' ? `efficiency ${plain(efficiency ?? 0)} %` : `power ${plain(power ?? 0)} kW`;
}

function rangeWords(least: number | null, most: number | null): string {
  if (least === null) return `at most ${figure(most ?? 0)}`;
  return most === null ? `at least ${figure(least)}` : `${figure(least)} to ${figure(most)}`;
}

/** How the figures were worked out, with their numbers and sources. */
export function flowBasis(result: FlowTestResult, test: FlowTest): Basis[] {
  if (test.runs.length === 0) return [];
  const { comparison, saving, acceptance } = result;
  return [
    {
      what: 'Flow test at rated speed',
      how: `Flow x n'/n, head x (n'/n)^2, power x (n'/n)^3 with n' = ${plain(test.ratedSpeed)} r/min${densityWords(test)}; ${speedWords(test)}. Efficiency = density x 9.80665 m/s2 x flow x head / power.`,
      source: 'Affinity laws; ISO 9906:2012, 5.7.2',
    },
    {
      what: 'Flow test at duty',
      how: `Head, power and efficiency each from its own monotone curve through the points, read at ${plain(test.duty)} m3/h and never beyond its ends; so the last digits of the three may not multiply out.`,
      source: 'Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300',
    },
    {
      what: 'Error of measurement',
      how: `Grade ${test.gauges} instruments: ${runErrors(result.runs)}; 95 of 100.`,
      source: 'ISO 9906:2012, 4.3, from memory',
    },
    ...(comparison === null
      ? []
      : [
          {
            what: 'Gain',
            how: gainHow(comparison, test, result),
            source: 'Errors of independent tests add as squares, JCGM 100:2008, 5.1.2',
          },
        ]),
    ...(saving === null
      ? []
      : [
          {
            what: 'Saving',
            how: `${saving.working}. The head is that after the repair.`,
            source: 'Definition of efficiency; hours, price and motor chosen in the job',
          },
        ]),
    ...(acceptance === null
      ? []
      : [
          {
            what: 'Guarantee',
            how: acceptanceHow(acceptance),
            source: `ISO 9906:2012, ${acceptance.isSmall ? '4.4.2' : 'table 8'}, from memory`,
          },
        ]),
  ];
}

function densityWords({ density, runs }: FlowTest): string {
  return runs.some((run) => run.density !== density)
    ? ` and, for power, to ${plain(density)} kg/m3`
    : ` in ${plain(density)} kg/m3`;
}

function speedWords({ runs }: FlowTest): string {
  return `tested at ${[...new Set(runs.map(({ speed }) => plain(speed)))].join(', ')} r/min`;
}

function runErrors(runs: readonly FlowRunResult[]): string {
  const words = ({ relativeError: { flow, head, power, efficiency } }: FlowRunResult): string =>
    `flow ${flow.toFixed(1)}, head ${head.toFixed(1)}, power ${power.toFixed(1)}, efficiency ${efficiency.toFixed(1)} %`;
  return [...new Set(runs.map(words))].join('; ');
}

function gainHow(
  { before, after, gain, gainError, error }: ComparisonResult,
  test: FlowTest,
  { runs, compared }: FlowTestResult,
): string {
  const sum = `${after.toFixed(2)} - ${before.toFixed(2)} = ${gain.toFixed(2)} points`;
  if (error === 'repeatability')
    return `${sum}; error ${plain((test.repeatability ?? 0) * 100)} % of the efficiency, how well the same gauges repeat = +- ${gainError.toFixed(1)} points.`;
  const own = (at: number | null): string =>
    at === null ? '' : runs[at].relativeError.efficiency.toFixed(2);
  return `${sum}; error sqrt((${before.toFixed(2)} x ${own(compared.before)} %)^2 + (${after.toFixed(2)} x ${own(compared.after)} %)^2) = +- ${gainError.toFixed(2)} points.`;
}

function acceptanceHow({ limits, grade, isSmall }: AcceptanceResult): string {
  const percent = (share: number): string => plain(Number((share * 100).toFixed(1)));
  const pair = ([down, up]: readonly [number, number]): string =>
    down === -up ? `+- ${percent(up)}` : `${percent(down)} to +${percent(up)}`;
  return (
    `Grade ${grade}${isSmall ? ', up to 10 kW' : ''}: flow ${pair(limits.flow)} %, head ${pair(limits.head)} %, efficiency ${percent(limits.efficiency)} %, power +${percent(limits.power)} %. ` +
    'The curve has to pass through one arm of the cross; efficiency and power where the line from nought through the guaranteed point cuts the curve.'
  );
}
