import { CircleCheck, CircleHelp, TriangleAlert } from 'lucide-react';
import type { FlowTestResult } from '../../../geometry/sheet/flow-result.ts';
import { flowLines } from '../../../geometry/sheet/flow-text.ts';
import { typeset } from '../../../geometry/sheet/typeset.ts';
import './TestVerdict.css';

/** What the runs say of each other, in plain words and with a sign. */
export function TestVerdict({ flowTest }: { readonly flowTest: FlowTestResult }) {
  const { comparison, runs } = flowTest;
  const verdict = comparison?.verdict ?? 'none';
  return (
    <div className="test-verdict" data-verdict={verdict}>
      <p className="test-lead">
        <Sign verdict={verdict} />
        {comparison === null
          ? runs.length === 0
            ? 'No runs yet'
            : 'Not compared yet'
          : LEADS[comparison.verdict]}
      </p>
      <p>{typeset(flowLines(flowTest)[0])}</p>
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
      {flowLines(flowTest)
        .slice(1)
        .map((line) => (
          <li key={line}>{typeset(line)}</li>
        ))}
    </ul>
  );
}
