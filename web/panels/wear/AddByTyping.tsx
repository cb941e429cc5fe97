import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { WearPlateFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';
import { type ToolName, useView, viewStore } from '../../view/view-store.ts';
import { Refusal } from '../Refusal.tsx';
import { startMark, withMarks } from './mark-edits.ts';

interface AddByTypingProps {
  readonly tool: ToolName;
  readonly plate: WearPlateFile;
  readonly index: number;
}

const KINDS = ['patch', 'pit', 'area'] as const;

/** A patch, a pit or an area by its numbers alone: it appears in the middle of the face, open in the list to be typed over. */
export function AddByTyping({ tool, plate, index }: AddByTypingProps) {
  const face = useView((view) => view.face);
  const brush = useView((view) => view.brush);
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  if (tool === 'brush') return null;
  const add = (kind: (typeof KINDS)[number]) => {
    const mark = startMark(kind, plate, face, brush);
    const refused = edit(`add a ${kind}`, (job) => withMarks(job, index, (marks) => [...marks, mark]));
    setFaults(refused);
    if (refused.length === 0) viewStore.getState().set({ selectedMark: plate.wear.length });
  };
  const kinds = KINDS.filter((kind) => tool === 'turn' || tool === kind);
  return (
    <>
      <div className="buttons">
        {kinds.map((kind) => (
          <Button key={kind} className="button" onPress={() => add(kind)}>
            <Plus aria-hidden="true" />
            {tool === 'turn' ? `Type a${kind === 'area' ? 'n' : ''} ${kind}` : `Type its numbers`}
          </Button>
        ))}
      </div>
      <Refusal faults={faults} />
    </>
  );
}
