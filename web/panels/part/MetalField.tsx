import { ChevronDown } from 'lucide-react';
import { Button, Menu, MenuItem, MenuTrigger } from 'react-aria-components';
import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { MenuPopover } from '../MenuPopover.tsx';
import type { PlateEdit } from './use-plate-edit.ts';

/** What such castings commonly weigh, g/cm3 (common practice, no source): a start where nothing better is known. */
const METALS = [
  { name: 'Grey iron', density: 7.2 },
  { name: 'Ductile iron', density: 7.1 },
  { name: 'High-chrome iron', density: 7.7 },
  { name: 'Cast steel', density: 7.8 },
  { name: 'Stainless steel', density: 7.9 },
  { name: 'Bronze', density: 8.8 },
] as const;

interface MetalFieldProps {
  readonly plate: WearPlateFile;
  readonly path: string;
  readonly edit: PlateEdit;
}

/** Density of the part, typed or taken from the usual metals. */
export function MetalField({ plate, path, edit }: MetalFieldProps) {
  const set = (density: number) =>
    edit('density of the metal', (old) => ({ ...old, density }), `${path}.density`);
  return (
    <>
      <QuantityField
        label="Density"
        quantity="density"
        path={`${path}.density`}
        value={plate.density}
        onCommit={set}
      />
      <MenuTrigger>
        <Button className="button">
          Take a usual density
          <ChevronDown aria-hidden="true" />
        </Button>
        <MenuPopover placement="bottom end">
          <Menu className="menu" aria-label="Usual densities">
            {METALS.map(({ name, density }) => (
              <MenuItem key={name} className="menu-item" textValue={name} onAction={() => void set(density)}>
                <span className="menu-label">{name}</span>
                <span className="quiet">{density} g/cm³</span>
              </MenuItem>
            ))}
          </Menu>
        </MenuPopover>
      </MenuTrigger>
    </>
  );
}
