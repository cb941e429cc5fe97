import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { FlowTestFile } from '../../../geometry/job/job-file.ts';
import { NewRun } from './NewRun.tsx';
import { RunFields } from './RunFields.tsx';

/** Every run, folded behind its name, and the one that is added next; with its first point it is a run, and the next point goes to it. */
export function RunList({ test }: { readonly test: FlowTestFile }) {
  const [open, setOpen] = useState<ReadonlySet<number>>(new Set());
  const [fresh, setFresh] = useState<number | null>(null);
  const [isAdding, setAdding] = useState(false);
  const count = test.runs.length;
  const fold = (at: number, isOpen: boolean) => {
    setFresh(null);
    setOpen((before) => new Set(isOpen ? [...before, at] : [...before].filter((other) => other !== at)));
  };
  const added = (isOnePoint: boolean) => {
    fold(count, true);
    setFresh(isOnePoint ? count : null);
    setAdding(false);
  };
  return (
    <section className="section" aria-label="Runs">
      <h2>Runs</h2>
      {test.runs.map((run, i) => (
        <RunFields
          // biome-ignore lint/suspicious/noArrayIndexKey: runs have no name but their place
          key={i}
          run={run}
          at={i}
          isOpen={open.has(i)}
          isFresh={fresh === i}
          onFold={(isOpen) => fold(i, isOpen)}
          onRemoved={() => {
            setFresh(null);
            setOpen(new Set());
          }}
        />
      ))}
      {count === 0 || isAdding ? (
        <NewRun test={test} onAdded={added} />
      ) : (
        <div className="buttons">
          <Button className="button" onPress={() => setAdding(true)}>
            <Plus aria-hidden="true" />
            Add a run
          </Button>
        </div>
      )}
    </section>
  );
}
