import type { FlowTest } from '../job/job.ts';
import type { Fraction } from '../units.ts';

/** How the power was come by: at the shaft, at the motor with its efficiency known, or at the motor alone. */
export type PowerKnown = 'shaft' | 'through the motor' | 'motor alone';

/** What a value may be off to either side, as a share of it, 95 of 100. */
export interface MeasurementError {
  readonly flow: Fraction;
  readonly head: Fraction;
  readonly power: Fraction;
  readonly efficiency: Fraction;
}

interface Grade {
  readonly flow: Fraction;
  readonly head: Fraction;
  readonly torque: Fraction;
  readonly speed: Fraction;
  /** Taken in by the motor. */
  readonly motor: Fraction;
  /** At the shaft, from that and the efficiency of the motor. */
  readonly throughMotor: Fraction;
}

const FIELD: Grade = {
  flow: 0.035,
  head: 0.035,
  torque: 0.03,
  speed: 0.02,
  motor: 0.035,
  throughMotor: 0.04,
};
const GRADES: Readonly<Record<FlowTest['gauges'], Grade>> = {
  1: { flow: 0.02, head: 0.015, torque: 0.014, speed: 0.005, motor: 0.015, throughMotor: 0.02 },
  2: FIELD,
  3: FIELD,
};

/**
 * The greatest overall uncertainty that a grade of measurement permits; that of the efficiency is the root of the sum of squares.
 * Source: ISO 9906:2012, 4.3 (values from memory); tests/geometry/flow-test/measurement-error.test.ts
 */
export function measurementError(gauges: FlowTest['gauges'], known: PowerKnown): MeasurementError {
  const { flow, head, torque, speed, motor, throughMotor } = GRADES[gauges];
  const power =
    known === 'shaft' ? Math.hypot(torque, speed) : known === 'motor alone' ? motor : throughMotor;
  return { flow, head, power, efficiency: Math.hypot(flow, head, power) };
}
