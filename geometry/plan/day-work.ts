import type { CoatNeed } from '../material/coat.ts';
import type { FillerNeed } from '../material/filler.ts';
import type { Minute } from '../units.ts';

/** What the day has to hold. */
export interface DayWork {
  /**
   * In the job's order. `tips`: it has vanes whose tips are squared when they are dressed.
   * `coated`: the coat goes on it; left out, it does wherever there is a coat.
   */
  readonly parts: readonly { readonly id: string; readonly tips: boolean; readonly coated?: boolean }[];
  readonly filler: FillerNeed;
  /** Of the filler and of the coat, min; null when the data sheet names none. */
  readonly mixTime: Minute | null;
  readonly coatMixTime: Minute | null;
  readonly coat: CoatNeed;
}
