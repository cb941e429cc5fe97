import type { History } from '../job/job.ts';
import { type PartWearRate, type PresentWear, wearRates } from './wear-rate.ts';
import { type Due, type RepairedGap, type RepairedPart, whenDue } from './when-due.ts';

/** How fast the parts wear, and when they want looking after again. */
export interface ServiceLife {
  readonly rates: readonly PartWearRate[];
  readonly due: readonly Due[];
}

/** @returns null when the job tells neither hours nor earlier repairs */
export function serviceLife(
  history: History,
  present: readonly PresentWear[],
  parts: readonly RepairedPart[],
  gap: RepairedGap | null,
): ServiceLife | null {
  if (history.hours === null && history.repairs.length === 0) return null;
  const rates = wearRates(history, present);
  return { rates, due: whenDue(parts, rates, gap) };
}
