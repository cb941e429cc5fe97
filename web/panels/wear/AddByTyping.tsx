import { Plus } from 'lucide-react';
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { PartFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';
import { type ToolName, useView, viewStore } from '../../view/view-store.ts';
import { Refusal } from '../Refusal.tsx';
import { faceInUse, isEdgeOrTip } from './face-words.ts';
import { startMark, withMarks } from './mark-edits.ts';

interface AddByTypingProps {
  readonly tool: ToolName;
  readonly part: PartFile;
  readonly index: number;
}

const KINDS = ['patch', 'pit', 'area', 'edge'] as const;

/** A patch, a pit, an area or an edge by its numbers alone: it appears in the middle of the face, open in the list to be typed over. */
export function AddByTyping({ tool, part, index }: AddByTypingProps) {
  const face = faceInUse(
    part,
    useView((view) => view.face),
  );
  const brush = useView((view) => view.brush);
  const edit = useJob((state) => state.edit);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  if (tool === 'brush' || tool === 'readings') return null;
  const add = (kind: (typeof KINDS)[number]) => {
    const mark = startMark(kind, part, face, brush);
    const refused = edit(`add ${named(kind)}`, (job) => withMarks(job, index, (marks) => [...marks, mark]));
    setFaults(refused);
    if (refused.length === 0) viewStore.getState().set({ selectedMark: part.wear.length });
  };
  const isEdge = isEdgeOrTip(face);
  const kinds = KINDS.filter((kind) => (tool === 'turn' || tool === kind) && (kind !== 'edge' || isEdge));
  return (
    <>
      <div className="buttons">
        {kinds.map((kind) => (
          <Button key={kind} className="button" onPress={() => add(kind)}>
            <Plus aria-hidden="true" />
            {tool === 'turn' ? `Type ${named(kind)}` : `Type its numbers`}
          </Button>
        ))}
        {tool === 'turn' && (
          <Button className="button" onPress={() => viewStore.getState().set({ tool: 'readings' })}>
            <Plus aria-hidden="true" />
            Type gauge readings
          </Button>
        )}
      </div>
      <Refusal faults={faults} />
    </>
  );
}

const named = (kind: (typeof KINDS)[number]): string =>
  `${kind === 'area' || kind === 'edge' ? 'an' : 'a'} ${kind === 'edge' ? 'edge loss' : kind}`;
