import type { ReactNode } from 'react';
import { USUAL_ACTIVATION_ENERGY } from '../../../geometry/job/defaults.ts';
import type { CoatFile, FillerFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { SheetFold } from './SheetFold.tsx';
import type { MaterialEdit } from './use-material-edit.ts';

interface CureFieldsProps<Material extends FillerFile | CoatFile> {
  /** `filler` or `coat`: where it stands in the job file. */
  readonly path: string;
  /** "putty" or "coat", for what stands behind "Undo". */
  readonly word: string;
  readonly material: Material;
  readonly edit: MaterialEdit<Material>;
  /** Hard: where the times start when they are switched on. */
  readonly hardStart: { readonly minutes: number; readonly at: number };
  /** What the times come to on the part. */
  readonly here: string | null;
  /** What the one material has and the other has not. */
  readonly children: ReactNode;
}

/** The times of a mix from the bowl to service, and how they follow the warmth of the part. */
export function CureFields<Material extends FillerFile | CoatFile>(props: CureFieldsProps<Material>) {
  const { path, word, material, edit, hardStart, here, children } = props;
  const { hard, mixTime } = material;
  return (
    <SheetFold heading="Times as it cures">
      {here !== null && <p className="quiet">{here}</p>}
      <OptionalQuantity
        label="Mix for"
        known="The data sheet says how long to mix"
        quantity="minutes"
        path={`${path}.mixTime`}
        value={mixTime}
        start={2}
        onCommit={(minutes) =>
          edit(
            `mix time of the ${word}`,
            ({ mixTime: _, ...old }) =>
              (minutes === undefined ? old : { ...old, mixTime: minutes }) as Material,
            'mixTime',
          )
        }
      />
      {children}
      <SwitchField
        label="The data sheet says when it is hard"
        value={hard !== undefined}
        help="Hard enough for service."
        onCommit={(isKnown) =>
          edit(
            `hardening of the ${word}`,
            ({ hard: _, ...old }) => (isKnown ? { ...old, hard: hardStart } : old) as Material,
            'hard',
          )
        }
      />
      {hard !== undefined && (
        <>
          <QuantityField
            label="Hard after"
            quantity="minutes"
            path={`${path}.hard.minutes`}
            value={hard.minutes}
            onCommit={(minutes) =>
              edit(
                `hardening of the ${word}`,
                (old) => ({ ...old, hard: { ...hard, minutes } }),
                'hard.minutes',
              )
            }
          />
          <QuantityField
            label="Hard: quoted at"
            quantity="temperature"
            path={`${path}.hard.at`}
            value={hard.at}
            onCommit={(at) =>
              edit(`hardening of the ${word}`, (old) => ({ ...old, hard: { ...hard, at } }), 'hard.at')
            }
          />
        </>
      )}
      <Energy {...props} />
    </SheetFold>
  );
}

/** The energy by which the times follow the temperature, or the workshop rule in its place. */
function Energy<Material extends FillerFile | CoatFile>({
  path,
  word,
  material,
  edit,
}: CureFieldsProps<Material>) {
  const energy =
    material.activationEnergy === undefined ? USUAL_ACTIVATION_ENERGY : material.activationEnergy;
  return (
    <OptionalQuantity
      label="Activation energy, kJ/mol"
      known="Times follow an activation energy"
      quantity="plain"
      path={`${path}.activationEnergy`}
      value={energy ?? undefined}
      start={USUAL_ACTIVATION_ENERGY}
      max={300}
      help={
        energy === null
          ? 'Fallback in use, the workshop rule: half the time for every 10 °C more. Unsafe in heat and in cold.'
          : 'Published energies of epoxies run from 45 to 65 kJ/mol. Switched off, the workshop rule holds: half the time for every 10 °C more.'
      }
      onCommit={(typed) =>
        edit(
          `activation energy of the ${word}`,
          (old) => ({ ...old, activationEnergy: typed ?? null }),
          'activationEnergy',
        )
      }
    />
  );
}
