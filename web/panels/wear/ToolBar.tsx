import { Brush, ChartSpline, Circle, Crosshair, Pentagon, Rotate3d, Ruler, Spline } from 'lucide-react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import type { PartFile } from '../../../geometry/job/job-file.ts';
import { type ToolName, useView, viewStore } from '../../view/view-store.ts';
import './ToolBar.css';

const TOOLS = [
  { name: 'turn', label: 'Turn', Icon: Rotate3d },
  { name: 'brush', label: 'Brush', Icon: Brush },
  { name: 'patch', label: 'Patch', Icon: Spline },
  { name: 'area', label: 'Area', Icon: Pentagon },
  { name: 'pit', label: 'Pit', Icon: Circle },
  { name: 'edge', label: 'Edge', Icon: ChartSpline },
  { name: 'readings', label: 'Readings', Icon: Crosshair },
  { name: 'straightedge', label: 'Straightedge', Icon: Ruler },
] as const satisfies readonly {
  readonly name: ToolName;
  readonly label: string;
  readonly Icon: typeof Brush;
}[];

/** What one finger does on the part. Only an impeller has edges that wear back. */
export function ToolBar({ part }: { readonly part: PartFile }) {
  const tool = useView((view) => view.tool);
  const tools = TOOLS.filter(({ name }) => name !== 'edge' || part.kind === 'impeller');
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
      {tools.map(({ name, label, Icon }) => (
        <ToggleButton key={name} id={name} className="tool">
          <Icon aria-hidden="true" />
          {label}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
