import type { ImpellerFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { useChosenPart } from '../chosen-part.ts';
import { CamberFields } from './CamberFields.tsx';
import { HubFields } from './HubFields.tsx';
import { MetalSection } from './MetalSection.tsx';
import { asOpen, asSemiOpen } from './part-edits.ts';
import { useImpellerEdit } from './use-impeller-edit.ts';
import { VaneFields } from './VaneFields.tsx';

/** The sizes of the chosen impeller, as caliper, protractor and a rubbing of a vane give them. The part on the screen follows. */
export function ImpellerForm() {
  const { part, index } = useChosenPart();
  return part.kind === 'impeller' ? <Sizes impeller={part} index={index} /> : null;
}

interface SizesProps {
  readonly impeller: ImpellerFile;
  readonly index: number;
}

function Sizes({ impeller, index }: SizesProps) {
  const edit = useImpellerEdit(index);
  const path = `parts[${index}]`;
  const fields = { impeller, path, edit };
  const isOpen = impeller.shroudThickness === 0;
  const hasShroudMarks = impeller.wear.some(({ face }) => face.startsWith('shroud/'));
  const { thicknessInlet, thicknessOutlet } = impeller.vanes;
  return (
    <>
      <section className="section">
        <h2>Hub and shroud</h2>
        <ChoiceField
          label="Behind the vanes"
          choices={[
            { value: 'semi-open', label: 'Back shroud' },
            { value: 'open', label: 'Nothing' },
          ]}
          value={isOpen ? 'open' : 'semi-open'}
          help={hasShroudMarks ? 'Without a shroud its marks go. Undo brings them back.' : undefined}
          onCommit={(kind) => edit('shroud of the impeller', kind === 'open' ? asOpen : asSemiOpen)}
        />
        <ChoiceField
          label="It turns, seen from the vane side"
          choices={[
            { value: 'clockwise', label: 'Clockwise' },
            { value: 'counter-clockwise', label: 'Counter-clockwise' },
          ]}
          value={impeller.rotation}
          help="The vanes are swept back against it."
          onCommit={(rotation) => edit('rotation', (old) => ({ ...old, rotation }))}
        />
        <HubFields {...fields} />
      </section>
      <section className="section">
        <h2>Vanes</h2>
        <VaneFields {...fields} />
      </section>
      <section className="section">
        <h2>Curve of a vane</h2>
        <CamberFields {...fields} />
      </section>
      <MetalSection
        part={impeller}
        index={index}
        startLeast={Math.round(Math.min(thicknessInlet, thicknessOutlet) / 2)}
      />
    </>
  );
}
