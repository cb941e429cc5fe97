import type { PartFile } from '../../geometry/job/job-file.ts';
import { useJob } from '../job/job-store.ts';
import { useView } from '../view/view-store.ts';

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
