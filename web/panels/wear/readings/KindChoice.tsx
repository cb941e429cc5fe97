import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import type { ReadingKind } from '../../../tools/reading-depth.ts';
import { setEntry, useEntry } from './reading-entry.ts';

const KINDS = [
  { value: 'depth', label: 'Depth' },
  { value: 'two-readings', label: 'Two gauge readings' },
  { value: 'wall-left', label: 'Wall left' },
] as const;

const HELP: Readonly<Record<ReadingKind, string>> = {
  depth: 'The depth below the sound surface, as the gauge shows it.',
  'two-readings': 'Depth = reading at the place less reading on sound metal, from one bar.',
  'wall-left': 'Depth = wall as new less wall left, by ultrasonic gauge.',
};

/** What the gauge tells. Only the depth goes into the job. */
export function KindChoice() {
  const kind = useEntry((state) => state.kind);
  const reference = useEntry((state) => state.reference);
  return (
    <>
      <ChoiceField
        label="What was read"
        choices={KINDS}
        value={kind}
        help={HELP[kind]}
        onCommit={(chosen) => {
          setEntry({ kind: chosen, faults: [] });
          return [];
        }}
      />
      {kind === 'two-readings' && (
        <div className="rows">
          <QuantityField
            label="Reading on sound metal"
            quantity="length"
            path="reading.reference"
            value={reference}
            step={0.05}
            onCommit={(size) => {
              setEntry({ reference: size, faults: [] });
              return [];
            }}
          />
        </div>
      )}
    </>
  );
}
