import { balanceLines } from '../../geometry/sheet/balance-text.ts';
import { typeset } from '../../geometry/sheet/typeset.ts';
import { useJob } from '../job/job-store.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { AskForBalance } from './balance/AskForBalance.tsx';
import { balanceWorkings } from './balance/balance-workings.ts';
import { Corrections } from './balance/Corrections.tsx';
import { PolarPlot } from './balance/PolarPlot.tsx';
import { Proposals } from './balance/Proposals.tsx';
import { PullMap } from './balance/PullMap.tsx';
import { RotorFields } from './balance/RotorFields.tsx';
import { Verdict } from './balance/Verdict.tsx';
import { WorkingOut } from './fill/WorkingOut.tsx';

/** Whether the rotor will shake, why, and what to do about it. */
export function BalancePanel() {
  const result = useEstimate((state) => state.result);
  const job = useEstimate((state) => state.job);
  const isAsked = useJob((state) => state.job.rotor !== undefined);
  if (!isAsked) return <AskForBalance />;
  const balance = result?.balance ?? null;
  if (result === null || balance === null || job?.rotor === undefined)
    return <p className="quiet">Working out the figures</p>;
  return (
    <div className="panel-body">
      <section className="section" aria-label="Verdict">
        <Verdict balance={balance} />
        <PolarPlot balance={balance} />
        <ul className="plain-lines">
          {balanceLines(balance).map((line) => (
            <li key={line}>{typeset(line)}</li>
          ))}
        </ul>
        <WorkingOut of="the balance" workings={balanceWorkings(balance, job.rotor)} />
      </section>
      <Corrections balance={balance} />
      <Proposals balance={balance} />
      <PullMap balance={balance} job={job} density={result.filler.density} />
      <RotorFields />
      <section className="section" aria-label="Take care">
        <h2>Take care</h2>
        <ul className="plain-lines">
          {result.cautions
            .filter(({ code }) => code.startsWith('balance-'))
            .map(({ code, text }) => (
              <li key={code}>{text}</li>
            ))}
        </ul>
      </section>
    </div>
  );
}
