import { CircleCheck, TriangleAlert } from 'lucide-react';
import type { BalanceResult } from '../../../geometry/sheet/balance-result.ts';
import { balanceHeadline } from '../../../geometry/sheet/balance-text.ts';
import { figure } from '../../../geometry/sheet/figure.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import '../verdict-lead.css';
import './Verdict.css';

const WORDS = { within: 'Within the limit', check: 'Check it', over: 'Over the limit' } as const;

/** The verdict in words, with its sign, and the figure it rests on. */
export function Verdict({ balance }: { readonly balance: BalanceResult }) {
  const { verdict, net, permissible } = balance;
  const [force] = balanceHeadline(balance).notes;
  return (
    <div className="verdict" data-verdict={verdict}>
      <p className="verdict-lead">
        {verdict === 'within' ? <CircleCheck aria-hidden="true" /> : <TriangleAlert aria-hidden="true" />}
        {WORDS[verdict]}
      </p>
      <p>
        {figure(net.amount)} g·mm at {Math.round(net.angle) % 360}°, {figure(permissible)} permitted.
      </p>
      <p className="quiet">It {typeset(force)}.</p>
    </div>
  );
}
