import type { Fault } from '../../../geometry/job/fault.ts';
import type { ImpellerFile } from '../../../geometry/job/job-file.ts';
import { useJob } from '../../job/job-store.ts';
import { type ImpellerChange, withImpeller } from './part-edits.ts';

/** Changes an impeller: what stands behind "Undo", the change, and the field's path when a burst of changes is one step. */
export type ImpellerEdit = (label: string, change: ImpellerChange, path?: string) => readonly Fault[];

export function useImpellerEdit(index: number): ImpellerEdit {
  const edit = useJob((state) => state.edit);
  return (label, change, path) => edit(label, (job) => withImpeller(job, index, change), path);
}

export type VanesFile = ImpellerFile['vanes'];

/** Changes one size of the vanes, which a job always has. */
export function setVanes(edit: ImpellerEdit, path: string) {
  return <Name extends keyof VanesFile>(
    label: string,
    name: Name,
    value: VanesFile[Name],
  ): readonly Fault[] =>
    edit(label, (old) => ({ ...old, vanes: { ...old.vanes, [name]: value } }), `${path}.vanes.${name}`);
}
