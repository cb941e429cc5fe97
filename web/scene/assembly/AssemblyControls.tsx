import { type ReactNode, useId, useState } from 'react';
import { Button, ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { Mm } from '../../../geometry/units.ts';
import { toDegrees, toRadians } from '../../../geometry/units.ts';
import { formatQuantity } from '../../fields/format-quantity.ts';
import { shownUnit } from '../../fields/quantity-units.ts';
import { type AssemblyView, useView, viewStore } from '../../view/view-store.ts';

type HandleName = 'apart' | 'turn' | 'cut';

const HANDLES: readonly { readonly name: HandleName; readonly label: string }[] = [
  { name: 'cut', label: 'Cut' },
  { name: 'apart', label: 'Apart' },
  { name: 'turn', label: 'Turn' },
];

export function changeAssembly(change: Partial<AssemblyView>): void {
  const { assembly, set } = viewStore.getState();
  set({ assembly: { ...assembly, ...change } });
}

/** Pulls the parts apart, turns the rotor, cuts them open. Side by side where there is room; on a phone one at a time. */
export function AssemblyControls({
  farthest,
}: {
  /** The plate is pulled this far at most. */ readonly farthest: Mm;
}) {
  const assembly = useView((view) => view.assembly);
  const units = useView((view) => view.units);
  const [shown, setShown] = useState<HandleName>('cut');
  const apart = `${formatQuantity(assembly.apart, 'length', units, { as: 'typed' })} ${shownUnit('length', units).symbol}`;
  const [turn, cut] = [assembly.turn, assembly.cut].map((angle) => Math.round(toDegrees(angle)) % 360);
  return (
    <div className="assembly-controls" data-shown={shown}>
      <ToggleButtonGroup
        className="pair assembly-which"
        aria-label="Handle"
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[shown]}
        onSelectionChange={([name]) => setShown(name as HandleName)}
      >
        {HANDLES.map(({ name, label }) => (
          <ToggleButton key={name} id={name} className="pair-choice">
            {label}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      <Handle
        name="cut"
        label={`Cut at ${cut}°`}
        most={359}
        value={cut}
        words={`${cut}°`}
        onChange={(degrees) => changeAssembly({ cut: toRadians(degrees), isCut: true })}
      >
        <ToggleButton
          className="assembly-toggle"
          isSelected={assembly.isCut}
          onChange={(isCut) => changeAssembly({ isCut })}
        >
          Cut open
        </ToggleButton>
      </Handle>
      <Handle
        name="apart"
        label={assembly.apart === 0 ? 'At the true gap' : `Pulled apart ${apart}`}
        most={Math.ceil(farthest)}
        value={Math.round(assembly.apart)}
        words={apart}
        onChange={(mm) => changeAssembly({ apart: mm })}
      >
        <Button
          className="assembly-toggle"
          isDisabled={assembly.apart === 0}
          onPress={() => changeAssembly({ apart: 0 })}
        >
          Together
        </Button>
      </Handle>
      <Handle
        name="turn"
        label={`Rotor turned ${turn}°`}
        most={359}
        value={turn}
        words={`${turn}°`}
        onChange={(degrees) => changeAssembly({ turn: toRadians(degrees) })}
      >
        <ToggleButton
          className="assembly-toggle"
          isSelected={assembly.dragsRotor}
          onChange={(dragsRotor) => changeAssembly({ dragsRotor })}
        >
          By hand
        </ToggleButton>
      </Handle>
    </div>
  );
}

interface HandleProps {
  readonly name: HandleName;
  readonly label: string;
  readonly most: number;
  readonly value: number;
  readonly words: string;
  readonly onChange: (value: number) => void;
  readonly children: ReactNode;
}

function Handle({ name, label, most, value, words, onChange, children }: HandleProps) {
  const id = useId();
  return (
    <div className="assembly-handle" data-name={name}>
      <div className="assembly-slide">
        <label htmlFor={id}>{label}</label>
        <input
          id={id}
          type="range"
          min={0}
          max={most}
          step={1}
          value={value}
          aria-valuetext={words}
          onChange={({ target }) => onChange(target.valueAsNumber)}
        />
      </div>
      {children}
    </div>
  );
}
