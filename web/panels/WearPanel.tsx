import type { WearPlateFile } from '../../geometry/job/job-file.ts';
import { useView } from '../view/view-store.ts';
import { useChosenPart } from './chosen-part.ts';
import { PartChoice } from './PartChoice.tsx';
import { AddByTyping } from './wear/AddByTyping.tsx';
import { FaceChoice } from './wear/FaceChoice.tsx';
import { MarkList } from './wear/MarkList.tsx';
import { ToolBar } from './wear/ToolBar.tsx';
import { ToolSettings } from './wear/ToolSettings.tsx';

/** Marking what is missing: the tool in hand and its settings, and the list of marks made so far. */
export function WearPanel() {
  const { part, index } = useChosenPart();
  return (
    <div className="panel-body">
      <PartChoice />
      {part.kind === 'wear-plate' ? (
        <PlateWear plate={part} index={index} />
      ) : (
        <p>{part.id} is an impeller. This version keeps its marks in the job and does not work them out.</p>
      )}
    </div>
  );
}

function PlateWear({ plate, index }: { readonly plate: WearPlateFile; readonly index: number }) {
  const tool = useView((view) => view.tool);
  return (
    <>
      <section className="section tools-section">
        <ToolBar />
        <ToolSettings tool={tool} />
        <FaceChoice plate={plate} />
        <AddByTyping tool={tool} plate={plate} index={index} />
      </section>
      <MarkList plate={plate} index={index} />
    </>
  );
}
