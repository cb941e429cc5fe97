import type { FlowTest } from '../job/job.ts';
import { type ComparedRuns, ownErrors } from './comparison.ts';
import { hydraulicPower } from './pump-power.ts';
import type { RunEstimate } from './run-estimate.ts';

/** What the better efficiency saves at duty; negative when it costs. `…Error`: to either side, 95 of 100. */
export interface Saving {
  /** kW, of the liquid after the repair. */
  readonly hydraulic: number;
  /** kW, at the meter, or at the shaft when the motor's efficiency is not known. */
  readonly before: number;
  readonly after: number;
  readonly power: number;
  readonly powerError: number;
  /** kWh a year; null without hours. */
  readonly energy: number | null;
  readonly energyError: number | null;
  /** A year; null without hours or price. */
  readonly money: number | null;
  readonly moneyError: number | null;
  readonly isShaftOnly: boolean;
}

/**
 * The same hydraulic power, that of the run after the repair at duty, taken at both efficiencies: P = rho g Q H (1/before - 1/after) / motor.
 * @returns  or the reason, a sentence, why none can be worked out
 * Source: definition of efficiency; tests/geometry/flow-test/saving.test.ts
 */
export function savingOf(
  runs: readonly RunEstimate[],
  compared: ComparedRuns,
  test: FlowTest,
): Saving | { readonly reason: string } {
  const { before: beforeAt, after: afterAt } = compared;
  if (beforeAt === null || afterAt === null)
    return { reason: 'A saving needs a run as found and one after the repair.' };
  const [before, after] = [runs[beforeAt], runs[afterAt]];
  const [from, to] = [before.atDuty?.efficiency ?? null, after.atDuty?.efficiency ?? null];
  if (before.of !== after.of || after.atDuty === null || !from || !to)
    return { reason: 'A saving needs both efficiencies at duty, of the same thing and above 0.' };

  // The efficiency of a set has the motor in it.
  const motor = after.of === 'set' ? 1 : (test.motorEfficiency ?? 1);
  const hydraulic = hydraulicPower(test.density, test.duty, after.atDuty.head);
  const [takenBefore, takenAfter] = [hydraulic / from / motor, hydraulic / to / motor];
  const [ownBefore, ownAfter] = ownErrors(before, after, test);
  const power = takenBefore - takenAfter;
  const powerError = Math.hypot(takenBefore * ownBefore, takenAfter * ownAfter);
  const { hoursPerYear: hours, energyPrice: price } = test;
  const energy = hours === null ? null : power * hours;
  const energyError = hours === null ? null : powerError * hours;
  return {
    hydraulic,
    before: takenBefore,
    after: takenAfter,
    power,
    powerError,
    energy,
    energyError,
    money: energy === null || price === null ? null : energy * price,
    moneyError: energyError === null || price === null ? null : energyError * price,
    isShaftOnly: after.of === 'pump' && test.motorEfficiency === null,
  };
}
