import type { JobFile } from '../../../geometry/job/job-file.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import type { StepName } from '../../view/view-store.ts';
import { startingRotor } from '../balance/starting-rotor.ts';
import { facingPair } from '../clearance/facing-pair.ts';
import { isGeneric } from '../fill/generic.ts';

/** What stands below the name of a step: what it holds, or what it still needs. */
export interface StepNote {
  readonly text: string;
  readonly isNeed: boolean;
}

/**
 * @param refused  paths of the fields whose text was not taken
 */
export function stepNotes(
  job: JobFile,
  result: Result | null,
  refused: readonly string[],
): Readonly<Record<StepName, StepNote>> {
  const faults = (isOf: (path: string) => boolean): StepNote | null => {
    const count = refused.filter(isOf).length;
    return count === 0 ? null : { text: counted(count, 'fault', 'faults'), isNeed: true };
  };
  const isMark = (path: string) => /^parts\[\d+\]\.wear/.test(path);
  const marks = job.parts.reduce((count, part) => count + part.wear.length, 0);
  const mixes = result?.filler.batches.length ?? 0;
  const warnings = result?.warnings.length ?? 0;
  return {
    part: faults((path) => path.startsWith('parts[') && !isMark(path)) ?? {
      text: counted(job.parts.length, 'part', 'parts'),
      isNeed: false,
    },
    wear:
      faults(isMark) ??
      (marks === 0
        ? { text: 'No marks', isNeed: true }
        : { text: counted(marks, 'mark', 'marks'), isNeed: false }),
    fill:
      faults((path) => /^(filler|coat|repair|service|climate\.surface)\b/.test(path)) ??
      (isGeneric(job.filler) || isGeneric(job.coat)
        ? { text: 'Data sheet', isNeed: true }
        : { text: counted(mixes, 'mix', 'mixes'), isNeed: false }),
    balance: faults((path) => path.startsWith('rotor')) ?? balanceNote(job, result),
    clearance: faults((path) => path.startsWith('clearance')) ?? clearanceNote(job, result),
    test: faults((path) => path.startsWith('flowTest')) ?? testNote(job, result),
    plan: faults((path) => /^(plan|climate|log)\b/.test(path)) ?? planNote(result),
    sheet:
      warnings > 0
        ? { text: counted(warnings, 'warning', 'warnings'), isNeed: true }
        : { text: result === null ? 'Not yet' : 'Ready', isNeed: false },
  };
}

const VERDICTS = { within: 'Within', check: 'Check it', over: 'Over' } as const;

function balanceNote(job: JobFile, result: Result | null): StepNote {
  const verdict = result?.balance?.verdict;
  if (verdict !== undefined) return { text: VERDICTS[verdict], isNeed: verdict !== 'within' };
  if (job.rotor !== undefined) return { text: 'Not yet', isNeed: false };
  return startingRotor(job.parts) === null
    ? { text: 'Nothing turns', isNeed: false }
    : { text: 'No rotor yet', isNeed: true };
}

const GAPS = { fit: 'Fits', tight: 'Tight', wide: 'Wide', both: 'Tight, wide' } as const;

function clearanceNote(job: JobFile, result: Result | null): StepNote {
  const verdict = result?.clearance?.verdict;
  if (verdict !== undefined) return { text: GAPS[verdict], isNeed: verdict !== 'fit' };
  if (job.clearance !== undefined) return { text: 'Not yet', isNeed: false };
  return facingPair(job.parts) === null
    ? { text: 'No pair', isNeed: false }
    : { text: 'No gap yet', isNeed: true };
}

const GAINS = { gain: 'Proven', 'inside the error': 'Not proven', loss: 'Worse' } as const;

function testNote({ flowTest }: JobFile, result: Result | null): StepNote {
  const runs = flowTest?.runs.length ?? 0;
  const known = result?.flowTest;
  if (known?.acceptance?.verdict === 'not met') return { text: 'Not met', isNeed: true };
  const verdict = known?.comparison?.verdict;
  if (runs > 0 && verdict !== undefined) return { text: GAINS[verdict], isNeed: verdict === 'loss' };
  return { text: runs === 0 ? 'No runs' : counted(runs, 'run', 'runs'), isNeed: false };
}

function planNote(result: Result | null): StepNote {
  if (result === null) return { text: 'Not yet', isNeed: false };
  if (result.plan.length === 0) return { text: 'Nothing to do', isNeed: false };
  if (result.climate === null) return { text: 'No weather yet', isNeed: true };
  return result.climate.fit ? { text: 'Fit', isNeed: false } : { text: 'Wait', isNeed: true };
}
