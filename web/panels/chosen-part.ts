import type { PartFile } from '../../geometry/job/job-file.ts';
import { jobStore, useJob } from '../job/job-store.ts';
import { useView, viewStore } from '../view/view-store.ts';

export interface ChosenPart {
  readonly part: PartFile;
  /** Its place in the job's list. */
  readonly index: number;
}

/** The part the panels show: the chosen one, or the first when the job has it no more. */
export function useChosenPart(): ChosenPart {
  const parts = useJob((state) => state.job.parts);
  const id = useView((view) => view.part);
  const index = Math.max(
    0,
    parts.findIndex((part) => part.id === id),
  );
  return { part: parts[index], index };
}

/** Takes a part in hand: its likeliest face, none of its marks, and no tool it has no use for. */
export function choosePart(id: string): void {
  const part = jobStore.getState().job.parts.find((known) => known.id === id);
  const { tool, set } = viewStore.getState();
  set({
    part: id,
    face: part === undefined ? 'face' : firstFace(part),
    selectedMark: null,
    tool: tool === 'edge' && part?.kind !== 'impeller' ? 'turn' : tool,
  });
}

/** The face of a part that is most likely to be marked. */
export function firstFace(part: PartFile): string {
  return part.kind === 'wear-plate' ? 'face' : 'vane-1/pressure';
}
