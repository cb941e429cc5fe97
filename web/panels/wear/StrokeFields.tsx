import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { BlendField, type MarkFieldsProps } from './BlendField.tsx';

type Stroke = Extract<MarkFile, { readonly kind: 'stroke' }>;
type Smooth = Extract<MarkFile, { readonly kind: 'smooth' }>;

const EDGES = [
  { value: 'soft', label: 'Soft' },
  { value: 'hard', label: 'Hard' },
] as const;

/** A stroke of the brush along the way it was drawn. */
export function StrokeFields({ mark, path, edit }: MarkFieldsProps<Stroke>) {
  return (
    <div className="rows">
      <RadiusField mark={mark} path={path} edit={edit} />
      {mark.clear !== true && (
        <QuantityField
          label="Depth"
          quantity="length"
          path={`${path}.depth`}
          value={mark.depth ?? null}
          min={0}
          step={0.1}
          onCommit={(depth) => edit('depth of a brush stroke', { ...mark, depth }, 'depth')}
        />
      )}
      <ChoiceField
        label="Edge"
        choices={EDGES}
        value={mark.edge ?? 'hard'}
        onCommit={(edge) => edit('edge of a brush stroke', { ...mark, edge }, 'edge')}
      />
      {mark.clear !== true && <BlendField mark={mark} edit={edit} />}
    </div>
  );
}

/** A stroke that evens out what lies below it. */
export function SmoothFields({ mark, path, edit }: MarkFieldsProps<Smooth>) {
  return (
    <div className="rows">
      <RadiusField mark={mark} path={path} edit={edit} />
      <QuantityField
        label="Strength"
        quantity="percent"
        path={`${path}.strength`}
        value={mark.strength * 100}
        min={0}
        max={100}
        step={10}
        onCommit={(share) =>
          edit('strength of a smoothing stroke', { ...mark, strength: share / 100 }, 'strength')
        }
      />
    </div>
  );
}

function RadiusField({ mark, path, edit }: Omit<MarkFieldsProps<Stroke | Smooth>, 'part'>) {
  return (
    <QuantityField
      label="Brush radius"
      quantity="length"
      path={`${path}.radius`}
      value={mark.radius}
      onCommit={(radius) => edit('radius of a brush stroke', { ...mark, radius }, 'radius')}
    />
  );
}
