import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import { MOST_PARTS } from '../../../geometry/job/job-file.ts';
import { TextInput } from '../../fields/TextInput.tsx';
import { useJob } from '../../job/job-store.ts';
import { viewStore } from '../../view/view-store.ts';
import { useChosenPart } from '../chosen-part.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { Refusal } from '../Refusal.tsx';
import { withNewPlate, withoutPart, withPartRenamed } from './part-edits.ts';

const choose = (part: string) => viewStore.getState().set({ part, face: 'face', selectedMark: null });

/** Which parts the job has: the chosen one's name, one more, one less. */
export function PartList() {
  const { part, index } = useChosenPart();
  const parts = useJob((state) => state.job.parts);
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const add = () => {
    let added = '';
    const refused = edit('add a plate', (job) => {
      const { job: grown, id } = withNewPlate(job);
      added = id;
      return grown;
    });
    setFaults(refused);
    if (refused.length === 0) choose(added);
  };
  const remove = () => {
    forgetDrafts('parts[');
    setFaults(edit(`remove ${part.id}`, (job) => withoutPart(job, index)));
  };
  const rename = (id: string) => {
    const refused = edit('name of the part', (job) => withPartRenamed(job, index, id.trim()));
    if (refused.length === 0) choose(id.trim());
    return refused;
  };
  return (
    <section className="section">
      <h2>{parts.length > 1 ? 'This part' : 'Parts'}</h2>
      <TextInput label="Name of the part" path={`parts[${index}].id`} value={part.id} onCommit={rename} />
      <div className="buttons">
        {parts.length < MOST_PARTS && (
          <Button className="button" onPress={add}>
            <Plus aria-hidden="true" />
            Add a plate
          </Button>
        )}
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
