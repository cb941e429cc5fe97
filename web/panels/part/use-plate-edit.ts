import type { Fault } from '../../../geometry/job/fault.ts';
import { useJob } from '../../job/job-store.ts';
import { type PlateChange, withPlate } from './part-edits.ts';

/** Changes a plate: what stands behind "Undo", the change, and the field's path when a burst of changes is one step. */
export type PlateEdit = (label: string, change: PlateChange, path?: string) => readonly Fault[];

export function usePlateEdit(index: number): PlateEdit {
  const edit = useJob((state) => state.edit);
  return (label, change, path) => edit(label, (job) => withPlate(job, index, change), path);
}
