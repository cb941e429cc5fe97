import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { shownUnit } from '../../fields/quantity-units.ts';
import { TextInput } from '../../fields/TextInput.tsx';
import { useView } from '../../view/view-store.ts';
import { type PointKind, parsePoints, pointsText } from '../points-text.ts';
import { BlendField, type MarkFieldsProps } from './BlendField.tsx';
import { faceNumbers } from './face-words.ts';

type Area = Extract<MarkFile, { readonly kind: 'area' }>;

/** A closed polygon on the face: its depth, and its corners as lines of two numbers. */
export function AreaFields({ mark, part, path, edit }: MarkFieldsProps<Area>) {
  const units = useView((view) => view.units);
  const numbers = faceNumbers(part, mark.face);
  const kind: PointKind = [numbers[0].quantity, numbers[1].quantity];
  const columns = numbers.map(({ label, quantity }) => `${label} in ${shownUnit(quantity, units).symbol}`);
  return (
    <div className="rows">
      <QuantityField
        label="Depth"
        quantity="length"
        path={`${path}.depth`}
        value={mark.depth}
        min={0}
        step={0.1}
        onCommit={(depth) => edit('depth of an area', { ...mark, depth }, 'depth')}
      />
      <TextInput
        label={`Corners: ${columns.join(', ')}`}
        path={`${path}.outline`}
        value={pointsText(mark.outline, kind, units)}
        isLong
        help="One corner a line, in turn round the area."
        onCommit={(text) => {
          const parsed = parsePoints(text, kind, units);
          if ('points' in parsed) {
            return edit(
              'corners of an area',
              { ...mark, outline: parsed.points.map(([p, q]) => [p, q]) },
              'outline',
            );
          }
          return [
            { field: `${path}.outline`, found: text, needs: 'lines of two numbers', problem: parsed.problem },
          ];
        }}
      />
      <BlendField mark={mark} edit={edit} />
    </div>
  );
}
