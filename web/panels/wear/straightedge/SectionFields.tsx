import type { Fault } from '../../../../geometry/job/fault.ts';
import type { PartFile, SectionFile } from '../../../../geometry/job/job-file.ts';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { sentenceCase } from '../../sentence-case.ts';
import { faceNumbers } from '../face-words.ts';

interface SectionFieldsProps {
  readonly section: SectionFile;
  readonly part: PartFile;
  /** In the job file: `parts[0].sections[2]`. */
  readonly path: string;
  readonly edit: (section: SectionFile, field: string) => readonly Fault[];
}

/** Where a section lies, in numbers: both ends of a line, or the one value of a spoke or a ring. */
export function SectionFields({ section, part, path, edit }: SectionFieldsProps) {
  const numbers = faceNumbers(part, section.face);
  if (section.kind !== 'line') {
    const { label, quantity } = numbers[section.kind === 'along-first' ? 1 : 0];
    return (
      <div className="rows">
        <QuantityField
          label={sentenceCase(label)}
          quantity={quantity}
          path={`${path}.at`}
          value={section.at}
          onCommit={(at) => edit({ ...section, at }, 'at')}
        />
      </div>
    );
  }
  return (
    <div className="rows">
      {(['from', 'to'] as const).flatMap((end) =>
        ([0, 1] as const).map((i) => (
          <QuantityField
            key={`${end}-${i}`}
            label={`${end === 'from' ? 'A' : 'B'}, ${numbers[i].label}`}
            quantity={numbers[i].quantity}
            path={`${path}.${end}[${i}]`}
            value={section[end][i]}
            onCommit={(value) =>
              edit(
                { ...section, [end]: i === 0 ? [value, section[end][1]] : [section[end][0], value] },
                `${end}[${i}]`,
              )
            }
          />
        )),
      )}
    </div>
  );
}
