import type { ClearanceEstimate } from '../clearance/clearance.ts';
import type { GapFit } from '../clearance/find-fit.ts';
import type { GapPlace, GapSpread, GapStates } from '../clearance/gap.ts';
import type { GapCost } from '../clearance/gap-cost.ts';
import type { GapMap } from '../clearance/gap-map.ts';
import type { GapTolerance, GapVerdict } from '../clearance/judge-gap.ts';
import type { LeverEffect } from '../clearance/levers.ts';
import type { RingClearance } from '../clearance/ring-clearance.ts';
import type { Clearance } from '../job/job.ts';
import type { FacePoint } from '../units.ts';

/** The running gap in the file's units: mm, angles in deg in [0, 360). Below 0 the parts meet. */
export interface ClearanceResult {
  readonly asFound: GapSpread;
  readonly filled: GapSpread;
  readonly coated: GapSpread;
  /** From the shaft outwards; `opening`: how much further than at the closest the parts stand apart by their drawings. */
  readonly byRadius: readonly (GapStates & { readonly radius: number; readonly opening: number })[];
  /** Over each vane alone, by name of its tip. */
  readonly byVane: readonly (GapStates & { readonly tip: string })[];
  /** With the worst case of the tolerances. */
  readonly verdict: GapVerdict;
  /** The verdict with the root-sum-square tolerance. */
  readonly likely: GapVerdict;
  /** Each to either side, and what they come to together. */
  readonly tolerance: Clearance['tolerances'] & GapTolerance;
  readonly band: { readonly least: number; readonly most: number };
  readonly asNew: number;
  readonly shim: number;
  readonly dressTips: number;
  /** Thickness of all coats together; on the tips the thickest. */
  readonly films: { readonly plate: number; readonly tips: number };
  /** How much further apart the parts stand somewhere than at the closest by their drawings. */
  readonly mismatch: number;
  /** The radii that plate and tips share. */
  readonly overlap: { readonly from: number; readonly to: number };
  /** Of the coated gap; `plate` and `on` in the coordinates of the face. */
  readonly tightest: GapPlace;
  readonly widest: GapPlace;
  /** What each lever alone would do, least work first. */
  readonly levers: readonly LeverEffect[];
  /** The smallest change that fits, no levers when it fits as it is; null when none does. */
  readonly fit: GapFit | null;
  /** Why none does. */
  readonly noFit: string | null;
  /** Damage of the running faces that is left to the coat: where a lever would fill it. */
  readonly left: readonly { readonly at: string; readonly point: FacePoint }[];
  /** What the change of the mean gap may be worth at the most; null outside the published range. */
  readonly cost: GapCost | null;
  /** Radial clearance of wear rings at the bore of the plate, for reference. */
  readonly ring: RingClearance | null;
  readonly map: GapMap;
}

/** @param pointOn  a point of a face in the file's units */
export function clearanceResult(
  { ask, gap, verdict, likely, tolerance, levers, fit, noFit, left, cost, ring, map }: ClearanceEstimate,
  pointOn: (part: string, face: string, at: FacePoint) => FacePoint,
): ClearanceResult {
  const place = (at: GapPlace): GapPlace => ({
    ...at,
    plate: pointOn(ask.plate, 'face', at.plate),
    on: pointOn(ask.impeller, at.tip, at.on),
  });
  return {
    asFound: gap.asFound,
    filled: gap.filled,
    coated: gap.coated,
    byRadius: gap.byRadius,
    byVane: gap.byVane,
    verdict,
    likely,
    tolerance: { ...ask.tolerances, ...tolerance },
    band: { least: ask.least, most: ask.most },
    asNew: ask.asNew,
    shim: ask.shim,
    dressTips: ask.dressTips,
    films: gap.films,
    mismatch: gap.mismatch,
    overlap: { from: gap.from, to: gap.to },
    tightest: place(gap.tightest),
    widest: place(gap.widest),
    levers,
    fit,
    noFit,
    left: left.map(({ part, face, at }) => ({ at: `${part}:${face}`, point: pointOn(part, face, at) })),
    cost,
    ring,
    map: {
      radii: map.radii,
      sectors: map.sectors,
      asFound: rounded(map.asFound),
      filled: rounded(map.filled),
      coated: rounded(map.coated),
    },
  };
}

/** A picture needs no more, and a file of thousands of figures stays readable. Thousandths of a mm. */
function rounded(rings: GapMap['coated']): GapMap['coated'] {
  return rings.map((ring) => ring.map((gap) => (gap === null ? null : Math.round(gap * 1000) / 1000)));
}
