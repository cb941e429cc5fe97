/** Standard acceleration of free fall, m/s2 (ISO 80000-3). */
export const GRAVITY = 9.80665;
const SECONDS_PER_HOUR = 3600;
const WATTS_PER_KW = 1000;

/**
 * The power that goes into the liquid: P = rho g Q H.
 * @param density  kg/m3
 * @param flow     m3/h
 * @param head     m
 * @returns        kW
 * Source: ISO 9906:2012, definitions; tests/geometry/flow-test/pump-power.test.ts
 */
export function hydraulicPower(density: number, flow: number, head: number): number {
  return (density * GRAVITY * flow * head) / (SECONDS_PER_HOUR * WATTS_PER_KW);
}

/** A pump of so many turns at its best efficiency, flow and head, one stage: three spellings of one number. */
export interface SpecificSpeed {
  /** r/min, m3/s, m. */
  readonly nq: number;
  /** r/min, US gallons a minute, ft. */
  readonly us: number;
  /** w sqrt(Q) / (g H)^0.75. */
  readonly dimensionless: number;
}

/** US gallons a minute in 1 m3/s, and feet in a metre: 231 cubic inches, 0.3048 m. */
const GPM = 60 / 0.003785411784;
const FEET = 1 / 0.3048;

/**
 * @param speed  r/min
 * @param flow   m3/h
 * @param head   m
 * @returns      null without flow or head
 * Source: Lobanoff and Ross, Centrifugal Pumps, 2nd ed. 1992, p. 11; factors derived
 */
export function specificSpeed(speed: number, flow: number, head: number): SpecificSpeed | null {
  if (flow <= 0 || head <= 0) return null;
  const root = Math.sqrt(flow / SECONDS_PER_HOUR);
  const nq = (speed * root) / head ** 0.75;
  return {
    nq,
    us: (nq * Math.sqrt(GPM)) / FEET ** 0.75,
    dimensionless: (((2 * Math.PI * speed) / 60) * root) / (GRAVITY * head) ** 0.75,
  };
}
