import { Brush, Circle, Pentagon, Rotate3d, Spline } from 'lucide-react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { type ToolName, useView, viewStore } from '../../view/view-store.ts';
import './ToolBar.css';

const TOOLS = [
  { name: 'turn', label: 'Turn', Icon: Rotate3d },
  { name: 'brush', label: 'Brush', Icon: Brush },
  { name: 'patch', label: 'Patch', Icon: Spline },
  { name: 'area', label: 'Area', Icon: Pentagon },
  { name: 'pit', label: 'Pit', Icon: Circle },
] as const satisfies readonly {
  readonly name: ToolName;
  readonly label: string;
  readonly Icon: typeof Brush;
}[];

/** What one finger does on the part. */
export function ToolBar() {
  const tool = useView((view) => view.tool);
  return (
    <ToggleButtonGroup
      className="tool-bar"
      aria-label="Tool"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[tool]}
      onSelectionChange={(keys) => {
        const chosen = TOOLS.find(({ name }) => keys.has(name));
        if (chosen !== undefined) viewStore.getState().set({ tool: chosen.name });
      }}
    >
      {TOOLS.map(({ name, label, Icon }) => (
        <ToggleButton key={name} id={name} className="tool">
          <Icon aria-hidden="true" />
          {label}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
