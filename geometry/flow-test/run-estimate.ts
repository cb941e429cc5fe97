import type { FlowTest, TestRun } from '../job/job.ts';
import type { Fraction } from '../units.ts';
import { type MeasurementError, measurementError, type PowerKnown } from './measurement-error.ts';
import { type MonotoneCurve, monotoneCurve, valueAt } from './monotone-curve.ts';
import { hydraulicPower, type SpecificSpeed, specificSpeed } from './pump-power.ts';

/** A run brought to rated speed and to the density of the test. */
export interface RunEstimate {
  readonly label: string;
  readonly when: string;
  /**
   * Whose efficiency it is. `pump`: power at the shaft, measured there or worked out from that at the motor. `set`: pump and motor
   * together, where power was taken at the motor and nobody knows the motor's efficiency; power is then that of the motor.
   */
  readonly of: 'pump' | 'set';
  /** As measured, in the order given. */
  readonly points: readonly RatedPoint[];
  readonly head: MonotoneCurve;
  readonly power: MonotoneCurve;
  /** Through the points whose efficiency is known. */
  readonly efficiency: MonotoneCurve;
  /** As a share of each value. */
  readonly error: MeasurementError;
  /** null when the duty lies beyond the ends of the run. */
  readonly atDuty: RatedPoint | null;
  readonly best: BestPoint | null;
}

/** m3/h, m, kW. */
export interface RatedPoint {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
  /** 0 without flow; null without power: there is none to divide by. */
  readonly efficiency: Fraction | null;
}

export interface BestPoint {
  readonly flow: number;
  readonly head: number;
  readonly efficiency: Fraction;
  readonly specificSpeed: SpecificSpeed | null;
  /** The best may lie beyond the measured range. */
  readonly isAtEnd: boolean;
}

/**
 * One run: its points at rated speed, a curve through each of head, power and efficiency along the flow, and where the duty and the best lie.
 * Affinity laws: flow as the speed, head as its square, power as its cube and as the density; the efficiency stays.
 * Source: ISO 9906:2012, 5.7.2; tests/geometry/flow-test/run-estimate.test.ts
 */
export function runEstimate(run: TestRun, test: FlowTest): RunEstimate {
  const known: PowerKnown =
    run.powerAt === 'shaft' ? 'shaft' : test.motorEfficiency === null ? 'motor alone' : 'through the motor';
  const toShaft = known === 'through the motor' ? (test.motorEfficiency ?? 1) : 1;
  const points = run.points.map((point) => ratedPoint({ ...point, power: point.power * toShaft }, run, test));

  const curve = (of: (point: RatedPoint) => number | null) =>
    monotoneCurve(
      points.flatMap((point) => {
        const y = of(point);
        return y === null ? [] : [{ x: point.flow, y }];
      }),
    );
  const [head, power] = [curve((point) => point.head), curve((point) => point.power)];
  const efficiency = curve((point) => point.efficiency);
  return {
    label: run.label,
    when: run.when,
    of: known === 'motor alone' ? 'set' : 'pump',
    points,
    head,
    power,
    efficiency,
    error: measurementError(test.gauges, known),
    atDuty: pointAt(test.duty, head, power, efficiency),
    best: bestPoint(efficiency, head, test.ratedSpeed),
  };
}

function ratedPoint(
  { flow, head, power }: TestRun['points'][number],
  run: TestRun,
  { ratedSpeed, density }: FlowTest,
): RatedPoint {
  const ratio = ratedSpeed / run.speed;
  return {
    flow: flow * ratio,
    head: head * ratio ** 2,
    power: (power * ratio ** 3 * density) / run.density,
    efficiency: power > 0 ? hydraulicPower(run.density, flow, head) / power : null,
  };
}

function pointAt(
  flow: number,
  head: MonotoneCurve,
  power: MonotoneCurve,
  efficiency: MonotoneCurve,
): RatedPoint | null {
  const [headThere, powerThere] = [valueAt(head, flow), valueAt(power, flow)];
  if (headThere === null || powerThere === null) return null;
  return { flow, head: headThere, power: powerThere, efficiency: valueAt(efficiency, flow) };
}

/** The curve passes no extreme of its points, so the best of them is the best there is. */
function bestPoint(efficiency: MonotoneCurve, heads: MonotoneCurve, ratedSpeed: number): BestPoint | null {
  const most = Math.max(0, ...efficiency.map(({ y }) => y));
  const at = efficiency.findIndex(({ y }) => y === most);
  if (most === 0 || at < 0) return null;
  const flow = efficiency[at].x;
  const head = valueAt(heads, flow) ?? 0;
  return {
    flow,
    head,
    efficiency: most,
    specificSpeed: specificSpeed(ratedSpeed, flow, head),
    isAtEnd: at === 0 || at === efficiency.length - 1,
  };
}
