import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { clearanceBasis } from '../../../geometry/sheet/clearance-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import type { Working } from '../fill/workings.ts';

/** How the gap was worked out, as on the sheet. */
export function gapWorkings(clearance: ClearanceResult): Working[] {
  return clearanceBasis(clearance).map(({ what, how, source }) => ({
    what,
    rule: typeset(how),
    numbers: [],
    source,
  }));
}
