import { ChevronDown } from 'lucide-react';
import { Button, Menu, MenuItem, MenuTrigger } from 'react-aria-components';
import type { PartFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useJob } from '../../job/job-store.ts';
import { MenuPopover } from '../MenuPopover.tsx';
import { OptionalQuantity } from '../OptionalQuantity.tsx';
import { withPart } from './part-edits.ts';

/** What such castings commonly weigh, g/cm3 (common practice, no source): a start where nothing better is known. */
const METALS = [
  { name: 'Grey iron', density: 7.2 },
  { name: 'Ductile iron', density: 7.1 },
  { name: 'High-chrome iron', density: 7.7 },
  { name: 'Cast steel', density: 7.8 },
  { name: 'Stainless steel', density: 7.9 },
  { name: 'Bronze', density: 8.8 },
] as const;

interface MetalSectionProps {
  readonly part: PartFile;
  readonly index: number;
  /** Where the least thickness starts when it is switched on, mm. */
  readonly startLeast: number;
}

/** Density of the part, typed or taken from the usual metals, and the least wall it may be left with. */
export function MetalSection({ part, index, startLeast }: MetalSectionProps) {
  const edit = useJob((state) => state.edit);
  const path = `parts[${index}]`;
  const setDensity = (density: number) =>
    edit(
      'density of the metal',
      (job) => withPart(job, index, (old) => ({ ...old, density })),
      `${path}.density`,
    );
  const setLeast = (least: number | undefined) =>
    edit(
      'least thickness',
      (job) =>
        withPart(job, index, ({ leastThickness, ...old }) =>
          least === undefined ? old : { ...old, leastThickness: least },
        ),
      `${path}.leastThickness`,
    );
  return (
    <section className="section">
      <h2>Metal</h2>
      <div className="rows">
        <QuantityField
          label="Density"
          quantity="density"
          path={`${path}.density`}
          value={part.density}
          onCommit={setDensity}
        />
        <MenuTrigger>
          <Button className="button">
            Take a usual density
            <ChevronDown aria-hidden="true" />
          </Button>
          <MenuPopover placement="bottom end">
            <Menu className="menu" aria-label="Usual densities">
              {METALS.map(({ name, density }) => (
                <MenuItem
                  key={name}
                  className="menu-item"
                  textValue={name}
                  onAction={() => void setDensity(density)}
                >
                  <span className="menu-label">{name}</span>
                  <span className="quiet">{density} g/cm³</span>
                </MenuItem>
              ))}
            </Menu>
          </MenuPopover>
        </MenuTrigger>
        <OptionalQuantity
          label="Least thickness"
          known="Check the wall left against a least thickness"
          quantity="length"
          path={`${path}.leastThickness`}
          value={part.leastThickness}
          start={startLeast}
          min={0}
          onCommit={setLeast}
        />
      </div>
    </section>
  );
}
