import { ArrowDown, ArrowUp, ChevronRight, Trash2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import type { MarkFile, PartFile } from '../../../geometry/job/job-file.ts';
import { useView } from '../../view/view-store.ts';
import { MarkEditor } from './MarkEditor.tsx';
import { markSummary } from './mark-summary.ts';
import type { MarkPlace } from './use-mark-edit.ts';

interface MarkRowProps {
  readonly mark: MarkFile;
  readonly part: PartFile;
  readonly place: MarkPlace;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  readonly onMove: (by: -1 | 1) => void;
  readonly onRemove: () => void;
}

/** One mark: its words, and while it is in hand its numbers and what can be done with it. */
export function MarkRow({ mark, part, place, isOpen, onToggle, onMove, onRemove }: MarkRowProps) {
  const units = useView((view) => view.units);
  const row = useRef<HTMLLIElement>(null);
  const { what, where } = markSummary(mark, part, units);
  const panel = `mark-${place.at}`;
  // A mark can also be taken in hand on the part.
  useEffect(() => {
    if (isOpen) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isOpen]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (!event.altKey || (event.key !== 'ArrowUp' && event.key !== 'ArrowDown')) return;
    event.preventDefault();
    onMove(event.key === 'ArrowUp' ? 1 : -1);
  };
  return (
    <li className="mark" ref={row} data-open={isOpen || undefined} onKeyDown={isOpen ? onKeyDown : undefined}>
      <Button
        className="mark-words"
        aria-expanded={isOpen}
        {...(isOpen && { 'aria-controls': panel })}
        onPress={onToggle}
      >
        <span className="mark-number">{place.at + 1}</span>
        <span className="mark-text">
          {what}
          <span className="quiet">{where}</span>
        </span>
        <ChevronRight aria-hidden="true" />
      </Button>
      {isOpen && (
        <div className="mark-open" id={panel}>
          <MarkEditor mark={mark} part={part} place={place} />
          <div className="buttons">
            <Button className="button" isDisabled={place.at === place.of - 1} onPress={() => onMove(1)}>
              <ArrowUp aria-hidden="true" />
              Later
            </Button>
            <Button className="button" isDisabled={place.at === 0} onPress={() => onMove(-1)}>
              <ArrowDown aria-hidden="true" />
              Earlier
            </Button>
            <Button className="button" onPress={onRemove}>
              <Trash2 aria-hidden="true" />
              Remove
            </Button>
          </div>
        </div>
      )}
    </li>
  );
}
