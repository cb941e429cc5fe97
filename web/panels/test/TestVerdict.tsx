import { CircleCheck, CircleHelp, TriangleAlert } from 'lucide-react';
import type { FlowTestResult } from '../../../geometry/sheet/flow-result.ts';
import { furtherLines, gainLines } from '../../../geometry/sheet/flow-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import { keptUnits } from '../kept-units.ts';
import '../verdict-lead.css';
import './TestVerdict.css';

/** What the runs say of each other, in plain words and with a sign. */
export function TestVerdict({ flowTest }: { readonly flowTest: FlowTestResult }) {
  const { comparison, runs } = flowTest;
  const verdict = comparison?.verdict ?? 'none';
  const [lead, ...why] = gainLines(flowTest);
  return (
    <div className="test-verdict" data-verdict={verdict}>
      <p className="verdict-lead">
        <Sign verdict={verdict} />
        {comparison === null
          ? runs.length === 0
            ? 'No runs yet'
            : 'Not compared yet'
          : LEADS[comparison.verdict]}
      </p>
      {lead !== undefined && <p>{keptUnits(typeset(lead))}</p>}
      {why.map((line) => (
        <p key={line} className="quiet">
          {keptUnits(typeset(line))}
        </p>
      ))}
    </div>
  );
}

const LEADS = {
  gain: 'It gained efficiency',
  loss: 'It lost efficiency',
  'inside the error': 'Inside the error of measurement',
} as const;

function Sign({ verdict }: { readonly verdict: keyof typeof LEADS | 'none' }) {
  if (verdict === 'gain') return <CircleCheck aria-hidden="true" />;
  return verdict === 'loss' ? <TriangleAlert aria-hidden="true" /> : <CircleHelp aria-hidden="true" />;
}

/** What belongs to it, one sentence each. */
export function TestLines({ flowTest }: { readonly flowTest: FlowTestResult }) {
  if (flowTest.runs.length === 0) return null;
  return (
    <ul className="plain-lines">
      {furtherLines(flowTest).map((line) => (
        <li key={line}>{keptUnits(typeset(line))}</li>
      ))}
    </ul>
  );
}
