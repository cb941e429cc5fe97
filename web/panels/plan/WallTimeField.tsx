import { X } from 'lucide-react';
import type { KeyboardEvent } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import { type Fault, faultText } from '../../../geometry/job/fault.ts';
import { FaultList } from '../../fields/FaultList.tsx';
import { putDown, takeInHand, useHeldText } from '../../fields/use-held-text.ts';
import '../../fields/field.css';
import './WallTimeField.css';

interface WallTimeFieldProps {
  readonly label: string;
  /** A day and a time, or a time of every day. */
  readonly kind: 'datetime-local' | 'time';
  /** In the job file: `plan.start`. */
  readonly path: string;
  /** `2026-12-01T07:00` or `07:00`; undefined when the job does not say. */
  readonly value: string | undefined;
  readonly help?: string | undefined;
  /** It stands for itself: no other time holds when it is empty. */
  readonly isNeeded?: boolean | undefined;
  /** Puts it into the job, or takes it out; the faults, [] when it was taken. */
  readonly onCommit: (value: string | undefined) => readonly Fault[];
}

/** A time by the clock on the wall. What is whole is taken at once, as a wheel or a calendar has no Enter; emptied, it leaves the job. */
export function WallTimeField(props: WallTimeFieldProps) {
  const { label, kind, path, value, help, isNeeded = false, onCommit } = props;
  const held = useHeldText(path, value ?? '');
  const commit = (text: string, isHalf: boolean) => {
    const fault = faultOf(text, { kind, isHalf, isNeeded });
    held.settle(text, fault === null ? onCommit(text === '' ? undefined : text).map(faultText) : [fault]);
  };
  const finish = (input: HTMLInputElement) => {
    if (held.isTyped || input.validity.badInput) commit(input.value, input.validity.badInput);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') finish(event.currentTarget);
    if (event.key === 'Escape') held.restore();
  };
  return (
    <TextField
      className="field wall-time"
      type={kind}
      value={held.text}
      onChange={(text) => (isWhole(text, kind) ? commit(text, false) : held.type(text))}
      isInvalid={held.faults.length > 0}
      validationBehavior="aria"
    >
      <Label className="field-label">{label}</Label>
      <div className="wall-time-box">
        <Input
          className="field-text"
          max={kind === 'time' ? undefined : '2099-12-31T23:59'}
          onFocus={() => takeInHand(path)}
          onBlur={(event) => {
            putDown(path);
            finish(event.currentTarget);
          }}
          onKeyDown={onKeyDown}
        />
        {!isNeeded && value !== undefined && (
          <Button
            className="button button-bare"
            aria-label={`Clear: ${label}`}
            onPress={() => commit('', false)}
          >
            <X aria-hidden="true" />
          </Button>
        )}
      </div>
      {help !== undefined && (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FaultList faults={held.faults} />
    </TextField>
  );
}

/** While a year is typed it passes through 0002, 0020 and 0202. */
const FIRST_YEAR = '2000';

function isWhole(text: string, kind: WallTimeFieldProps['kind']): boolean {
  return text !== '' && (kind === 'time' || text >= FIRST_YEAR);
}

function faultOf(
  text: string,
  {
    kind,
    isHalf,
    isNeeded,
  }: { readonly kind: WallTimeFieldProps['kind']; readonly isHalf: boolean; readonly isNeeded: boolean },
): string | null {
  const whole = kind === 'time' ? 'a time, like 07:00' : 'a day and a time';
  if (isHalf) return `This is not whole. Give ${whole}, or empty the field.`;
  if (text === '') return isNeeded ? `This is empty. Give ${whole}.` : null;
  return isWhole(text, kind) ? null : `The year ${Number(text.slice(0, 4))} is long gone. Type four digits.`;
}
