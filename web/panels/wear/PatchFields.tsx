import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';
import { BlendField, type MarkFieldsProps } from './BlendField.tsx';
import { faceNumbers } from './face-words.ts';

type Patch = Extract<MarkFile, { readonly kind: 'patch' }>;

/** A box in the face's two numbers, evenly deep or on a slope. */
export function PatchFields({ mark, part, path, edit }: MarkFieldsProps<Patch>) {
  const numbers = faceNumbers(part, mark.face);
  const isSloped = typeof mark.depth !== 'number';
  const [from, to] = typeof mark.depth === 'number' ? [mark.depth, mark.depth] : mark.depth;
  return (
    <div className="rows">
      {(['first', 'second'] as const).flatMap((name, i) =>
        ([0, 1] as const).map((end) => (
          <QuantityField
            key={`${name}-${end}`}
            label={`${end === 0 ? 'From' : 'To'} ${numbers[i].label}`}
            quantity={numbers[i].quantity}
            path={`${path}.${name}[${end}]`}
            value={mark[name][end]}
            onCommit={(value) =>
              edit(
                'edge of a patch',
                { ...mark, [name]: end === 0 ? [value, mark[name][1]] : [mark[name][0], value] },
                `${name}[${end}]`,
              )
            }
          />
        )),
      )}
      <QuantityField
        label={isSloped ? `Depth at the first ${numbers[0].label}` : 'Depth'}
        quantity="length"
        path={isSloped ? `${path}.depth[0]` : `${path}.depth`}
        value={from}
        min={0}
        step={0.1}
        onCommit={(depth) =>
          edit('depth of a patch', { ...mark, depth: isSloped ? [depth, to] : depth }, 'depth')
        }
      />
      {isSloped && (
        <QuantityField
          label={`Depth at the second ${numbers[0].label}`}
          quantity="length"
          path={`${path}.depth[1]`}
          value={to}
          min={0}
          step={0.1}
          onCommit={(depth) => edit('depth of a patch', { ...mark, depth: [from, depth] }, 'depth')}
        />
      )}
      <SwitchField
        label={`Deeper towards one ${numbers[0].label}`}
        value={isSloped}
        onCommit={(sloped) =>
          edit('slope of a patch', { ...mark, depth: sloped ? [from, to] : from }, 'slope')
        }
      />
      <BlendField mark={mark} edit={edit} />
    </div>
  );
}
