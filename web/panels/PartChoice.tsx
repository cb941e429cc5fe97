import { useEffect, useRef } from 'react';
import { ToggleButton, ToggleButtonGroup } from 'react-aria-components';
import { useJob } from '../job/job-store.ts';
import { choosePart, useChosenPart } from './chosen-part.ts';
import './PartChoice.css';

/** Which part is in hand; nothing to choose when there is one. */
export function PartChoice() {
  const { part } = useChosenPart();
  const parts = useJob((state) => state.job.parts);
  const group = useRef<HTMLDivElement>(null);
  // Another part may come into hand elsewhere: added below, or marked on its picture.
  // biome-ignore lint/correctness/useExhaustiveDependencies: each part that comes into hand is shown to be chosen
  useEffect(() => group.current?.scrollIntoView({ block: 'nearest' }), [part.id]);
  if (parts.length < 2) return null;
  return (
    <ToggleButtonGroup
      className="part-choice"
      ref={group}
      aria-label="Part"
      selectionMode="single"
      disallowEmptySelection
      selectedKeys={[part.id]}
      onSelectionChange={([id]) => choosePart(String(id))}
    >
      {parts.map(({ id }) => (
        <ToggleButton key={id} id={id} className="choice">
          {id}
        </ToggleButton>
      ))}
    </ToggleButtonGroup>
  );
}
