import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { clearanceBasis } from '../../../geometry/sheet/clearance-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import type { Working } from '../fill/workings.ts';

/** How the gap was worked out, as on the sheet. */
export function gapWorkings(clearance: ClearanceResult, units: ScreenUnits): Working[] {
  return clearanceBasis(clearance).map(({ what, how, source }) => ({
    what,
    // The sum stays in the units of the job, so that it can be set beside the sheet.
    rule: typeset(units === 'in' && / mm\b/.test(how) ? `In mm: ${how}` : how),
    numbers: [],
    source,
  }));
}
