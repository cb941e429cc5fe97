import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { MarkRow } from './MarkRow.tsx';
import { withMarkMoved, withoutMark } from './mark-edits.ts';
import './MarkList.css';

interface MarkListProps {
  readonly plate: WearPlateFile;
  readonly index: number;
}

const select = (selectedMark: number | null) => viewStore.getState().set({ selectedMark });

/** Everything marked on the part, newest first; each goes over those below it. The one in hand is open to be changed. */
export function MarkList({ plate, index }: MarkListProps) {
  const selected = useView((view) => view.selectedMark);
  const edit = useJob((state) => state.edit);
  const move = (at: number, by: -1 | 1) => {
    if (at + by < 0 || at + by >= plate.wear.length) return;
    forgetDrafts(`parts[${index}].wear`);
    if (edit('move a mark', (job) => withMarkMoved(job, index, at, by)).length === 0) select(at + by);
  };
  const remove = (at: number) => {
    forgetDrafts(`parts[${index}].wear`);
    if (edit('remove a mark', (job) => withoutMark(job, index, at)).length === 0) select(null);
  };
  const places = Array.from(plate.wear.keys()).reverse();
  return (
    <section className="section">
      <div className="mark-head">
        <h2>Marks</h2>
        <p className="quiet">
          {plate.wear.length === 0
            ? 'Nothing marked on this part yet.'
            : 'Newest first. Each goes over those below it.'}
        </p>
      </div>
      <ol className="marks" reversed>
        {places.map((i) => (
          <MarkRow
            key={i}
            mark={plate.wear[i]}
            plate={plate}
            place={{ part: index, at: i, of: plate.wear.length }}
            isOpen={selected === i}
            onToggle={() => select(selected === i ? null : i)}
            onMove={(by) => move(i, by)}
            onRemove={() => remove(i)}
          />
        ))}
      </ol>
    </section>
  );
}
