import { Label, Radio, RadioGroup, Text } from 'react-aria-components';
import { type Fault, faultText } from '../../geometry/job/fault.ts';
import { FaultList } from './FaultList.tsx';
import { useRefusal } from './use-refusal.ts';
import './field.css';
import './ChoiceField.css';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

export interface ChoiceFieldProps<Value extends string> {
  readonly label: string;
  readonly choices: readonly Choice<Value>[];
  readonly value: Value;
  readonly help?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  /** Takes the choice at once; the faults, [] when it was taken. */
  readonly onCommit: (value: Value) => readonly Fault[];
}

/** One of a few, all in sight. A choice that is refused stays unchosen, with the reason beside it. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>) {
  const { label, choices, value, help, isDisabled = false, onCommit } = props;
  const refusal = useRefusal(value);
  const choose = (chosen: string) => {
    const choice = choices.find((known) => known.value === chosen);
    if (choice !== undefined) refusal.set(onCommit(choice.value).map(faultText));
  };
  return (
    <RadioGroup
      className="field"
      orientation="horizontal"
      value={value}
      onChange={choose}
      isInvalid={refusal.faults.length > 0}
      isDisabled={isDisabled}
      validationBehavior="aria"
    >
      <Label className="field-label">{label}</Label>
      <div className="choice-row">
        {choices.map((choice) => (
          <Radio key={choice.value} className="choice" value={choice.value}>
            {choice.label}
          </Radio>
        ))}
      </div>
      {help !== undefined && (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FaultList faults={refusal.faults} />
    </RadioGroup>
  );
}
