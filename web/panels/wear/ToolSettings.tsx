import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { type Brush, type ToolName, useView, viewStore } from '../../view/view-store.ts';

/** How to use the tool in hand, and the sizes it works with. */
export function ToolSettings({ tool }: { readonly tool: ToolName }) {
  return (
    <>
      <p className="quiet">{HOW[tool]}</p>
      {tool !== 'turn' && tool !== 'straightedge' && tool !== 'readings' && (
        <div className="rows">
          {tool === 'brush' && <BrushMode />}
          <BrushSizes tool={tool} />
        </div>
      )}
    </>
  );
}

const HOW: Readonly<Record<ToolName, string>> = {
  turn: 'Drag to turn the part, pinch or roll to come closer. With any other tool two fingers do the same.',
  brush: 'Paint on the part or on the flat picture. Two fingers turn the part.',
  patch: 'Drag from one corner of the worn patch to the other.',
  area: 'Tap the corners round the worn area. Close it at the first corner, or with a double tap.',
  edge: 'Drag along an edge or a tip where it is eaten back, or tap it: all of it then. A tap on the edge in hand sets a point.',
  straightedge:
    'Drag over the part or the flat picture: the section under the line follows. Lifted, the line is kept and printed on the sheet.',
  readings: 'Tap where the gauge stands and type what it reads. Enter puts it down.',
  pit: 'Tap where the pit is. A soft edge makes it a bowl, a hard one flat.',
};

const MODES = [
  { value: 'set', label: 'Set depth' },
  { value: 'add', label: 'Add depth' },
  { value: 'smooth', label: 'Smooth' },
  { value: 'clear', label: 'Clear' },
] as const;

const EDGES = [
  { value: 'soft', label: 'Soft' },
  { value: 'hard', label: 'Hard' },
] as const;

function set(change: Partial<Brush>): readonly never[] {
  const view = viewStore.getState();
  view.set({ brush: { ...view.brush, ...change } });
  return [];
}

function BrushMode() {
  const mode = useView((view) => view.brush.mode);
  return (
    <ChoiceField
      label="The brush"
      choices={MODES}
      value={mode}
      onCommit={(chosen) => set({ mode: chosen })}
    />
  );
}

function BrushSizes({ tool }: { readonly tool: ToolName }) {
  const { mode, radius, depth, edge, strength } = useView((view) => view.brush);
  const isBrush = tool === 'brush';
  const hasRadius = isBrush || tool === 'pit';
  const hasDepth = !isBrush || mode === 'set' || mode === 'add';
  return (
    <>
      {hasRadius && (
        <QuantityField
          label={isBrush ? 'Brush radius' : 'Pit radius'}
          quantity="length"
          path="brush.radius"
          value={radius}
          min={0.5}
          max={500}
          onCommit={(size) => set({ radius: size })}
        />
      )}
      {hasDepth && (
        <QuantityField
          label="Depth"
          quantity="length"
          path="brush.depth"
          value={depth}
          min={0.01}
          max={1000}
          step={0.5}
          onCommit={(size) => set({ depth: size })}
        />
      )}
      {isBrush && mode === 'smooth' && (
        <QuantityField
          label="Strength"
          quantity="percent"
          path="brush.strength"
          value={strength * 100}
          min={0}
          max={100}
          step={10}
          onCommit={(share) => set({ strength: share / 100 })}
        />
      )}
      {hasRadius && hasDepth && (
        <ChoiceField label="Edge" choices={EDGES} value={edge} onCommit={(chosen) => set({ edge: chosen })} />
      )}
    </>
  );
}
