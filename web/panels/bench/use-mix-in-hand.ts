import { GENERIC_COAT, GENERIC_FILLER } from '../../../geometry/job/defaults.ts';
import type { Fault } from '../../../geometry/job/fault.ts';
import { type BenchResult, mixName, mixOf, mixWords } from '../../bench/bench-plan.ts';
import { type MixNotes, noteItem } from '../../bench/step-log.ts';
import { type WeighedMix, type WeighTarget, weighTarget } from '../../bench/weigh-target.ts';
import { draftOf, putDownWeighed } from '../../bench/weighed-draft.ts';
import { jobStore, useJob } from '../../job/job-store.ts';

/** The mix of the step in hand: what to weigh for it, what was put down of it, and the way to put more down. */
export interface MixInHand {
  readonly step: string;
  readonly weighed: WeighedMix;
  readonly notes: MixNotes;
  readonly target: WeighTarget;
  /** @param what  to stand behind "Undo": "grams of A" */
  put(what: string, change: MixNotes): readonly Fault[];
}

/**
 * @param place  of the running entry in the log; null before it is begun: then it is kept beside the job
 * @returns      null when the step mixes nothing
 */
export function useMixInHand(
  result: BenchResult,
  step: string,
  notes: MixNotes,
  place: number | null,
): MixInHand | null {
  const job = useJob((state) => state.job);
  const name = mixName(step);
  const mix = mixOf(result, step);
  if (name === null || mix === null) return null;
  const isFill = name.material === 'fill';
  const sheet = isFill ? (job.filler ?? GENERIC_FILLER) : (job.coat ?? GENERIC_COAT);
  const weighed: WeighedMix = {
    mix,
    selfMixing: isFill ? result.filler.selfMixing : result.coat.selfMixing,
    hasDensities: sheet.densityA !== undefined && sheet.densityB !== undefined,
    step: sheet.scaleStep ?? USUAL_STEP,
  };
  return {
    step,
    weighed,
    notes,
    target: weighTarget(weighed, notes.massA, notes.massB),
    put(what, change) {
      if (place === null) {
        putDownWeighed(draftOf(job.title, step), change);
        return [];
      }
      const label = `${what} of ${mixWords(result, name)}`;
      return jobStore
        .getState()
        .edit(label, (before) => noteItem(before, place, change), `bench.${step}.${what}`);
    },
  };
}

/** Of a kitchen scale, g: what the estimate takes too when the data sheet's fields say nothing. */
const USUAL_STEP = 1;
