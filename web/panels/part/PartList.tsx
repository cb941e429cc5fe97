import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { MOST_PARTS, type PartFile } from '../../../geometry/job/job-file.ts';
import { TextInput } from '../../fields/TextInput.tsx';
import { useJob } from '../../job/job-store.ts';
import { choosePart, useChosenPart } from '../chosen-part.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { withNewPart, withoutPart, withPartRenamed } from './part-edits.ts';

const KINDS = [
  { kind: 'wear-plate', label: 'Add a plate' },
  { kind: 'impeller', label: 'Add an impeller' },
] as const;

/** Which parts the job has: the chosen one's name, one more, one less. */
export function PartList() {
  const { part, index } = useChosenPart();
  const parts = useJob((state) => state.job.parts);
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const add = (kind: PartFile['kind'], label: string) => {
    let added = '';
    const refused = edit(label, (job) => {
      const { job: grown, id } = withNewPart(job, kind);
      added = id;
      return grown;
    });
    setFaults(refused);
    if (refused.length === 0) choosePart(added);
  };
  const remove = () => {
    forgetDrafts('parts[');
    setFaults(edit(`remove ${part.id}`, (job) => withoutPart(job, index)));
  };
  const rename = (id: string) => {
    const refused = edit('name of the part', (job) => withPartRenamed(job, index, id.trim()));
    if (refused.length === 0) choosePart(id.trim());
    return refused;
  };
  return (
    <section className="section">
      <h2>{parts.length > 1 ? 'This part' : 'Parts'}</h2>
      <TextInput label="Name of the part" path={`parts[${index}].id`} value={part.id} onCommit={rename} />
      <div className="buttons">
        {parts.length < MOST_PARTS &&
          KINDS.map(({ kind, label }) => (
            <Button key={kind} className="button" onPress={() => add(kind, label.toLowerCase())}>
              <Plus aria-hidden="true" />
              {label}
            </Button>
          ))}
        {parts.length > 1 && (
          <Button className="button" onPress={remove}>
            <Trash2 aria-hidden="true" />
            Remove {part.id}
          </Button>
        )}
      </div>
      <Refusal faults={faults} />
    </section>
  );
}
