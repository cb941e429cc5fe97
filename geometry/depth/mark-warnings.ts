import type { Job, Mark } from '../job/job.ts';
import { markField, placeInFile } from '../job/mark-field.ts';
import type { Warning } from '../job/warning.ts';

/** More than these are named in one sentence only by their number. */
const MOST_NAMED = 3;

/**
 * What should worry someone about the marks of a part: those that lie wholly off their face, and so change nothing.
 * @param part    index in the job
 * @param landed  the marks that touch a cell of a face
 */
export function markWarnings(job: Job, part: number, landed: ReadonlySet<Mark>): Warning[] {
  const { id, marks } = job.parts[part];
  const missed = marks.flatMap((mark, i) => (landed.has(mark) ? [] : [i]));
  if (missed.length === 0) return [];
  const mark = marks[missed[0]];
  const place = placeInFile(job, part, missed[0]);
  const rest = missed.length - MOST_NAMED;
  const named = missed.slice(0, MOST_NAMED).map((i) => String(placeInFile(job, part, i) + 1));
  const text =
    missed.length === 1
      ? `${id}: mark ${place + 1}, ${NAMES[mark.kind]} on ${mark.face}, lies wholly off that face and changes nothing. Check where it is.`
      : `${id}: ${rest > 0 ? `marks ${named.join(', ')} and ${rest} more` : `marks ${listed(named)}`} lie wholly off their faces and change nothing. Check where they are.`;
  return [{ code: 'mark-off-face', field: markField(part, place), text }];
}

const NAMES: Readonly<Record<Mark['kind'], string>> = {
  patch: 'a patch',
  area: 'an area',
  pit: 'a pit',
  stroke: 'a stroke',
  edge: 'an edge loss',
  smooth: 'a smoothing stroke',
  readings: 'gauge readings',
};

function listed(names: readonly string[]): string {
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}
