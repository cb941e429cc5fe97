import type { FlowTest } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import { type Acceptance, acceptanceOf } from './acceptance.ts';
import {
  type ComparedRuns,
  type Comparison,
  compare,
  comparedRuns,
  type Recovery,
  recovery,
} from './comparison.ts';
import { flowWarnings } from './flow-warnings.ts';
import { type RunEstimate, runEstimate } from './run-estimate.ts';
import { type Saving, savingOf } from './saving.ts';

/** What was measured on the pump before and after, at rated speed. What can't be had is null, with a sentence why. */
export interface FlowTestEstimate extends Recovery {
  readonly runs: readonly RunEstimate[];
  readonly compared: ComparedRuns;
  readonly comparison: Comparison | null;
  readonly notCompared: string | null;
  readonly saving: Saving | null;
  readonly noSaving: string | null;
  /** null without a guarantee or without a run. */
  readonly acceptance: Acceptance | null;
  readonly warnings: readonly Warning[];
}

/** Every run at rated speed, those before and after against each other, what it saves, and whether the guarantee is kept. */
export function flowTestOf(test: FlowTest): FlowTestEstimate {
  const runs = test.runs.map((run) => runEstimate(run, test));
  const compared = comparedRuns(runs);
  const comparison = compare(runs, compared, test);
  const saving = savingOf(runs, compared, test);
  const judged = compared.after ?? runs.length - 1;
  return {
    runs,
    compared,
    comparison: 'reason' in comparison ? null : comparison,
    notCompared: 'reason' in comparison ? comparison.reason : null,
    ...recovery(runs, compared),
    saving: 'reason' in saving ? null : saving,
    noSaving: 'reason' in saving ? saving.reason : null,
    acceptance:
      test.guarantee === null || judged < 0 ? null : acceptanceOf(runs[judged], judged, test.guarantee),
    warnings: flowWarnings(test, runs, compared),
  };
}
