import { Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { counted } from '../../../geometry/sheet/figure.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextInput } from '../../fields/TextInput.tsx';
import { useJob } from '../../job/job-store.ts';
import { DisclosureButton } from '../DisclosureButton.tsx';
import { forgetDrafts } from '../forget-drafts.ts';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { Refusal } from '../Refusal.tsx';
import { PastePoints } from './PastePoints.tsx';
import { PointTable } from './PointTable.tsx';
import { KINDS, kindOf, POWER_AT, type PointFile, type RunFile, withoutRun, withRun } from './test-edits.ts';
import { forgetEntry } from './test-entry.ts';

interface RunFieldsProps {
  readonly run: RunFile;
  readonly at: number;
  readonly isOpen: boolean;
  /** Just added by its first point: the next one is typed at once. */
  readonly isFresh: boolean;
  readonly onFold: (isOpen: boolean) => void;
  readonly onRemoved: () => void;
}

/** One run: when and how it was made, and its points. */
export function RunFields({ run, at, isOpen, isFresh, onFold, onRemoved }: RunFieldsProps) {
  const edit = useJob((state) => state.edit);
  const density = useJob(({ job }) => job.flowTest?.density ?? 998);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const path = `flowTest.runs[${at}]`;
  const put = (label: string, change: (run: RunFile) => RunFile, field: string) =>
    edit(label, (job) => withRun(job, at, change), `${path}.${field}`);
  const putPoints = (label: string, points: readonly PointFile[], field?: string) =>
    edit(label, (job) => withRun(job, at, (old) => ({ ...old, points: [...points] })), field);
  const kind = kindOf(run.when);
  const kindWords = KINDS.find(({ value }) => value === kind && kind !== 'other')?.label ?? run.when;
  const remove = () => {
    forgetDrafts('flowTest.runs');
    forgetEntry();
    const refused = edit('remove a run', (job) => withoutRun(job, at));
    setFaults(refused);
    if (refused.length === 0) onRemoved();
  };
  return (
    <Disclosure className="disclosure" isExpanded={isOpen} onExpandedChange={onFold}>
      <Heading level={3}>
        <DisclosureButton>
          {run.label || `Run ${at + 1}`}
          <span className="quiet run-note">
            {[...saidOnce(kindWords, run.label), counted(run.points.length, 'point', 'points')].join(', ')}
          </span>
        </DisclosureButton>
      </Heading>
      <DisclosurePanel className="disclosure-panel run-panel">
        <TextInput
          label={`Name of run ${at + 1}`}
          path={`${path}.label`}
          value={run.label ?? ''}
          onCommit={(label) =>
            put(
              'name of a run',
              ({ label: _, ...old }) => (label.trim() === '' ? old : { ...old, label: label.trim() }),
              'label',
            )
          }
        />
        <ChoiceField
          label={`When run ${at + 1} was made`}
          value={kind}
          choices={KINDS}
          onCommit={(when) => put('when a run was made', (old) => ({ ...old, when }), 'when')}
        />
        <div className="rows">
          <QuantityField
            label={`Speed in run ${at + 1}`}
            quantity="speed"
            path={`${path}.speed`}
            value={run.speed}
            onCommit={(speed) => put('speed of a run', (old) => ({ ...old, speed }), 'speed')}
          />
        </div>
        <ChoiceField
          label={`Power in run ${at + 1} is that`}
          value={run.powerAt ?? 'shaft'}
          choices={POWER_AT}
          onCommit={(powerAt) => put('where power was taken', (old) => ({ ...old, powerAt }), 'powerAt')}
        />
        <div className="rows">
          <OptionalQuantity
            label={`Density in run ${at + 1}`}
            known="It ran with another liquid"
            quantity="liquidDensity"
            path={`${path}.density`}
            value={run.density}
            start={density}
            onCommit={(own) =>
              put(
                'density in a run',
                ({ density: _, ...old }) => (own === undefined ? old : { ...old, density: own }),
                'density',
              )
            }
          />
        </div>
        <PointTable
          path={path}
          name={`run ${at + 1}`}
          points={run.points}
          isFresh={isFresh}
          onChange={putPoints}
        />
        <PastePoints
          path={path}
          name={`run ${at + 1}`}
          held={run.points.length}
          onTake={(points) => putPoints('paste points', [...run.points, ...points])}
        />
        <div className="buttons">
          <Button className="button" onPress={remove}>
            <Trash2 aria-hidden="true" />
            Remove run {at + 1}
          </Button>
        </div>
        <Refusal faults={faults} />
      </DisclosurePanel>
    </Disclosure>
  );
}

/** Nothing of a kind that the name of the run says already. */
const saidOnce = (kind: string, name = ''): readonly string[] =>
  name.trim().toLowerCase() === kind.toLowerCase() ? [] : [kind];
