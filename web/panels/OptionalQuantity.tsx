import type { Fault } from '../../geometry/job/fault.ts';
import { QuantityField, type QuantityFieldProps } from '../fields/QuantityField.tsx';
import { SwitchField } from '../fields/SwitchField.tsx';

interface OptionalQuantityProps extends Omit<QuantityFieldProps, 'onCommit' | 'value'> {
  /** What the switch says: "The least thickness is known". */
  readonly known: string;
  readonly value: number | undefined;
  /** Where the number starts when it is switched on. */
  readonly start: number;
  /** Takes the number, or undefined when it is not known. */
  readonly onCommit: (value: number | undefined) => readonly Fault[];
}

/** A number the job can do without: a switch, and the field while it is on. */
export function OptionalQuantity({ known, value, start, onCommit, ...field }: OptionalQuantityProps) {
  return (
    <>
      <SwitchField
        label={known}
        value={value !== undefined}
        help={value === undefined ? field.help : undefined}
        onCommit={(isKnown) => onCommit(isKnown ? start : undefined)}
      />
      {value !== undefined && <QuantityField {...field} value={value} onCommit={onCommit} />}
    </>
  );
}
