import { SwitchField as Field, SwitchButton, Text } from 'react-aria-components';
import { type Fault, faultText } from '../../geometry/job/fault.ts';
import { FaultList } from './FaultList.tsx';
import { useRefusal } from './use-refusal.ts';
import './field.css';
import './SwitchField.css';

export interface SwitchFieldProps {
  readonly label: string;
  readonly value: boolean;
  readonly help?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  /** Takes it at once; the faults, [] when it was taken. */
  readonly onCommit: (value: boolean) => readonly Fault[];
}

/** Something that is or is not so. A refused change leaves the switch where it was, with the reason beside it. */
export function SwitchField({ label, value, help, isDisabled = false, onCommit }: SwitchFieldProps) {
  const refusal = useRefusal(value);
  return (
    <Field
      className="field"
      isSelected={value}
      onChange={(isOn) => refusal.set(onCommit(isOn).map(faultText))}
      isInvalid={refusal.faults.length > 0}
      isDisabled={isDisabled}
      validationBehavior="aria"
    >
      <SwitchButton className="switch">
        <span className="switch-track" aria-hidden="true" />
        {label}
      </SwitchButton>
      {help !== undefined && (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FaultList faults={refusal.faults} />
    </Field>
  );
}
