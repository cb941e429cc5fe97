import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { jobStore, useJob } from '../../job/job-store.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { type BreakFile, withBreakAdded, withBreaks } from './plan-edits.ts';
import { WallTimeField } from './WallTimeField.tsx';

const NONE: readonly BreakFile[] = [];

/** When the hands rest, every day. */
export function Breaks() {
  const breaks = useJob((state) => state.job.plan?.breaks) ?? NONE;
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const put = (i: number, change: Partial<BreakFile>, field: string) =>
    edit(
      'a break',
      breaks.map((old, k) => (k === i ? { ...old, ...change } : old)),
      `plan.breaks[${i}].${field}`,
    );
  const list = (label: string, changed: readonly BreakFile[]) => {
    forgetDrafts('plan.breaks');
    setFaults(edit(label, changed));
  };
  return (
    <div className="breaks">
      <h3>Breaks</h3>
      {breaks.length === 0 && <p className="quiet">None. A mix under way waits for nobody.</p>}
      <ol className="break-list">
        {breaks.map(({ at, minutes }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: breaks have no name but their place
          <li key={i} className="break">
            <WallTimeField
              label={`Break ${i + 1} at`}
              kind="time"
              path={`plan.breaks[${i}].at`}
              value={at}
              isNeeded
              onCommit={(time) => put(i, { at: time ?? at }, 'at')}
            />
            <QuantityField
              label={`Break ${i + 1} lasts`}
              quantity="minutes"
              path={`plan.breaks[${i}].minutes`}
              value={minutes}
              step={5}
              onCommit={(length) => put(i, { minutes: length }, 'minutes')}
            />
            <Button
              className="button button-bare break-remove"
              aria-label={`Remove break ${i + 1}`}
              onPress={() =>
                list(
                  'remove a break',
                  breaks.filter((_, k) => k !== i),
                )
              }
            >
              <Trash2 aria-hidden="true" />
            </Button>
          </li>
        ))}
      </ol>
      <div className="buttons">
        <Button className="button" onPress={() => list('add a break', withBreakAdded(breaks))}>
          <Plus aria-hidden="true" />
          Add a break
        </Button>
      </div>
      <Refusal faults={faults} />
    </div>
  );
}

function edit(label: string, breaks: readonly BreakFile[], mergeKey?: string) {
  return jobStore.getState().edit(label, (job) => withBreaks(job, breaks), mergeKey);
}
