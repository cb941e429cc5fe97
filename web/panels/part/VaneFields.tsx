import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import type { ImpellerFieldsProps } from './HubFields.tsx';
import { setVanes, type VanesFile } from './use-impeller-edit.ts';

type LengthName = 'inletDiameter' | 'thicknessInlet' | 'thicknessOutlet' | 'heightInlet' | 'heightOutlet';

const LENGTHS = [
  { name: 'inletDiameter', label: 'Inlet diameter', help: 'Across the leading edges.' },
  { name: 'heightInlet', label: 'Height at the inlet', help: 'From the shroud up.' },
  { name: 'heightOutlet', label: 'Height at the outlet' },
  { name: 'thicknessInlet', label: 'Thickness at the inlet', help: 'Behind the round of the nose.' },
  { name: 'thicknessOutlet', label: 'Thickness at the outlet' },
] as const satisfies readonly { readonly name: LengthName; readonly label: string; readonly help?: string }[];

/** How many vanes, where the first one stands, and what a caliper gives of one. */
export function VaneFields({ impeller: { vanes }, path, edit }: ImpellerFieldsProps) {
  const set = setVanes(edit, path);
  const at = (name: keyof VanesFile) => `${path}.vanes.${name}`;
  return (
    <>
      <div className="rows">
        <QuantityField
          label="Vanes"
          quantity="plain"
          path={at('count')}
          value={vanes.count}
          min={1}
          max={24}
          onCommit={(count) => set('number of vanes', 'count', count)}
        />
        <QuantityField
          label="Leading edge of vane 1 at"
          quantity="angle"
          path={at('firstAngle')}
          value={vanes.firstAngle ?? 0}
          help="From the reference mark, counter-clockwise."
          onCommit={(angle) => set('angle of vane 1', 'firstAngle', angle)}
        />
        {LENGTHS.map(({ name, label, ...rest }) => (
          <QuantityField
            key={name}
            label={label}
            quantity="length"
            path={at(name)}
            value={vanes[name]}
            help={'help' in rest ? rest.help : undefined}
            onCommit={(size) => set(label.toLowerCase(), name, size)}
          />
        ))}
      </div>
      <ChoiceField
        label="Leading edge"
        choices={[
          { value: 'round', label: 'Round' },
          { value: 'square', label: 'Square' },
        ]}
        value={vanes.nose ?? 'square'}
        onCommit={(nose) => set('shape of the leading edge', 'nose', nose)}
      />
    </>
  );
}
