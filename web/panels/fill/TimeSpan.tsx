import type { Fault } from '../../../geometry/job/fault.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SwitchField } from '../../fields/SwitchField.tsx';

export interface SpanFile {
  readonly from: number;
  readonly to: number;
  readonly at: number;
}

interface TimeSpanProps {
  /** "Firms up": what begins the labels. */
  readonly word: string;
  /** What the switch says. */
  readonly known: string;
  readonly path: string;
  readonly value: SpanFile | undefined;
  readonly start: SpanFile;
  readonly help?: string;
  /** @param field  what was typed: `from`; '' for the switch */
  readonly onCommit: (value: SpanFile | undefined, field: string) => readonly Fault[];
}

/** From when to when something may be done, and at what temperature; or that the data sheet does not say. */
export function TimeSpan({ word, known, path, value, start, help, onCommit }: TimeSpanProps) {
  return (
    <>
      <SwitchField
        label={known}
        value={value !== undefined}
        help={help}
        onCommit={(isKnown) => onCommit(isKnown ? start : undefined, '')}
      />
      {value !== undefined && (
        <>
          <QuantityField
            label={`${word} from`}
            quantity="minutes"
            path={`${path}.from`}
            value={value.from}
            min={0}
            onCommit={(from) => onCommit({ ...value, from }, 'from')}
          />
          <QuantityField
            label={`${word} to`}
            quantity="minutes"
            path={`${path}.to`}
            value={value.to}
            min={0}
            onCommit={(to) => onCommit({ ...value, to }, 'to')}
          />
          <QuantityField
            label={`${word}: quoted at`}
            quantity="temperature"
            path={`${path}.at`}
            value={value.at}
            onCommit={(at) => onCommit({ ...value, at }, 'at')}
          />
        </>
      )}
    </>
  );
}
