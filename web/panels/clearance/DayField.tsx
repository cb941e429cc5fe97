import type { KeyboardEvent } from 'react';
import { Input, Label, TextField } from 'react-aria-components';
import { type Fault, faultText } from '../../../geometry/job/fault.ts';
import { FaultList } from '../../fields/FaultList.tsx';
import { putDown, takeInHand, useHeldText } from '../../fields/use-held-text.ts';
import '../../fields/field.css';

interface DayFieldProps {
  readonly label: string;
  /** In the job file: `history.repairs[0].date`. */
  readonly path: string;
  /** `2026-12-01`. */
  readonly value: string;
  /** Puts it into the job; the faults, [] when it was taken. */
  readonly onCommit: (day: string) => readonly Fault[];
}

/** While a year is typed it passes through 0002, 0020 and 0202. */
const FIRST_DAY = '1900-01-01';

/** A day of the calendar. A whole one is taken at once, as a calendar has no Enter. */
export function DayField({ label, path, value, onCommit }: DayFieldProps) {
  const held = useHeldText(path, value);
  const isWhole = (text: string) => text >= FIRST_DAY;
  const commit = (text: string) =>
    held.settle(
      text,
      isWhole(text) ? onCommit(text).map(faultText) : ['This is no whole day. Give day, month and year.'],
    );
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') commit(event.currentTarget.value);
    if (event.key === 'Escape') held.restore();
  };
  return (
    <TextField
      className="field"
      type="date"
      value={held.text}
      onChange={(text) => (isWhole(text) ? commit(text) : held.type(text))}
      isInvalid={held.faults.length > 0}
      validationBehavior="aria"
    >
      <Label className="field-label">{label}</Label>
      <Input
        className="field-text"
        max="2099-12-31"
        onFocus={() => takeInHand(path)}
        onBlur={(event) => {
          putDown(path);
          if (held.isTyped || event.currentTarget.validity.badInput) commit(event.currentTarget.value);
        }}
        onKeyDown={onKeyDown}
      />
      <FaultList faults={held.faults} />
    </TextField>
  );
}
