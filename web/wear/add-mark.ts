import { standsFor } from '../../geometry/job/face-names.ts';
import type { Fault } from '../../geometry/job/fault.ts';
import type { MarkFile } from '../../geometry/job/job-file.ts';
import type { Mm } from '../../geometry/units.ts';
import { notify } from '../files/notice-store.ts';
import { jobStore } from '../job/job-store.ts';
import type { LiveFace } from './live-faces.ts';

/**
 * Adds a mark to the end of a part's list: one step to undo. A mark the job cannot take is refused with a notice.
 * @returns whether it was taken
 */
export function addMark(part: string, mark: MarkFile): boolean {
  const faults = jobStore.getState().edit(stepName(mark), (job) => ({
    ...job,
    parts: job.parts.map((known) => (known.id === part ? { ...known, wear: [...known.wear, mark] } : known)),
  }));
  return isTaken(stepName(mark), faults);
}

/**
 * Sets a point of an edge mark: one step to undo.
 * @param at  place of the mark in the list of its part
 * @returns false when that mark is no edge of this face, or the point was refused
 */
export function addEdgePoint({ part, face }: LiveFace, at: number, point: readonly [Mm, Mm]): boolean {
  const mark = jobStore.getState().job.parts.find(({ id }) => id === part)?.wear[at];
  if (mark?.kind !== 'edge' || !standsFor(mark.face, face.name)) return false;
  const others = mark.profile.filter(([along]) => along !== point[0]);
  const profile = [...others, point].sort(([a], [b]) => a - b).map(([a, b]): [number, number] => [a, b]);
  const changed: MarkFile = { ...mark, profile };
  const faults = jobStore.getState().edit('point of an edge', (job) => ({
    ...job,
    parts: job.parts.map((known) =>
      known.id === part ? { ...known, wear: known.wear.map((old, i) => (i === at ? changed : old)) } : known,
    ),
  }));
  return isTaken('point of an edge', faults);
}

/** Says what was wrong, where something was. */
function isTaken(name: string, faults: readonly Fault[]): boolean {
  if (faults.length > 0) {
    const title = `The ${name} was not taken.`;
    notify({ name: 'mark', kind: 'fault', title, sentences: faults.map(sentence) });
  }
  return faults.length === 0;
}

/** What the mark is called behind "Undo". */
function stepName(mark: MarkFile): string {
  if (mark.kind === 'stroke') return mark.clear === true ? 'clearing stroke' : 'brush stroke';
  if (mark.kind === 'edge') return 'edge loss';
  if (mark.kind === 'readings') return 'gauge readings';
  return mark.kind === 'smooth' ? 'smoothing stroke' : mark.kind;
}

/** A fault of a drawn mark: nobody typed the place in the list, so only the name of the field is said. */
function sentence({ field, found, needs, problem }: Fault): string {
  const name = field.slice(field.lastIndexOf('.') + 1);
  return `${name}: ${problem ?? `${found} is not ${needs}`}.`;
}
