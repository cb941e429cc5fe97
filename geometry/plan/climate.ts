import type { Climate, Coat, Filler } from '../job/job.ts';
import { minutesBetween } from '../job/shop-clock.ts';
import type { Warning } from '../job/warning.ts';
import type { Celsius, Fraction, LocalTime, Minute } from '../units.ts';

/** Whether the materials may go on in this weather. */
export interface ClimateVerdict {
  readonly dewPoint: Celsius;
  /** Surface of the part less the dew point. */
  readonly margin: Celsius;
  readonly fit: boolean;
  /** Why not; empty when it is fit. */
  readonly reasons: readonly string[];
  /** What to change, one way each; empty when it is fit. */
  readonly changes: readonly string[];
}

/** Water over liquid, WMO Guide No. 8, Annex 4.B. */
const MAGNUS_B = 17.62;
const MAGNUS_C: Celsius = 243.12;
/** ISO 8502-4 and ISO 12944-7 (from memory). */
export const LEAST_MARGIN: Celsius = 3;
/** ISO 12944-7 (from memory); with the margin it binds only when the part is warmer than the air. */
export const MOST_HUMIDITY: Fraction = 0.85;
/** The margin at the limit is enough: what a rounding takes from it does not count. */
const DUST = 1e-9;

/**
 * Dew point by the Magnus formula with the coefficients of the WMO, over water.
 * @param humidity  relative, above 0; 1 = saturated
 * Accuracy: within 0.05 degC of reference formulations from 0 to 50 degC and 20 to 100 %; a hygrometer's 3 % are worth 0.7 degC.
 * Source: WMO Guide No. 8, Annex 4.B; tests/geometry/plan/climate.test.ts
 */
export function dewPointOf(air: Celsius, humidity: Fraction): Celsius {
  const g = Math.log(humidity) + (MAGNUS_B * air) / (MAGNUS_C + air);
  return (MAGNUS_C * g) / (MAGNUS_B - g);
}

/** The relative humidity at which air of a temperature has a dew point: the inverse of `dewPointOf`. */
export function humidityFor(air: Celsius, dewPoint: Celsius): Fraction {
  return Math.exp((MAGNUS_B * dewPoint) / (MAGNUS_C + dewPoint) - (MAGNUS_B * air) / (MAGNUS_C + air));
}

/**
 * Go or wait: the part at least 3 degC above the dew point, no more than 85 % of humidity, and the part as warm as both materials want it.
 * @param used  the materials that go on, each with the name it is to be called by
 * @returns null when air, humidity and surface are not all known, or the air holds no water: see `climateWarnings`
 */
export function judgeClimate(
  climate: Climate | null,
  used: readonly { readonly what: string; readonly material: Filler | Coat }[],
): ClimateVerdict | null {
  if (climate === null) return null;
  const { air, surface, humidity } = climate;
  if (air === null || surface === null || humidity === null || humidity === 0) return null;
  const dewPoint = dewPointOf(air, humidity);
  const margin = surface - dewPoint;
  const reasons: string[] = [];
  const changes: string[] = [];
  if (margin < LEAST_MARGIN - DUST) {
    reasons.push(
      margin < 0
        ? `the part at ${degrees(surface)} is ${tenth(-margin)} degC below the dew point of ${degrees(dewPoint)}, so water stands on it`
        : `the part at ${degrees(surface)} is only ${tenth(margin)} degC above the dew point of ${degrees(dewPoint)}; at least ${LEAST_MARGIN} degC are wanted`,
    );
    const dry = humidityFor(air, surface - LEAST_MARGIN);
    changes.push(`Warm the part to ${degrees(up(dewPoint + LEAST_MARGIN))} or more, through and through.`);
    if (dry >= 0.2) {
      changes.push(`Or dry the air to ${Math.floor(dry * 100)} % or less at the same ${degrees(air)}.`);
    }
  }
  if (humidity > MOST_HUMIDITY + DUST) {
    reasons.push(`the humidity of ${percent(humidity)} is over ${percent(MOST_HUMIDITY)}`);
    changes.push(`Dry the air to ${percent(MOST_HUMIDITY)} or less, or wait.`);
  }
  for (const { what, material } of used) {
    if (material.surfaceRange === null) continue;
    const [from, to] = material.surfaceRange;
    if (surface < from - DUST) {
      reasons.push(`the part at ${degrees(surface)} is colder than the ${what} takes, ${degrees(from)}`);
      changes.push(`Warm the part to ${degrees(from)} or more for the ${what}.`);
    }
    if (surface > to + DUST) {
      reasons.push(`the part at ${degrees(surface)} is warmer than the ${what} takes, ${degrees(to)}`);
      changes.push(`Let the part cool to ${degrees(to)} or less for the ${what}.`);
    }
  }
  return { dewPoint, margin, fit: reasons.length === 0, reasons, changes };
}

/** Readings of the weather hold for so long (common practice). */
export const READINGS_HOLD: Minute = 4 * 60;

/**
 * Weather that is not fit, readings that are old when the work begins, and readings that do not make a dew point.
 * @param start  when the work begins; null when the job does not say
 */
export function climateWarnings(
  climate: Climate | null,
  verdict: ClimateVerdict | null,
  start: LocalTime | null,
): Warning[] {
  return [...unfitWarnings(climate, verdict), ...staleWarning(climate, start)];
}

function staleWarning(climate: Climate | null, start: LocalTime | null): Warning[] {
  const takenAt = climate?.takenAt ?? null;
  if (takenAt === null || start === null) return [];
  const age = minutesBetween(takenAt, start);
  if (age <= READINGS_HOLD) return [];
  const text = `Air, part and humidity were read ${Math.floor(age / 60)} h before the work begins. Read them again, and once more before each coat.`;
  return [{ code: 'climate-stale', field: 'climate.takenAt', text }];
}

function unfitWarnings(climate: Climate | null, verdict: ClimateVerdict | null): Warning[] {
  if (verdict !== null) {
    if (verdict.fit) return [];
    const text = `Nothing goes on in this weather: ${verdict.reasons.join('; ')}. ${verdict.changes.join(' ')}`;
    return [{ code: 'climate-unfit', field: 'climate', text }];
  }
  if (climate === null || (climate.air === null && climate.humidity === null)) return [];
  if (climate.humidity === 0) {
    const text = 'Air of 0 % humidity has no dew point. Read the hygrometer again.';
    return [{ code: 'climate-dry', field: 'climate.humidity', text }];
  }
  const missing = (['air', 'surface', 'humidity'] as const).find((name) => climate[name] === null);
  if (missing === undefined) return [];
  const names = {
    air: 'the temperature of the air',
    surface: 'the temperature of the part',
    humidity: 'the humidity',
  };
  const text = `Whether the weather is fit cannot be said without ${names[missing]}.`;
  return [{ code: 'climate-incomplete', field: `climate.${missing}`, text }];
}

const tenth = (value: number): string => String(Number(value.toFixed(1)));
const degrees = (value: Celsius): string => `${tenth(value)} degC`;
const percent = (share: Fraction): string => `${tenth(share * 100)} %`;
/** Rounded up to the tenth that is shown, so that what is shown is enough. */
const up = (value: Celsius): Celsius => Math.ceil(value * 10 - 1e-6) / 10;
