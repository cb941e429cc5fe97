import type { Region } from '../fill/region.ts';
import type { Clearance, Coat } from '../job/job.ts';
import type { RunningFace } from './face-residuals.ts';
import { findFit, type GapFit } from './find-fit.ts';
import { type Gap, runningGap } from './gap.ts';
import { gapBasis } from './gap-basis.ts';
import { type GapCost, gapCost } from './gap-cost.ts';
import { type GapMap, gapMap } from './gap-map.ts';
import { settingOf } from './gap-setting.ts';
import { type GapJudgement, judgeGap } from './judge-gap.ts';
import { type LeverEffect, levers } from './levers.ts';
import { type RingClearance, ringClearance } from './ring-clearance.ts';

/** What a job that asks for its clearance gets. */
export interface ClearanceEstimate extends GapJudgement {
  readonly ask: Clearance;
  readonly gap: Gap;
  /** What each lever alone would do, least work first. */
  readonly levers: readonly LeverEffect[];
  /** The smallest change that fits; null when none of up to three levers does, and then why. */
  readonly fit: GapFit | null;
  readonly noFit: string | null;
  /** Damage of the two running faces that is left to the coat. */
  readonly left: readonly Region[];
  /** null when the change of the mean gap lies outside what is published. */
  readonly cost: GapCost | null;
  /** At the bore of the plate; null on a plate given by its outline. */
  readonly ring: RingClearance | null;
  readonly map: GapMap;
}

/**
 * The running gap, whether it fits the band, and what would bring it in.
 * @returns null when plate and tips share no radius; `clearanceWarnings` then says so
 */
export function clearanceOf(
  plate: RunningFace,
  tips: readonly RunningFace[],
  ask: Clearance,
  coat: Pick<Coat, 'coats' | 'dryFilm'>,
): ClearanceEstimate | null {
  const basis = gapBasis(plate, tips, coat, ask.dressTips);
  if (basis === null) return null;
  const now = settingOf(ask, coat);
  const gap = runningGap(basis, ask, now);
  const each = levers(basis, ask, now);
  const found = findFit(basis, ask, now, each);
  return {
    ask,
    gap,
    ...judgeGap(gap.coated, ask),
    levers: each,
    fit: 'fit' in found ? found.fit : null,
    noFit: 'fit' in found ? null : found.noFit,
    left: [plate, ...tips].flatMap(({ fill }) => fill.regions.filter(({ action }) => action === 'leave')),
    cost: gapCost(gap.asFound.mean, gap.coated.mean),
    ring: plate.face.picture.kind === 'polar' ? ringClearance(2 * plate.face.grid.u0) : null,
    map: gapMap(basis, ask, now),
  };
}
