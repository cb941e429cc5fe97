import type { Fault } from '../../geometry/job/fault.ts';
import type { MarkFile } from '../../geometry/job/job-file.ts';
import { notify } from '../files/notice-store.ts';
import { jobStore } from '../job/job-store.ts';

/**
 * Adds a mark to the end of a part's list: one step to undo. A mark the job cannot take is refused with a notice.
 * @returns whether it was taken
 */
export function addMark(part: string, mark: MarkFile): boolean {
  const faults = jobStore.getState().edit(stepName(mark), (job) => ({
    ...job,
    parts: job.parts.map((known) => (known.id === part ? { ...known, wear: [...known.wear, mark] } : known)),
  }));
  if (faults.length > 0) {
    const title = `The ${stepName(mark)} was not taken.`;
    notify({ name: 'mark', kind: 'fault', title, sentences: faults.map(sentence) });
  }
  return faults.length === 0;
}

/** What the mark is called behind "Undo". */
function stepName(mark: MarkFile): string {
  if (mark.kind === 'stroke') return mark.clear === true ? 'clearing stroke' : 'brush stroke';
  return mark.kind === 'smooth' ? 'smoothing stroke' : mark.kind;
}

/** A fault of a drawn mark: nobody typed the place in the list, so only the name of the field is said. */
function sentence({ field, found, needs, problem }: Fault): string {
  const name = field.slice(field.lastIndexOf('.') + 1);
  return `${name}: ${problem ?? `${found} is not ${needs}`}.`;
}
