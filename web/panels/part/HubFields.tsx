import type { ImpellerFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import type { ImpellerEdit } from './use-impeller-edit.ts';

export interface ImpellerFieldsProps {
  readonly impeller: ImpellerFile;
  /** Of the impeller in the job file. */
  readonly path: string;
  readonly edit: ImpellerEdit;
}

/** Rim, hub, bore and shroud. Bore and height of the hub count for nothing but the mass and the picture, and may be left out. */
export function HubFields({ impeller, path, edit }: ImpellerFieldsProps) {
  const { outerDiameter, hubDiameter, boreDiameter, hubHeight, shroudThickness, vanes } = impeller;
  return (
    <div className="rows">
      <QuantityField
        label="Outer diameter"
        quantity="length"
        path={`${path}.outerDiameter`}
        value={outerDiameter}
        onCommit={(size) =>
          edit('outer diameter', (old) => ({ ...old, outerDiameter: size }), `${path}.outerDiameter`)
        }
      />
      {shroudThickness > 0 && (
        <QuantityField
          label="Shroud thickness"
          quantity="length"
          path={`${path}.shroudThickness`}
          value={shroudThickness}
          onCommit={(size) =>
            edit('shroud thickness', (old) => ({ ...old, shroudThickness: size }), `${path}.shroudThickness`)
          }
        />
      )}
      <QuantityField
        label="Hub diameter"
        quantity="length"
        path={`${path}.hubDiameter`}
        value={hubDiameter}
        onCommit={(size) =>
          edit('hub diameter', (old) => ({ ...old, hubDiameter: size }), `${path}.hubDiameter`)
        }
      />
      <OptionalQuantity
        label="Bore diameter"
        known="The bore is measured"
        quantity="length"
        path={`${path}.boreDiameter`}
        value={boreDiameter}
        start={Math.round(hubDiameter / 2)}
        help="Otherwise half the hub. It counts for the mass alone."
        onCommit={(size) =>
          edit(
            'bore diameter',
            ({ boreDiameter: _, ...old }) => (size === undefined ? old : { ...old, boreDiameter: size }),
            `${path}.boreDiameter`,
          )
        }
      />
      <OptionalQuantity
        label="Hub height"
        known="The height of the hub is measured"
        quantity="length"
        path={`${path}.hubHeight`}
        value={hubHeight}
        start={vanes.heightInlet}
        help="Above the shroud; otherwise as high as the vanes at the inlet. It counts for the mass alone."
        onCommit={(size) =>
          edit(
            'hub height',
            ({ hubHeight: _, ...old }) => (size === undefined ? old : { ...old, hubHeight: size }),
            `${path}.hubHeight`,
          )
        }
      />
    </div>
  );
}
