import type { Minute, Mm3 } from '../units.ts';
import type { FillRun } from './filler.ts';
import { type Mix, type Portion, portionsOf } from './mix.ts';
import { type Cover, shareOut } from './share-out.ts';

/** One mix: what goes into the bowl and where it goes on the part. */
export interface Batch {
  readonly number: number;
  readonly volume: Mm3;
  readonly partA: Portion;
  readonly partB: Portion;
  /** From the start of mixing until the last of it must be in place: the working time at the surface temperature. */
  readonly minutes: Minute;
  readonly covers: readonly Cover[];
}

/** The need may pass a whole number of largest batches by this share before another is mixed: float dust only. */
const DUST = 1e-9;
/** More mixes than anyone would make or read; then none are listed and the estimate warns. */
export const MOST_BATCHES = 2000;

/** How many equal batches of at most `largest` mm3 make up `volume` mm3. */
export function batchCount(volume: Mm3, largest: Mm3): number {
  return volume > 0 ? Math.max(1, Math.ceil((volume / largest) * (1 - DUST))) : 0;
}

/**
 * Equal batches, none larger than `largest` mm3, and the stretches of the part each is for: parts, then faces, then along the face.
 * @returns empty when there is nothing to mix, or more than MOST_BATCHES would be needed
 */
export function equalBatches(
  volume: Mm3,
  largest: Mm3,
  minutes: Minute,
  mix: Mix,
  runs: readonly FillRun[],
): Batch[] {
  const count = batchCount(volume, largest);
  if (count > MOST_BATCHES) return [];
  const each = volume / count;
  return shareOut(runs, count).map((covers, i) => ({
    number: i + 1,
    volume: each,
    ...portionsOf(mix, each),
    minutes,
    covers,
  }));
}
