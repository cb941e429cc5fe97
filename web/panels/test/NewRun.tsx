import type { FlowTestFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { PastePoints } from './PastePoints.tsx';
import { PointTable } from './PointTable.tsx';
import { KINDS, nextKind, POWER_AT, type PointFile, withRunAdded } from './test-edits.ts';
import { forgetEntry, setNewRun, useTestEntry } from './test-entry.ts';

/** Where what is typed for it is kept: it is in the job with its first point. */
const PATH = 'flowTest.newRun';

interface NewRunProps {
  readonly test: FlowTestFile;
  /** Said when it is in the job, by one typed point or by a table. */
  readonly onAdded: (isOnePoint: boolean) => void;
}

/** A run on its way into the job. */
export function NewRun({ test, onAdded }: NewRunProps) {
  const edit = useJob((state) => state.edit);
  const chosen = useTestEntry((entry) => entry.kind);
  const typedSpeed = useTestEntry((entry) => entry.speed);
  const typedPowerAt = useTestEntry((entry) => entry.powerAt);
  const kind = chosen ?? nextKind(test.runs);
  const speed = typedSpeed ?? test.ratedSpeed;
  const powerAt = typedPowerAt ?? test.runs.at(-1)?.powerAt ?? 'shaft';
  const add = (points: readonly PointFile[], isTyped: boolean) => {
    const faults = edit('add a run', (job) =>
      withRunAdded(job, { when: kind, speed, powerAt, points: [...points] }),
    );
    if (faults.length === 0) {
      forgetDrafts(PATH);
      forgetEntry();
      onAdded(isTyped);
    }
    return faults;
  };
  return (
    <div className="run-panel new-run">
      <h3>{test.runs.length === 0 ? 'First run' : 'Next run'}</h3>
      <ChoiceField
        label="When it was made"
        value={kind}
        choices={KINDS}
        onCommit={(when) => {
          setNewRun({ kind: when });
          return [];
        }}
      />
      <div className="rows">
        <QuantityField
          label="Speed in this run"
          quantity="speed"
          path={`${PATH}.speed`}
          value={speed}
          min={1}
          max={100_000}
          help="As measured; it is brought to rated speed."
          onCommit={(measured) => {
            setNewRun({ speed: measured });
            return [];
          }}
        />
      </div>
      <ChoiceField
        label="Power is that"
        value={powerAt}
        choices={POWER_AT}
        onCommit={(place) => {
          setNewRun({ powerAt: place });
          return [];
        }}
      />
      <PointTable path={PATH} name="the next run" points={[]} onChange={(_, points) => add(points, true)} />
      <PastePoints path={PATH} name="the next run" held={0} onTake={(points) => add(points, false)} />
    </div>
  );
}
