import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { sentenceCase } from '../sentence-case.ts';
import { BlendField, type MarkFieldsProps } from './BlendField.tsx';
import { faceNumbers } from './face-words.ts';

type Pit = Extract<MarkFile, { readonly kind: 'pit' }>;

const FORMS = [
  { value: 'bowl', label: 'Bowl' },
  { value: 'cone', label: 'Cone' },
  { value: 'flat', label: 'Flat' },
] as const;

/** A round hole in the face: where, how wide, how deep, how shaped. */
export function PitFields({ mark, part, path, edit }: MarkFieldsProps<Pit>) {
  const numbers = faceNumbers(part, mark.face);
  return (
    <div className="rows">
      {([0, 1] as const).map((i) => (
        <QuantityField
          key={i}
          label={sentenceCase(numbers[i].label)}
          quantity={numbers[i].quantity}
          path={`${path}.at[${i}]`}
          value={mark.at[i]}
          onCommit={(value) =>
            edit(
              'place of a pit',
              { ...mark, at: i === 0 ? [value, mark.at[1]] : [mark.at[0], value] },
              `at[${i}]`,
            )
          }
        />
      ))}
      <QuantityField
        label="Diameter"
        quantity="length"
        path={`${path}.diameter`}
        value={mark.diameter}
        onCommit={(diameter) => edit('diameter of a pit', { ...mark, diameter }, 'diameter')}
      />
      <QuantityField
        label="Depth"
        quantity="length"
        path={`${path}.depth`}
        value={mark.depth}
        min={0}
        step={0.1}
        onCommit={(depth) => edit('depth of a pit', { ...mark, depth }, 'depth')}
      />
      <ChoiceField
        label="Form"
        choices={FORMS}
        value={mark.form}
        onCommit={(form) => edit('form of a pit', { ...mark, form }, 'form')}
      />
      <BlendField mark={mark} edit={edit} />
    </div>
  );
}
