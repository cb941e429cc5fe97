import type { FocusEvent } from 'react';
import { Input, Label, Text, TextArea, TextField } from 'react-aria-components';
import { type Fault, faultText } from '../../geometry/job/fault.ts';
import { FaultList } from './FaultList.tsx';
import { putDown, takeInHand, useHeldText } from './use-held-text.ts';
import './field.css';

export interface TextInputProps {
  readonly label: string;
  readonly value: string;
  /** In the job file: `title`. */
  readonly path: string;
  readonly help?: string | undefined;
  /** Several lines; Enter then starts a new one and leaving the field commits. */
  readonly isLong?: boolean | undefined;
  readonly isDisabled?: boolean | undefined;
  /** Puts the text into the job; the faults, [] when it was taken. */
  readonly onCommit: (value: string) => readonly Fault[];
}

/** Words of the person's own: a title, a name, notes. Kept until Enter or until the field is left; refused text stays. */
export function TextInput({
  label,
  value,
  path,
  help,
  isLong = false,
  isDisabled = false,
  onCommit,
}: TextInputProps) {
  const held = useHeldText(path, value);
  const commit = () => {
    if (held.text === value) return held.restore();
    held.settle(held.text, onCommit(held.text).map(faultText));
  };
  const keys = {
    onFocus: () => takeInHand(path),
    onBlur: (_: FocusEvent) => {
      putDown(path);
      if (held.isTyped) commit();
    },
    onKeyDown: (event: { readonly key: string }) => {
      if (event.key === 'Escape') held.restore();
      if (event.key === 'Enter' && !isLong) commit();
    },
  };

  return (
    <TextField
      className="field"
      value={held.text}
      onChange={held.type}
      isInvalid={held.faults.length > 0}
      isDisabled={isDisabled}
      validationBehavior="aria"
    >
      <Label className="field-label">{label}</Label>
      {isLong ? (
        <TextArea className="field-text" rows={4} {...keys} />
      ) : (
        <Input className="field-text" {...keys} />
      )}
      {help !== undefined && (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FaultList faults={held.faults} />
    </TextField>
  );
}
