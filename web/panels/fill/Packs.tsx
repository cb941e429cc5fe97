import { Plus, Trash2 } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { FillerFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { TextInput } from '../../fields/TextInput.tsx';
import { forgetDrafts } from '../forget-drafts.ts';

type Pack = NonNullable<FillerFile['packs']>[number];

interface PacksProps {
  readonly path: string;
  readonly packs: readonly Pack[];
  /** @param field  path inside the material */
  readonly onCommit: (packs: readonly Pack[], field: string) => readonly Fault[];
}

/** What can be bought, each pack by mass or by volume. */
export function Packs({ path, packs, onCommit }: PacksProps) {
  return (
    <>
      {packs.map((pack, i) => (
        <PackFields
          // biome-ignore lint/suspicious/noArrayIndexKey: packs have no name but their place
          key={i}
          pack={pack}
          number={i + 1}
          path={`${path}[${i}]`}
          onChange={(changed, field) =>
            onCommit(
              packs.map((old, j) => (j === i ? changed : old)),
              `packs[${i}].${field}`,
            )
          }
          onRemove={() => {
            forgetDrafts(path);
            onCommit(
              packs.filter((_, j) => j !== i),
              `packs.remove ${i}`,
            );
          }}
        />
      ))}
      <Button
        className="button"
        onPress={() => void onCommit([...packs, { label: 'pack', mass: 1000 }], `packs.add ${packs.length}`)}
      >
        <Plus aria-hidden="true" />
        Add a pack
      </Button>
    </>
  );
}

interface PackFieldsProps {
  readonly pack: Pack;
  readonly number: number;
  readonly path: string;
  readonly onChange: (pack: Pack, field: string) => readonly Fault[];
  readonly onRemove: () => void;
}

function PackFields({ pack, number, path, onChange, onRemove }: PackFieldsProps) {
  const { mass, volume, ...rest } = pack;
  return (
    <div className="rows pack">
      <div className="section-head">
        <h3>Pack {number}</h3>
        <Button className="button button-bare" aria-label={`Remove pack ${number}`} onPress={onRemove}>
          <Trash2 aria-hidden="true" />
          Remove
        </Button>
      </div>
      <TextInput
        label="Called"
        path={`${path}.label`}
        value={pack.label}
        onCommit={(label) => onChange({ ...pack, label: label.trim() }, 'label')}
      />
      <ChoiceField
        label="Sold by"
        choices={[
          { value: 'mass', label: 'Mass' },
          { value: 'volume', label: 'Volume' },
        ]}
        value={volume === undefined ? 'mass' : 'volume'}
        onCommit={(by) =>
          onChange(by === 'mass' ? { ...rest, mass: mass ?? 1000 } : { ...rest, volume: volume ?? 400 }, 'by')
        }
      />
      {volume === undefined ? (
        <QuantityField
          label="A and B together"
          quantity="mass"
          path={`${path}.mass`}
          value={mass ?? null}
          onCommit={(size) => onChange({ ...rest, mass: size }, 'mass')}
        />
      ) : (
        <QuantityField
          label="A and B together"
          quantity="volume"
          path={`${path}.volume`}
          value={volume}
          onCommit={(size) => onChange({ ...rest, volume: size }, 'volume')}
        />
      )}
      <SwitchField
        label="A cartridge that mixes A and B itself"
        value={pack.selfMixing === true}
        help="Its nozzle mixes: nothing to weigh."
        onCommit={(isSelfMixing) => {
          const { selfMixing: _, ...plain } = pack;
          return onChange(isSelfMixing ? { ...plain, selfMixing: true } : plain, 'selfMixing');
        }}
      />
    </div>
  );
}
