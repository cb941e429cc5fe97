import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../../geometry/job/fault.ts';
import type { PartFile } from '../../../../geometry/job/job-file.ts';
import { counted } from '../../../../geometry/sheet/figure.ts';
import { useJob } from '../../../job/job-store.ts';
import { viewStore } from '../../../view/view-store.ts';
import { Refusal } from '../../Refusal.tsx';
import { everywhere, lastAreaFor, withinArea } from './reading-edits.ts';

interface ReadingsWithinProps {
  readonly part: PartFile;
  /** Place of the part in the job, and of the readings in its list of wear. */
  readonly index: number;
  readonly at: number;
}

/** Where the readings hold: on the whole face, or within an outline that was drawn with the area tool. */
export function ReadingsWithin({ part, index, at }: ReadingsWithinProps) {
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const mark = part.wear[at];
  if (mark?.kind !== 'readings') return null;
  const area = lastAreaFor(part.wear, mark);
  const hold = (within: number) => {
    const found = edit('where readings hold', (job) => withinArea(job, index, at, within));
    setFaults(found);
    // The area goes, and what stands after it moves up.
    if (found.length === 0 && within < at) viewStore.getState().set({ selectedMark: at - 1 });
  };
  return (
    <div>
      <p className="quiet">
        {mark.within === undefined
          ? 'They hold on the whole face.'
          : `They hold within an outline of ${counted(mark.within.length, 'corner', 'corners')}.`}
        {area === null && mark.within === undefined && ' To limit them, draw an area on the face first.'}
      </p>
      <div className="buttons">
        {area !== null && (
          <Button className="button" onPress={() => hold(area)}>
            Hold within area {area + 1} only
          </Button>
        )}
        {mark.within !== undefined && (
          <Button
            className="button"
            onPress={() => setFaults(edit('where readings hold', (job) => everywhere(job, index, at)))}
          >
            Hold on the whole face
          </Button>
        )}
      </div>
      <Refusal faults={faults} />
    </div>
  );
}
