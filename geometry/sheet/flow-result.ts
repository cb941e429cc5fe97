/** The flow test in the file's units: m3/h, m, kW, %, kWh; shares of the pump as new and of a tolerance from 0 to 1. */
import type { Estimate } from '../estimate.ts';
import type { Acceptance, AcceptanceVerdict } from '../flow-test/acceptance.ts';
import type { ComparedRuns, Comparison, GainErrorKind } from '../flow-test/comparison.ts';
import { nameOf } from '../flow-test/flow-warnings.ts';
import type { Knot, MonotoneCurve } from '../flow-test/monotone-curve.ts';
import { GRAVITY } from '../flow-test/pump-power.ts';
import type { RatedPoint, RunEstimate } from '../flow-test/run-estimate.ts';
import type { Saving } from '../flow-test/saving.ts';
import type { FlowTest, Guarantee } from '../job/job.ts';

export interface FlowTestResult {
  readonly density: number;
  readonly ratedSpeed: number;
  readonly duty: number;
  readonly runs: readonly FlowRunResult[];
  /** Places in `runs`; the last of each kind. */
  readonly compared: Pick<ComparedRuns, 'new' | 'before' | 'after'>;
  readonly comparison: ComparisonResult | null;
  /** Why there is none. */
  readonly notCompared: string | null;
  /** Efficiency after the repair as a share of that as new, at duty. */
  readonly recovered: number | null;
  /** Share of what had been lost that came back. */
  readonly returned: number | null;
  readonly saving: SavingResult | null;
  readonly noSaving: string | null;
  readonly guarantee: GuaranteeResult | null;
  readonly acceptance: AcceptanceResult | null;
}

export interface FlowRunResult {
  readonly label: string;
  readonly when: string;
  /** Its label, or its number and when it was. */
  readonly name: string;
  /** `set`: pump and motor together. */
  readonly of: RunEstimate['of'];
  /** At rated speed, in the order given. */
  readonly points: readonly FlowPointResult[];
  readonly atDuty: (FlowPointResult & { readonly error: FlowErrorResult }) | null;
  readonly best: BestPointResult | null;
  /** Of any value of the run, % of it. */
  readonly relativeError: FlowErrorResult;
  readonly curves: Readonly<Record<FlowQuantity, readonly CurveKnot[]>>;
}

export type FlowQuantity = 'head' | 'efficiency' | 'power';

export interface FlowPointResult {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  /** null without power. */
  readonly efficiency: number | null;
}

/** To either side, 95 of 100. */
export interface FlowErrorResult {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  readonly efficiency: number;
}

/** The curve between two of them is the cubic with these values and slopes. */
export interface CurveKnot {
  readonly flow: number;
  readonly value: number;
  readonly slope: number;
}

export interface BestPointResult {
  readonly flow: number;
  readonly head: number;
  readonly efficiency: number;
  readonly isAtEnd: boolean;
  readonly specificSpeed: { readonly nq: number; readonly us: number; readonly dimensionless: number } | null;
}

export interface ComparisonResult {
  readonly of: RunEstimate['of'];
  readonly before: number;
  readonly after: number;
  /** Points of efficiency. */
  readonly gain: number;
  readonly gainError: number;
  /** % of the efficiency. */
  readonly relativeError: number;
  readonly error: GainErrorKind;
  readonly isProven: boolean;
  readonly verdict: Comparison['verdict'];
}

export interface SavingResult extends Saving {
  /** The sum with its numbers in it. */
  readonly working: string;
}

export interface GuaranteeResult {
  readonly flow: number;
  readonly head: number;
  readonly efficiency: number | null;
  readonly power: number | null;
  readonly grade: Guarantee['grade'];
}

export interface AcceptanceResult {
  /** Place in `runs`. */
  readonly run: number;
  readonly grade: Guarantee['grade'];
  /** The wider limits up to 10 kW hold. */
  readonly isSmall: boolean;
  readonly limits: Omit<Acceptance['limits'], 'isSmall'>;
  readonly checks: readonly {
    readonly what: Acceptance['checks'][number]['what'];
    readonly value: number | null;
    readonly least: number | null;
    readonly most: number | null;
    readonly verdict: AcceptanceVerdict;
  }[];
  readonly verdict: AcceptanceVerdict;
}

const PERCENT = 100;

