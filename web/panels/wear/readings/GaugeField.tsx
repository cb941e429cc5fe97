import { Diff } from 'lucide-react';
import { type Ref, useImperativeHandle, useRef } from 'react';
import { Button, Group, Input, Label, Text, TextField } from 'react-aria-components';
import { FaultList } from '../../../fields/FaultList.tsx';
import { shownUnit } from '../../../fields/quantity-units.ts';
import { useView } from '../../../view/view-store.ts';
import { setEntry, useEntry } from './reading-entry.ts';
import '../../../fields/field.css';
import '../../../fields/QuantityField.css';
import './GaugeField.css';

interface GaugeFieldProps {
  readonly label: string;
  /** The sum that makes the depth; '' for none. */
  readonly sum: string;
  readonly onEnter: () => void;
  /** @returns false where there was nothing to give up */
  readonly onEscape: () => void;
  readonly ref?: Ref<GaugeFieldHandle>;
}

export interface GaugeFieldHandle {
  focus(): void;
}

/** The reading of the gauge, in figures that are read at arm's length. Its text stays until it is put down. */
export function GaugeField({ label, sum, onEnter, onEscape, ref }: GaugeFieldProps) {
  const text = useEntry((state) => state.reading);
  const faults = useEntry((state) => state.faults);
  const units = useView((view) => view.units);
  const input = useRef<HTMLInputElement>(null);
  useImperativeHandle(ref, () => ({ focus: () => input.current?.focus() }), []);
  return (
    <TextField
      className="field quantity-field gauge-field"
      value={text}
      onChange={(reading) => setEntry({ reading, faults: [] })}
      isInvalid={faults.length > 0}
      validationBehavior="aria"
      // Fractions of an inch need a slash, which number pads do not have.
      inputMode={units === 'in' ? 'text' : 'decimal'}
      enterKeyHint="done"
      autoComplete="off"
      spellCheck="false"
    >
      <Label className="field-label">{label}</Label>
      <Group className="quantity-box gauge-box" role="presentation">
        <Button
          className="quantity-step"
          aria-label="Change the sign"
          excludeFromTabOrder
          onPress={() => {
            setEntry({ reading: withOtherSign(text), faults: [] });
            input.current?.focus();
          }}
        >
          <Diff aria-hidden="true" />
        </Button>
        <Input
          className="quantity-input gauge-input"
          ref={input}
          onKeyDown={(event) => {
            if (event.altKey || event.ctrlKey || event.metaKey) return;
            if (event.key === 'Enter') onEnter();
            else if (event.key === 'Escape') onEscape();
            else return;
            event.preventDefault();
          }}
        />
        <span className="quantity-unit gauge-unit" aria-hidden="true">
          {shownUnit('length', units).symbol}
        </span>
      </Group>
      <Text slot="description" className="field-help gauge-sum">
        {sum}
      </Text>
      <FaultList faults={faults} />
    </TextField>
  );
}

/** Number pads have no minus, and a gauge may read a little below zero. */
function withOtherSign(text: string): string {
  return /^\s*[-\u2212]/.test(text) ? text.replace(/^\s*[-\u2212]/, '') : `-${text.trimStart()}`;
}
