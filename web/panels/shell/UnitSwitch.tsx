import { Button, ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { ScreenUnits } from '../../fields/quantity-units.ts';
import { useView, viewStore } from '../../view/view-store.ts';
import { useScreen } from './use-screen.ts';

const set = (units: ScreenUnits) => viewStore.getState().set({ units });

/** Millimetres or inches, for every figure on the screen. The job does not change. */
export function UnitSwitch() {
  const units = useView((view) => view.units);
  const isNarrow = useScreen('narrow');
  if (isNarrow) {
    const other = units === 'mm' ? 'in' : 'mm';
    return (
      <Button className="button" aria-label={`Units: ${units}. Show ${other}`} onPress={() => set(other)}>
        {units}
      </Button>
    );
  }
  return (
    <ToggleButtonGroup
      className="pair"
      aria-label="Units"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[units]}
      onSelectionChange={(keys) => set(keys.has('in') ? 'in' : 'mm')}
    >
      <ToggleButton id="mm" className="pair-choice">
        mm
      </ToggleButton>
      <ToggleButton id="in" className="pair-choice">
        in
      </ToggleButton>
    </ToggleButtonGroup>
  );
}
