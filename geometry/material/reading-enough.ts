import type { Filler, Repair } from '../job/job.ts';
import type { Density, Mm3 } from '../units.ts';

/** Whether another gauge reading would still change what is ordered. */
export interface ReadingEnough {
  /** How far the order is to be expected to move by the best next reading, 19 times in 20 by less, mm3. */
  readonly moves: Mm3;
  /** From where on that matters: the person's limit, or what the smallest pack holds; null when there is neither. */
  readonly limit: Mm3 | null;
  readonly isEnough: boolean;
}

/**
 * @param moves  one standard deviation of what the best next reading moves the net volume by, mm3
 * Source: what a reading is expected to move an estimate by is what it takes off its variance (preposterior analysis; Raiffa and
 * Schlaifer, Applied Statistical Decision Theory, 1961, from memory); the limit of one pack is our judgement.
 */
export function readingEnough(
  moves: Mm3,
  { packs }: Filler,
  { fillerWaste, readingWorth }: Repair,
  density: Density,
): ReadingEnough {
  const order = 2 * moves * (1 + fillerWaste);
  const sizes = packs.map(({ mass, volume }) => volume ?? (mass ?? 0) / density).filter((size) => size > 0);
  const limit = readingWorth ?? (sizes.length > 0 ? Math.min(...sizes) : null);
  return { moves: order, limit, isEnough: limit !== null && order < limit };
}
