import type { PartFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { forgetDrafts } from '../forget-drafts.ts';
import { MarkRow } from './MarkRow.tsx';
import { withMarkMoved, withoutMark } from './mark-edits.ts';
import './MarkList.css';

interface MarkListProps {
  readonly part: PartFile;
  readonly index: number;
}

/** Takes a mark in hand, and with it the face it is on, so that it is in the flat picture too. */
function select(selectedMark: number | null, part?: PartFile): void {
  const view = viewStore.getState();
  const on = selectedMark === null ? undefined : part?.wear[selectedMark]?.face;
  view.set({ selectedMark, ...(on !== undefined && { face: onVaneInHand(on, view.face) }) });
}

/** A mark of every vane is shown on the one in hand. */
const onVaneInHand = (face: string, inHand: string): string =>
  face.replace('vane-*', /^vane-\d+/.exec(inHand)?.[0] ?? 'vane-1');

/** Everything marked on the part, newest first; each goes over those below it. The one in hand is open to be changed. */
export function MarkList({ part, index }: MarkListProps) {
  const selected = useView((view) => view.selectedMark);
  const edit = useJob((state) => state.edit);
  const move = (at: number, by: -1 | 1) => {
    if (at + by < 0 || at + by >= part.wear.length) return;
    forgetDrafts(`parts[${index}].wear`);
    if (edit('move a mark', (job) => withMarkMoved(job, index, at, by)).length === 0) select(at + by);
  };
  const remove = (at: number) => {
    forgetDrafts(`parts[${index}].wear`);
    if (edit('remove a mark', (job) => withoutMark(job, index, at)).length === 0) select(null);
  };
  const places = Array.from(part.wear.keys()).reverse();
  return (
    <section className="section">
      <div className="mark-head">
        <h2>Marks</h2>
        <p className="quiet">
          {part.wear.length === 0
            ? 'Nothing marked on this part yet.'
            : 'Newest first. Each goes over those below it.'}
        </p>
      </div>
      <ol className="marks" reversed>
        {places.map((i) => (
          <MarkRow
            key={i}
            mark={part.wear[i]}
            part={part}
            place={{ part: index, at: i, of: part.wear.length }}
            isOpen={selected === i}
            onToggle={() => select(selected === i ? null : i, part)}
            onMove={(by) => move(i, by)}
            onRemove={() => remove(i)}
          />
        ))}
      </ol>
    </section>
  );
}
