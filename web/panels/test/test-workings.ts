import type { FlowTestFile } from '../../../geometry/job/job-file.ts';
import { measuredFlowTest } from '../../../geometry/job/measured-running.ts';
import type { FlowTestResult } from '../../../geometry/sheet/flow-result.ts';
import { flowBasis } from '../../../geometry/sheet/flow-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import type { Working } from '../fill/workings.ts';

/** How the flow test was worked out, as on the sheet; a sum of several steps stands in as many lines. */
export function testWorkings(result: FlowTestResult, test: FlowTestFile): Working[] {
  return flowBasis(result, measuredFlowTest(test)).map(({ what, how, source }) =>
    what === 'Saving'
      ? {
          what,
          rule: 'Saving = power in the liquid × (1 / efficiency before - 1 / efficiency after) / motor × hours × price',
          numbers: how.split('; ').map(typeset),
          source,
        }
      : { what, rule: typeset(how), numbers: [], source },
  );
}
