import { Button } from 'react-aria-components';
import type { BalanceResult, ProposalResult } from '../../../geometry/sheet/balance-result.ts';
import { WAY_WORDS } from '../../../geometry/sheet/balance-words.ts';
import { figure, gauge } from '../../../geometry/sheet/figure.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { useJob } from '../../job/job-store.ts';
import './Proposals.css';

/** Ways of bringing the rotor inside, least work first, each to be taken into the job with one press. */
export function Proposals({ balance }: { readonly balance: BalanceResult }) {
  const edit = useJob((state) => state.edit);
  const { proposals } = balance.correction;
  if (proposals.length === 0) return null;
  const take = ({ way, corrections }: ProposalResult) =>
    edit(
      `take: ${WAY_WORDS[way].toLowerCase()}`,
      (job) =>
        job.rotor === undefined
          ? job
          : {
              ...job,
              rotor: { ...job.rotor, corrections: [...(job.rotor.corrections ?? []), ...corrections] },
            },
      'rotor.corrections',
    );
  return (
    <section className="section" aria-label="Ways to bring it inside">
      <h2>To bring it inside, least work first</h2>
      <ol className="proposals">
        {proposals.map((proposal) => (
          <li key={`${proposal.way} ${proposal.words.join()}`} className="proposal">
            <h3>{WAY_WORDS[proposal.way]}</h3>
            {proposal.words.map((words) => (
              <p key={words}>{typeset(words)}.</p>
            ))}
            <p className="quiet">
              {[
                proposal.removed > 0 ? `${figure(proposal.removed)} g off` : '',
                proposal.added > 0 ? `${figure(proposal.added)} g on` : '',
                proposal.leaves === null ? '' : `leaves ${gauge(proposal.leaves)} mm of wall`,
                `then ${figure(proposal.residual.amount)} g·mm, ${(proposal.ratio * 100).toFixed(0)} % of the limit`,
              ]
                .filter((words) => words !== '')
                .join(', ')}
            </p>
            <Button className="button" onPress={() => take(proposal)}>
              Take this
            </Button>
          </li>
        ))}
      </ol>
    </section>
  );
}
