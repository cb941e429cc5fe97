import { Minus, Plus } from 'lucide-react';
import type { FocusEvent, KeyboardEvent, ReactNode } from 'react';
import { Button, Group, Input, Label, Text, TextField } from 'react-aria-components';
import { type Fault, faultText } from '../../geometry/job/fault.ts';
import { useView } from '../view/view-store.ts';
import { FaultList } from './FaultList.tsx';
import { formatQuantity } from './format-quantity.ts';
import { parseQuantity } from './parse-quantity.ts';
import { type Quantity, shownUnit } from './quantity-units.ts';
import { rangeText } from './range-text.ts';
import { stepQuantity } from './step-quantity.ts';
import { putDown, takeInHand, useHeldText } from './use-held-text.ts';
import './field.css';
import './QuantityField.css';

export interface QuantityFieldProps {
  readonly label: string;
  readonly quantity: Quantity;
  /** In the file's unit, as are `min`, `max` and `step`; null shows an empty field. */
  readonly value: number | null;
  /** In the job file: `parts[0].boreDiameter`. */
  readonly path: string;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** What one press of an arrow or a button changes; otherwise the quantity's own. */
  readonly step?: number | undefined;
  /** One sentence below the field. */
  readonly help?: string | undefined;
  readonly isDisabled?: boolean | undefined;
  /** Puts the value into the job; the faults, [] when it was taken. */
  readonly onCommit: (value: number) => readonly Fault[];
  /** What an emptied field does; without it a field may not be empty. */
  readonly onClear?: (() => readonly Fault[]) | undefined;
}

/**
 * A number with its unit. The text is the person's until Enter or until the field is left; what cannot be taken stays, with the
 * reason beside it. Looking at the field, leaving it or switching units never changes the value.
 */
export function QuantityField(props: QuantityFieldProps) {
  const { label, quantity, value, path, min, max, onCommit, onClear, isDisabled = false } = props;
  const units = useView((view) => view.units);
  const show = (size: number) => formatQuantity(size, quantity, units, { as: 'typed' });
  const shown = value === null ? '' : show(value);
  const held = useHeldText(path, shown);
  const range = { min, max };
  const isBounded = min !== undefined || max !== undefined;

  const commit = () => {
    if (held.text === shown) return held.restore();
    if (onClear !== undefined && held.text.trim() === '')
      return held.settle(held.text, onClear().map(faultText));
    const parsed = parseQuantity(held.text, quantity, units, range);
    held.settle(held.text, 'fault' in parsed ? [parsed.fault] : onCommit(parsed.value).map(faultText));
  };
  const step = (steps: number) => {
    // The value itself, not its rounded text, unless something else was typed.
    const isAsShown = held.text === shown && value !== null;
    const parsed = isAsShown ? { value } : parseQuantity(held.text, quantity, units, range);
    if ('fault' in parsed) return held.settle(held.text, [parsed.fault]);
    const next = stepQuantity(parsed.value, steps, quantity, units, { ...range, step: props.step });
    held.settle(show(next), onCommit(next).map(faultText));
  };
  const leave = (event: FocusEvent) => {
    if (event.currentTarget.contains(event.relatedTarget)) return;
    putDown(path);
    if (held.isTyped) commit();
  };

  return (
    <TextField
      className="field quantity-field"
      value={held.text}
      onChange={held.type}
      isInvalid={held.faults.length > 0}
      isDisabled={isDisabled}
      validationBehavior="aria"
      // Fractions of an inch need a slash, which number pads do not have.
      inputMode={quantity === 'length' && units === 'in' ? 'text' : 'decimal'}
      enterKeyHint="done"
      autoComplete="off"
      spellCheck="false"
    >
      <Label className="field-label">{label}</Label>
      <Group className="quantity-box" role="presentation" onFocus={() => takeInHand(path)} onBlur={leave}>
        <StepButton label={`${label}: less`} isDisabled={isDisabled} onPress={() => step(-1)}>
          <Minus aria-hidden="true" />
        </StepButton>
        <Input
          className="quantity-input"
          onFocus={(event) => event.currentTarget.select()}
          onKeyDown={(event) => onKey(event, { commit, step, restore: held.restore })}
        />
        <span className="quantity-unit" aria-hidden="true">
          {shownUnit(quantity, units).symbol}
        </span>
        <StepButton label={`${label}: more`} isDisabled={isDisabled} onPress={() => step(1)}>
          <Plus aria-hidden="true" />
        </StepButton>
      </Group>
      <Text slot="description" className="field-help">
        {props.help}{' '}
        <span className={isBounded ? undefined : 'unseen'}>{rangeText(range, quantity, units)}</span>
      </Text>
      <FaultList faults={held.faults} />
    </TextField>
  );
}

interface KeyActions {
  commit(): void;
  step(steps: number): void;
  restore(): void;
}

function onKey(event: KeyboardEvent<HTMLInputElement>, { commit, step, restore }: KeyActions): void {
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  if (event.key === 'Enter') commit();
  else if (event.key === 'Escape') restore();
  else if (event.key === 'ArrowUp') step(1);
  else if (event.key === 'ArrowDown') step(-1);
  else return;
  event.preventDefault();
}

interface StepButtonProps {
  readonly label: string;
  readonly isDisabled: boolean;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

/** Out of the tab order: the arrow keys in the field do the same. */
function StepButton({ label, isDisabled, onPress, children }: StepButtonProps) {
  return (
    <Button
      className="quantity-step"
      aria-label={label}
      excludeFromTabOrder
      isDisabled={isDisabled}
      onPress={onPress}
    >
      {children}
    </Button>
  );
}
