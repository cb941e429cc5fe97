import { GENERIC_COAT, GENERIC_FILLER } from '../../../geometry/job/defaults.ts';
import type { Fault } from '../../../geometry/job/fault.ts';
import type { CoatFile, FillerFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';

/** Changes one field of a material: what stands behind "Undo", the change, and the field. */
export type MaterialEdit<Material> = (
  label: string,
  change: (material: Material) => Material,
  field: string,
) => readonly Fault[];

export function useFillerEdit(): MaterialEdit<FillerFile> {
  const edit = useJob((state) => state.edit);
  return (label, change, field) =>
    edit(label, (job) => ({ ...job, filler: change(job.filler ?? GENERIC_FILLER) }), `filler.${field}`);
}

export function useCoatEdit(): MaterialEdit<CoatFile> {
  const edit = useJob((state) => state.edit);
  return (label, change, field) =>
    edit(label, (job) => ({ ...job, coat: change(job.coat ?? GENERIC_COAT) }), `coat.${field}`);
}