export function flowTestResult({ job, flowTest }: Estimate): FlowTestResult | null {
  const test = job.flowTest;
  if (test === null || flowTest === null) return null;
  const { comparison, saving, acceptance, compared } = flowTest;
  return {
    density: test.density,
    ratedSpeed: test.ratedSpeed,
    duty: test.duty,
    runs: flowTest.runs.map(runResult),
    compared: { new: compared.new, before: compared.before, after: compared.after },
    comparison: comparison && {
      ...comparison,
      before: comparison.before * PERCENT,
      after: comparison.after * PERCENT,
      gain: comparison.gain * PERCENT,
      gainError: comparison.gainError * PERCENT,
      relativeError: comparison.relativeError * PERCENT,
    },
    notCompared: flowTest.notCompared,
    recovered: flowTest.recovered,
    returned: flowTest.returned,
    saving: saving && comparison && { ...saving, working: savingWorking(saving, comparison, test) },
    noSaving: flowTest.noSaving,
    guarantee: test.guarantee && {
      ...test.guarantee,
      efficiency: percent(test.guarantee.efficiency),
    },
    acceptance: acceptance && acceptanceResult(acceptance),
  };
}

function runResult(run: RunEstimate, at: number): FlowRunResult {
  const { label, when, of, points, error, atDuty, best } = run;
  return {
    label,
    when,
    name: label.trim() === '' ? nameOf(run, at) : label,
    of,
    points: points.map(pointResult),
    atDuty: atDuty && {
      ...pointResult(atDuty),
      error: {
        flow: atDuty.flow * error.flow,
        head: atDuty.head * error.head,
        power: atDuty.power * error.power,
        efficiency: (atDuty.efficiency ?? 0) * error.efficiency * PERCENT,
      },
    },
    best: best && { ...best, efficiency: best.efficiency * PERCENT },
    relativeError: {
      flow: error.flow * PERCENT,
      head: error.head * PERCENT,
      power: error.power * PERCENT,
      efficiency: error.efficiency * PERCENT,
    },
    curves: {
      head: knots(run.head, 1),
      power: knots(run.power, 1),
      efficiency: knots(run.efficiency, PERCENT),
    },
  };
}

const percent = (share: number | null): number | null => (share === null ? null : share * PERCENT);

const pointResult = ({ flow, head, power, efficiency }: RatedPoint): FlowPointResult => ({
  flow,
  head,
  power,
  efficiency: percent(efficiency),
});

const knots = (curve: MonotoneCurve, times: number): CurveKnot[] =>
  curve.map(({ x, y, slope }: Knot) => ({ flow: x, value: y * times, slope: slope * times }));

function acceptanceResult({ run, grade, limits, checks, verdict }: Acceptance): AcceptanceResult {
  const { isSmall, ...shares } = limits;
  return {
    run,
    grade,
    isSmall,
    limits: shares,
    checks: checks.map((check) =>
      check.what === 'efficiency'
        ? {
            ...check,
            value: percent(check.value),
            least: percent(check.least),
            most: percent(check.most),
          }
        : check,
    ),
    verdict,
  };
}

/** `998 kg/m3 x 9.80665 m/s2 x 90 m3/h x 13.2 m / 3600000 = 3.23 kW; x (1 / 0.62 - 1 / 0.705) = 0.628 kW; x 4000 h = 2512 kWh; x 0.25 = 628.1`. */
function savingWorking(saving: Saving, { before, after, of }: Comparison, test: FlowTest): string {
  const { hydraulic, power, energy, money } = saving;
  const head = (hydraulic * 3.6e6) / (test.density * GRAVITY * test.duty);
  const isMotorIn = of === 'pump' && test.motorEfficiency !== null;
  return [
    `${digits(test.density)} kg/m3 x ${GRAVITY} m/s2 x ${digits(test.duty)} m3/h x ${digits(head)} m / 3600000 = ${digits(hydraulic)} kW in the liquid`,
    `${digits(hydraulic)} kW x (1 / ${digits(before)} - 1 / ${digits(after)})${isMotorIn ? ` / ${digits(test.motorEfficiency ?? 1)}` : ''} = ${digits(power)} kW`,
    ...(energy === null
      ? []
      : [`${digits(power)} kW x ${digits(test.hoursPerYear ?? 0)} h = ${digits(energy)} kWh`]),
    ...(energy === null || money === null
      ? []
      : [`${digits(energy)} kWh x ${digits(test.energyPrice ?? 0)} = ${digits(money)}`]),
  ].join('; ');
}

/** Four figures: enough to work it out again by hand. */
const digits = (value: number): string => String(Number(value.toPrecision(4)));
