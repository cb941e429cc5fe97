import { type KeyboardEvent, useId, useRef } from 'react';
import { flushSync } from 'react-dom';
import { type Fault, faultText } from '../../../../geometry/job/fault.ts';
import { formatQuantity } from '../../../fields/format-quantity.ts';
import { parseQuantity } from '../../../fields/parse-quantity.ts';
import type { Quantity } from '../../../fields/quantity-units.ts';
import { useHeldText } from '../../../fields/use-held-text.ts';
import { useView } from '../../../view/view-store.ts';

interface ReadingCellProps {
  readonly label: string;
  readonly quantity: Quantity;
  /** In the job file. */
  readonly path: string;
  readonly value: number;
  readonly onCommit: (value: number) => readonly Fault[];
  /** One row down, or up with -1. */
  readonly onMove: (by: 1 | -1) => void;
}

/** One number of a reading in its table: a field as plain as two thousand of them have to be. */
export function ReadingCell({ label, quantity, path, value, onCommit, onMove }: ReadingCellProps) {
  const units = useView((view) => view.units);
  const shown = formatQuantity(value, quantity, units, { as: 'typed' });
  const held = useHeldText(path, shown);
  const isSettled = useRef(false);
  const faultId = useId();
  const commit = (): boolean => {
    if (held.text === shown) {
      held.restore();
      return true;
    }
    const parsed = parseQuantity(held.text, quantity, units);
    const faults = 'fault' in parsed ? [parsed.fault] : onCommit(parsed.value).map(faultText);
    held.settle(held.text, faults);
    return faults.length === 0;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const by = event.key === 'ArrowUp' || (event.key === 'Enter' && event.shiftKey) ? -1 : 1;
    if (event.key === 'Escape') held.restore();
    else if (event.key === 'Enter' || event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      // The text is settled before the cell goes with its page: one that is still typed in would be kept as a draft.
      if (flushSync(commit)) {
        // Leaving the cell must not take the text a second time.
        isSettled.current = true;
        onMove(by);
      }
    } else return;
    event.preventDefault();
  };
  return (
    <>
      <input
        className="reading-cell"
        aria-label={label}
        aria-invalid={held.faults.length > 0 || undefined}
        aria-describedby={held.faults.length > 0 ? faultId : undefined}
        inputMode={quantity === 'length' && units === 'in' ? 'text' : 'decimal'}
        autoComplete="off"
        spellCheck="false"
        value={held.text}
        onChange={({ target }) => held.type(target.value)}
        onFocus={({ target }) => {
          isSettled.current = false;
          target.select();
        }}
        onBlur={() => {
          if (held.isTyped && !isSettled.current) commit();
        }}
        onKeyDown={onKeyDown}
      />
      {held.faults.length > 0 && (
        <div className="field-faults" id={faultId} role="alert">
          {held.faults.map((fault) => (
            <p key={fault}>{fault}</p>
          ))}
        </div>
      )}
    </>
  );
}
