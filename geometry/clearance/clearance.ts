import type { Clearance } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import type { RunningFace } from './face-residuals.ts';
import { type Gap, runningGap } from './gap.ts';
import { type GapJudgement, judgeGap } from './judge-gap.ts';

/** What a job that asks for its clearance gets. */
export interface ClearanceEstimate extends GapJudgement {
  readonly ask: Clearance;
  readonly gap: Gap;
}

/**
 * The running gap, whether it fits the band, and what would bring it in.
 * @returns null when plate and tips share no radius; `clearanceWarnings` then says so
 */
export function clearanceOf(
  plate: RunningFace,
  tips: readonly RunningFace[],
  ask: Clearance,
): ClearanceEstimate | null {
  const gap = runningGap(plate, tips, ask);
  return gap === null ? null : { ask, gap, ...judgeGap(gap.coated, ask) };
}

export function clearanceWarnings(ask: Clearance, estimate: ClearanceEstimate | null): Warning[] {
  if (estimate === null) {
    const text = `The face of ${ask.plate} and the vane tips of ${ask.impeller} share no radius, so there is no gap to work out. Check their diameters.`;
    return [{ code: 'clearance-apart', field: 'clearance', text }];
  }
  return [];
}
