import type { ClearanceEstimate } from '../clearance/clearance.ts';
import type { GapSpread } from '../clearance/gap.ts';
import type { GapTolerance, GapVerdict } from '../clearance/judge-gap.ts';

/** The running gap in the file's units, mm. */
export interface ClearanceResult {
  readonly asFound: GapSpread;
  readonly filled: GapSpread;
  readonly coated: GapSpread;
  readonly byRadius: readonly {
    readonly radius: number;
    readonly asFound: GapSpread;
    readonly filled: GapSpread;
    readonly coated: GapSpread;
  }[];
  readonly verdict: GapVerdict;
  readonly tolerance: GapTolerance;
  /** The verdict with the root-sum-square tolerance. */
  readonly likely: GapVerdict;
}

export function clearanceResult({ gap, verdict, likely, tolerance }: ClearanceEstimate): ClearanceResult {
  return {
    asFound: gap.asFound,
    filled: gap.filled,
    coated: gap.coated,
    byRadius: gap.byRadius.map(({ radius, asFound, filled, coated }) => ({
      radius,
      asFound,
      filled,
      coated,
    })),
    verdict,
    tolerance,
    likely,
  };
}
