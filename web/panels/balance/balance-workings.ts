import type { JobFile } from '../../../geometry/job/job-file.ts';
import { measuredRotor } from '../../../geometry/job/measured-rotor.ts';
import type { BalanceResult } from '../../../geometry/sheet/balance-result.ts';
import { balanceBasis } from '../../../geometry/sheet/balance-text.ts';
import type { Working } from '../fill/workings.ts';

/** How the balance was worked out, as on the sheet. */
export function balanceWorkings(balance: BalanceResult, rotor: NonNullable<JobFile['rotor']>): Working[] {
  return balanceBasis(balance, measuredRotor(rotor)).map(({ what, how, source }) => ({
    what,
    rule: how,
    numbers: [],
    source,
  }));
}
