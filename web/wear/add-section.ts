import type { Fault } from '../../geometry/job/fault.ts';
import type { SectionFile } from '../../geometry/job/job-file.ts';
import { notify } from '../files/notice-store.ts';
import { jobStore } from '../job/job-store.ts';

/**
 * Keeps a section in the job, at the end of the part's list: one step to undo. One the job cannot take is refused with a notice.
 * @returns its place in the list; null when it was not taken
 */
export function addSection(part: string, section: SectionFile): number | null {
  const faults = jobStore.getState().edit('section', (job) => ({
    ...job,
    parts: job.parts.map((known) =>
      known.id === part ? { ...known, sections: [...(known.sections ?? []), section] } : known,
    ),
  }));
  if (faults.length === 0) {
    const kept = jobStore.getState().job.parts.find(({ id }) => id === part)?.sections;
    return kept === undefined ? null : kept.length - 1;
  }
  notify({
    name: 'section',
    kind: 'fault',
    title: 'The section was not kept.',
    sentences: faults.map(sentence),
  });
  return null;
}

/** A fault of a line laid by hand: nobody typed its place in the list, so only the name of the field is said. */
function sentence({ field, found, needs, problem }: Fault): string {
  return `${field.slice(field.lastIndexOf('.') + 1)}: ${problem ?? `${found} is not ${needs}`}.`;
}
