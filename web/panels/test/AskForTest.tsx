import { useState } from 'react';
import { Button } from 'react-aria-components';
import { type Fault, faultText } from '../../../geometry/job/fault.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { startingTest } from './test-edits.ts';

/** Before the job has a flow test: the one number it cannot do without. */
export function AskForTest() {
  const edit = useJob((state) => state.edit);
  const [duty, setDuty] = useState<number | null>(null);
  const [problem, setProblem] = useState('');
  const start = () => {
    const faults: readonly Fault[] =
      duty === null
        ? []
        : edit('start a flow test', (job) => ({ ...job, flowTest: startingTest(job, duty) }));
    setProblem(duty === null ? 'Type the duty first.' : faults.map(faultText).join(' '));
  };
  return (
    <div className="panel-body">
      <section className="section">
        <h2>Did it come back?</h2>
        <p>
          Flow, head and power, taken before and after the repair, say what it was worth: the efficiency at
          duty, what is saved in a year, and whether the gauges can tell it at all.
        </p>
        <div className="rows">
          <QuantityField
            label="Duty of the pump"
            quantity="flow"
            path="flowTest.start"
            value={duty}
            min={0.001}
            max={1e6}
            help="The flow it does its work at."
            onCommit={(flow) => {
              setProblem('');
              setDuty(flow);
              return [];
            }}
          />
        </div>
        <div className="buttons">
          <Button className="button button-main" onPress={start}>
            Start a flow test
          </Button>
        </div>
        {/* Below the button: what comes and goes above it would move it away under the finger. */}
        {problem !== '' && (
          <p className="field-faults" role="alert">
            {problem}
          </p>
        )}
      </section>
    </div>
  );
}
