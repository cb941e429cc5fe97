import type { CoatFile, FillerFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { TextInput } from '../../fields/TextInput.tsx';
import type { MaterialEdit } from './use-material-edit.ts';

interface MixFieldsProps<Material extends FillerFile | CoatFile> {
  /** `filler` or `coat`: where it stands in the job file. */
  readonly path: string;
  /** "putty" or "coat", for what stands behind "Undo". */
  readonly word: string;
  readonly material: Material;
  readonly edit: MaterialEdit<Material>;
}

/** What the data sheets of both two-part materials give: name, ratio, densities, working time. */
export function MixFields<Material extends FillerFile | CoatFile>(props: MixFieldsProps<Material>) {
  const { path, word, material, edit } = props;
  const [a, b] = material.ratioByVolume;
  const { minutes, at } = material.workingTime;
  return (
    <>
      <TextInput
        label="Name"
        path={`${path}.name`}
        value={material.name ?? ''}
        onCommit={(name) => edit(`name of the ${word}`, (old) => ({ ...old, name: name.trim() }), 'name')}
      />
      <QuantityField
        label="Parts of A by volume"
        quantity="plain"
        path={`${path}.ratioByVolume[0]`}
        value={a}
        onCommit={(share) =>
          edit(`ratio of the ${word}`, (old) => ({ ...old, ratioByVolume: [share, b] }), 'ratioByVolume[0]')
        }
      />
      <QuantityField
        label="to parts of B by volume"
        quantity="plain"
        path={`${path}.ratioByVolume[1]`}
        value={b}
        onCommit={(share) =>
          edit(`ratio of the ${word}`, (old) => ({ ...old, ratioByVolume: [a, share] }), 'ratioByVolume[1]')
        }
      />
      <QuantityField
        label="Density of the mix"
        quantity="density"
        path={`${path}.density`}
        value={material.density}
        onCommit={(density) => edit(`density of the ${word}`, (old) => ({ ...old, density }), 'density')}
      />
      <PartDensities {...props} />
      <QuantityField
        label="Working time"
        quantity="minutes"
        path={`${path}.workingTime.minutes`}
        value={minutes}
        onCommit={(time) =>
          edit(
            `working time of the ${word}`,
            (old) => ({ ...old, workingTime: { ...old.workingTime, minutes: time } }),
            'workingTime.minutes',
          )
        }
      />
      <QuantityField
        label="at"
        quantity="temperature"
        path={`${path}.workingTime.at`}
        value={at}
        onCommit={(degrees) =>
          edit(
            `working time of the ${word}`,
            (old) => ({ ...old, workingTime: { ...old.workingTime, at: degrees } }),
            'workingTime.at',
          )
        }
      />
    </>
  );
}

/** The densities of A and of B: both, or neither. */
function PartDensities<Material extends FillerFile | CoatFile>({
  path,
  word,
  material,
  edit,
}: MixFieldsProps<Material>) {
  const { densityA, densityB } = material;
  const areKnown = densityA !== undefined && densityB !== undefined;
  return (
    <>
      <SwitchField
        label="A and B have densities of their own"
        value={areKnown}
        onCommit={(known) =>
          edit(
            `densities of A and B of the ${word}`,
            ({ densityA: _a, densityB: _b, ...old }) =>
              (known ? { ...old, densityA: old.density, densityB: old.density } : old) as Material,
            'densities',
          )
        }
      />
      {areKnown && (
        <>
          <QuantityField
            label="Density of A"
            quantity="density"
            path={`${path}.densityA`}
            value={densityA}
            onCommit={(density) =>
              edit(`density of A of the ${word}`, (old) => ({ ...old, densityA: density }), 'densityA')
            }
          />
          <QuantityField
            label="Density of B"
            quantity="density"
            path={`${path}.densityB`}
            value={densityB}
            onCommit={(density) =>
              edit(`density of B of the ${word}`, (old) => ({ ...old, densityB: density }), 'densityB')
            }
          />
        </>
      )}
    </>
  );
}
