import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { BoltCircles } from './BoltCircles.tsx';
import { MetalSection } from './MetalSection.tsx';
import { OutlineFields } from './OutlineFields.tsx';
import { asOutline, asRound } from './part-edits.ts';
import { RoundFields } from './RoundFields.tsx';
import { usePlateEdit } from './use-plate-edit.ts';

interface PlateFormProps {
  readonly plate: WearPlateFile;
  readonly index: number;
}

/** The sizes of a wear plate. The part on the screen grows as they are typed. */
export function PlateForm({ plate, index }: PlateFormProps) {
  const edit = usePlateEdit(index);
  const path = `parts[${index}]`;
  return (
    <>
      <section className="section">
        <h2>Shape</h2>
        <ChoiceField
          label="Given by"
          choices={[
            { value: 'round', label: 'Diameters' },
            { value: 'outline', label: 'Corners' },
          ]}
          value={plate.outline === undefined ? 'round' : 'outline'}
          help={
            plate.wear.length > 0 ? 'Another shape takes the marks off. Undo brings them back.' : undefined
          }
          onCommit={(shape) => edit('shape of the part', shape === 'round' ? asRound : asOutline)}
        />
        <div className="rows">
          {plate.outline === undefined && <RoundFields plate={plate} path={path} edit={edit} />}
          <QuantityField
            label="Thickness"
            quantity="length"
            path={`${path}.thickness`}
            value={plate.thickness}
            onCommit={(thickness) => edit('thickness', (old) => ({ ...old, thickness }), `${path}.thickness`)}
          />
        </div>
      </section>
      {plate.outline !== undefined && (
        <OutlineFields outline={plate.outline} path={`${path}.outline`} edit={edit} />
      )}
      <BoltCircles plate={plate} path={`${path}.boltHoles`} edit={edit} />
      <MetalSection part={plate} index={index} startLeast={Math.round(plate.thickness / 2)} />
    </>
  );
}
