import type { Clearance } from '../job/job.ts';
import type { Mm } from '../units.ts';
import type { GapSpread } from './gap.ts';

export type GapVerdict = 'fit' | 'tight' | 'wide' | 'both';

/** How far the gap may be off from what was worked out, to either side. */
export interface GapTolerance {
  /** All of them one way at once. */
  readonly worstCase: Mm;
  /** Root of the sum of squares: what they come to when each goes its own way. */
  readonly rootSumSquare: Mm;
}

export interface GapJudgement {
  readonly tolerance: GapTolerance;
  /** With the worst case. */
  readonly verdict: GapVerdict;
  /** With the root of the sum of squares: never a harder one. */
  readonly likely: GapVerdict;
}

/** Far less than a feeler gauge shows, more than depths lose in a map, mm: a gap that is on its limit keeps it. */
const EVEN: Mm = 1e-5;

/**
 * Whether a coated gap stays within the band whatever the tolerances do.
 * Source: job format, "Clearance"; stacking of tolerances common practice; tests/geometry/clearance/judge-gap.test.ts
 */
export function judgeGap(
  coated: GapSpread,
  ask: Pick<Clearance, 'least' | 'most' | 'tolerances'>,
): GapJudgement {
  const each = Object.values(ask.tolerances);
  const tolerance = {
    worstCase: each.reduce((sum, one) => sum + one, 0),
    rootSumSquare: Math.hypot(...each),
  };
  return {
    tolerance,
    verdict: verdictOf(coated, ask, tolerance.worstCase),
    likely: verdictOf(coated, ask, tolerance.rootSumSquare),
  };
}

function verdictOf(
  coated: GapSpread,
  { least, most }: Pick<Clearance, 'least' | 'most'>,
  tolerance: Mm,
): GapVerdict {
  const isTight = coated.least - tolerance < least - EVEN;
  const isWide = coated.most + tolerance > most + EVEN;
  return isTight && isWide ? 'both' : isTight ? 'tight' : isWide ? 'wide' : 'fit';
}
