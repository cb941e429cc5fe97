import type { Fault } from '../../../geometry/job/fault.ts';
import type { MarkFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';
import { withMark } from './mark-edits.ts';

/** Where a mark stands: in which part, and where in its list. */
export interface MarkPlace {
  readonly part: number;
  readonly at: number;
  readonly of: number;
}

/** Puts a changed mark in the place of the old one: what stands behind "Undo", the mark, and which of its fields it was. */
export type MarkEdit = (label: string, mark: MarkFile, field: string) => readonly Fault[];

export function useMarkEdit({ part, at }: MarkPlace): MarkEdit {
  const edit = useJob((state) => state.edit);
  return (label, mark, field) =>
    edit(label, (job) => withMark(job, part, at, mark), `${pathOf({ part, at })}.${field}`);
}

/** Path of a mark in the job file. */
export function pathOf({ part, at }: Pick<MarkPlace, 'part' | 'at'>): string {
  return `parts[${part}].wear[${at}]`;
}
