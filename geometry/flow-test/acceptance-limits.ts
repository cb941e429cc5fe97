import type { Guarantee } from '../job/job.ts';
import type { Fraction } from '../units.ts';

/** How far a value may be from the guaranteed one, as shares of it. */
export interface AcceptanceLimits {
  readonly flow: readonly [down: Fraction, up: Fraction];
  readonly head: readonly [down: Fraction, up: Fraction];
  readonly efficiency: Fraction;
  readonly power: Fraction;
  /** Widened for a small pump. */
  readonly isSmall: boolean;
}

type GradeLimits = Omit<AcceptanceLimits, 'isSmall'>;

const both = (size: Fraction): readonly [Fraction, Fraction] => [-size, size];
const up = (size: Fraction): readonly [Fraction, Fraction] => [0, size];

const GRADES: Readonly<Record<Guarantee['grade'], GradeLimits>> = {
  '1B': { flow: both(0.05), head: both(0.03), efficiency: -0.03, power: 0.04 },
  '1E': { flow: both(0.05), head: both(0.03), efficiency: 0, power: 0.04 },
  '1U': { flow: up(0.1), head: up(0.06), efficiency: 0, power: 0.1 },
  '2B': { flow: both(0.08), head: both(0.05), efficiency: -0.05, power: 0.08 },
  '2U': { flow: up(0.16), head: up(0.1), efficiency: -0.05, power: 0.16 },
  '3B': { flow: both(0.09), head: both(0.07), efficiency: -0.07, power: 0.09 },
};

/** kW at the shaft, up to which a pump is small. */
const SMALL = 10;
const SMALL_FLOW = 0.1;
const SMALL_HEAD = 0.08;

/**
 * The limits of a grade of acceptance. For a pump up to 10 kW the wider ones hold; a side that the grade gives no room keeps none.
 * @param power  at the shaft, kW; null when it is not known: then the pump is not taken for small
 * Source: ISO 9906:2012, table 8 and 4.4.2 (values from memory); tests/geometry/flow-test/acceptance.test.ts
 */
export function acceptanceLimits(grade: Guarantee['grade'], power: number | null): AcceptanceLimits {
  const limits = GRADES[grade];
  if (power === null || power > SMALL) return { ...limits, isSmall: false };
  const efficiency = 0.1 * (1 - power / SMALL) + 0.07;
  const wider = (own: Fraction, small: Fraction): Fraction =>
    own === 0 ? 0 : Math.sign(own) * Math.max(Math.abs(own), small);
  const pair = ([down, top]: readonly [Fraction, Fraction], small: Fraction) =>
    [wider(down, small), wider(top, small)] as const;
  return {
    flow: pair(limits.flow, SMALL_FLOW),
    head: pair(limits.head, SMALL_HEAD),
    efficiency: wider(limits.efficiency, efficiency),
    power: wider(limits.power, Math.hypot(0.07, efficiency)),
    isSmall: true,
  };
}
