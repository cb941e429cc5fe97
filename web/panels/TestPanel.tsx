import { useJob } from '../job/job-store.ts';
import { useEstimate } from '../worker/estimate-client.ts';
import { Warnings } from './fill/Warnings.tsx';
import { WorkingOut } from './fill/WorkingOut.tsx';
import { AskForTest } from './test/AskForTest.tsx';
import { FlowCurves } from './test/FlowCurves.tsx';
import { GuaranteeFields } from './test/GuaranteeFields.tsx';
import { RunList } from './test/RunList.tsx';
import { TestFields } from './test/TestFields.tsx';
import { TestTables } from './test/TestTables.tsx';
import { TestLines, TestVerdict } from './test/TestVerdict.tsx';
import { testWorkings } from './test/test-workings.ts';
import { Worth } from './test/Worth.tsx';
import './fill/Needed.css';
import './balance/Verdict.css';
import './panel.css';

/** Whether the pump came back: what was measured before and after the repair, and what it is worth. */
export function TestPanel() {
  const test = useJob((state) => state.job.flowTest);
  const result = useEstimate((state) => state.result);
  const worked = useEstimate((state) => state.job?.flowTest);
  if (test === undefined) return <AskForTest />;
  const flowTest = result?.flowTest ?? null;
  const warnings = result?.warnings.filter(({ code }) => code.startsWith('flow-')) ?? [];
  return (
    <div className="panel-body">
      <section className="section" aria-label="Verdict">
        {flowTest === null || worked === undefined ? (
          <p className="quiet">Working out the figures</p>
        ) : (
          <>
            <TestVerdict flowTest={flowTest} />
            <Worth flowTest={flowTest} />
            <FlowCurves flowTest={flowTest} />
            <TestTables flowTest={flowTest} />
            <TestLines flowTest={flowTest} />
            {flowTest.runs.length > 0 && (
              <WorkingOut of="the flow test" workings={testWorkings(flowTest, worked)} />
            )}
          </>
        )}
      </section>
      <Warnings warnings={warnings} />
      <RunList test={test} />
      <TestFields test={test} />
      <GuaranteeFields test={test} />
      <section className="section" aria-label="Take care">
        <h2>Take care</h2>
        <ul className="plain-lines">
          {result?.cautions
            .filter(({ code }) => code === 'restart')
            .map(({ code, text, source }) => (
              <li key={code}>
                {text} <span className="quiet">{source}</span>
              </li>
            ))}
        </ul>
      </section>
    </div>
  );
}
