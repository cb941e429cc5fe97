import { useChosenPart } from './chosen-part.ts';
import { PartChoice } from './PartChoice.tsx';
import { PartList } from './part/PartList.tsx';
import { PlateForm } from './part/PlateForm.tsx';
import { Later } from './shell/Later.tsx';

/** The parts of the job and the few sizes a caliper gives of the chosen one. */
export function PartPanel() {
  const { part, index } = useChosenPart();
  return (
    <div className="panel-body">
      <PartChoice />
      {part.kind === 'wear-plate' ? (
        <PlateForm plate={part} index={index} />
      ) : (
        <Later piece="impeller" waiting={<p className="quiet">Opening the form</p>} />
      )}
      <PartList />
    </div>
  );
}
