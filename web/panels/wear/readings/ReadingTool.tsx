import { Table2 } from 'lucide-react';
import { Button } from 'react-aria-components';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { counted } from '../../../../geometry/sheet/figure.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { useView, viewStore } from '../../../view/view-store.ts';
import { faceInUse } from '../face-words.ts';
import { GridWalk } from './GridWalk.tsx';
import { KindChoice } from './KindChoice.tsx';
import { PasteBox } from './PasteBox.tsx';
import { readingsInHand, readingsOf } from './reading-edits.ts';
import { chooseMode, useEntry } from './reading-entry.ts';
import { SingleReading } from './SingleReading.tsx';

interface ReadingToolProps {
  readonly part: PartFile;
  readonly index: number;
}

const MODES = [
  { value: 'single', label: 'Single' },
  { value: 'walk', label: 'Grid' },
  { value: 'paste', label: 'Paste' },
] as const;

/** Putting gauge readings in: by tapping and typing, along a grid, or as a table. */
export function ReadingTool({ part, index }: ReadingToolProps) {
  const face = faceInUse(
    part,
    useView((view) => view.face),
  );
  const mode = useEntry((state) => state.mode);
  const note = useEntry((state) => state.note);
  const on = { part, index, face };
  return (
    <>
      <ChoiceField
        label="Put readings in"
        choices={MODES}
        value={mode}
        onCommit={(chosen) => {
          chooseMode(chosen);
          return [];
        }}
      />
      {mode === 'single' && <SingleReading {...on} />}
      {mode === 'walk' && <GridWalk {...on} />}
      {mode === 'paste' && <PasteBox key={`${part.id} ${face}`} {...on} />}
      <p className="quiet" role="status">
        {note}
      </p>
      <KindChoice />
      <SoFar part={part} face={face} />
    </>
  );
}

/** How many readings the face has, and the way to their table. */
function SoFar({ part, face }: { readonly part: PartFile; readonly face: string }) {
  const selected = useView((view) => view.selectedMark);
  const at = readingsInHand(part, face, selected);
  const count = readingsOf(part, at).length;
  if (at === null || selected === at) return null;
  return (
    <div className="buttons">
      <Button className="button" onPress={() => viewStore.getState().set({ selectedMark: at })}>
        <Table2 aria-hidden="true" />
        {`Open the table of ${counted(count, 'reading', 'readings')}`}
      </Button>
    </div>
  );
}
