import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import type { PlateEdit } from './use-plate-edit.ts';

interface RoundFieldsProps {
  readonly plate: WearPlateFile;
  readonly path: string;
  readonly edit: PlateEdit;
}

/** Rim, bore and dish of a round plate. */
export function RoundFields({ plate, path, edit }: RoundFieldsProps) {
  return (
    <>
      <QuantityField
        label="Outer diameter"
        quantity="length"
        path={`${path}.outerDiameter`}
        value={plate.outerDiameter ?? null}
        onCommit={(outerDiameter) =>
          edit('outer diameter', (old) => ({ ...old, outerDiameter }), `${path}.outerDiameter`)
        }
      />
      <QuantityField
        label="Bore diameter"
        quantity="length"
        path={`${path}.boreDiameter`}
        value={plate.boreDiameter ?? null}
        onCommit={(boreDiameter) =>
          edit('bore diameter', (old) => ({ ...old, boreDiameter }), `${path}.boreDiameter`)
        }
      />
      <QuantityField
        label="Cone angle"
        quantity="angle"
        path={`${path}.coneAngle`}
        value={plate.coneAngle ?? 0}
        step={0.5}
        help="0 is flat. Above 0 the face is dished, lower at the bore."
        onCommit={(coneAngle) => edit('cone angle', (old) => ({ ...old, coneAngle }), `${path}.coneAngle`)}
      />
    </>
  );
}
