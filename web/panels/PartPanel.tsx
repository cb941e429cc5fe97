import { useChosenPart } from './chosen-part.ts';
import { PartChoice } from './PartChoice.tsx';
import { PartList } from './part/PartList.tsx';
import { PlateForm } from './part/PlateForm.tsx';

/** The parts of the job and the few sizes a caliper gives of the chosen one. */
export function PartPanel() {
  const { part, index } = useChosenPart();
  return (
    <div className="panel-body">
      <PartChoice />
      {part.kind === 'wear-plate' ? (
        <PlateForm plate={part} index={index} />
      ) : (
        <p>
          {part.id} is an impeller. This version keeps it in the job and does not work it out; the figures are
          those of the plates.
        </p>
      )}
      <PartList />
    </div>
  );
}
