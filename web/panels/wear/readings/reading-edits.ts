/** Changes to the readings of a job. Pure; readings the job store refuses change nothing. */
import { USUAL_GAUGE_ERROR } from '../../../../geometry/job/defaults.ts';
import { standsFor } from '../../../../geometry/job/face-names.ts';
import type { JobFile, MarkFile, PartFile } from '../../../../geometry/job/job-file.ts';
import type { ReadingPoint, ReadingsMark } from '../../../tools/table-readings.ts';
import { withMark, withMarks, withoutMark } from '../mark-edits.ts';

/**
 * The readings that another one on a face joins: those in the hand of the list where they are on it, else the last ones of the face.
 * @returns place in the part's list of marks; null where a mark has to be begun
 */
export function readingsInHand(part: PartFile, face: string, selected: number | null): number | null {
  const inHand = selected === null ? undefined : part.wear[selected];
  if (inHand?.kind === 'readings' && standsFor(inHand.face, face)) return selected;
  const last = part.wear.findLastIndex((mark) => mark.kind === 'readings' && mark.face === face);
  return last < 0 ? null : last;
}

/** The readings of a mark; none where there is no such mark. */
export function readingsOf(part: PartFile, at: number | null): readonly ReadingPoint[] {
  const mark = at === null ? undefined : part.wear[at];
  return mark?.kind === 'readings' ? mark.points : [];
}

/**
 * Readings put down on a face.
 * @param at  the mark they join; null begins one
 */
export function withReadings(
  job: JobFile,
  part: number,
  {
    at,
    face,
    points,
  }: { readonly at: number | null; readonly face: string; readonly points: readonly ReadingPoint[] },
): JobFile {
  const added = points.map(filed);
  const mark = at === null ? undefined : job.parts[part].wear[at];
  if (at !== null && mark?.kind === 'readings') {
    return withMark(job, part, at, { ...mark, points: [...mark.points, ...added] });
  }
  const begun: ReadingsMark = {
    kind: 'readings',
    face,
    points: added,
    gaugeError: USUAL_GAUGE_ERROR,
    blend: 'deepest',
  };
  return withMarks(job, part, (marks) => [...marks, begun]);
}

/** Where a reading stands at the very place of another, to be read once more; -1 for none. */
export function readingAt(
  points: readonly ReadingPoint[],
  [first, second]: readonly [number, number],
): number {
  return points.findIndex(([p, q]) => p === first && q === second);
}

/** One reading in the place of another. */
export function withReading(mark: ReadingsMark, i: number, point: ReadingPoint): ReadingsMark {
  return { ...mark, points: mark.points.map((old, at) => (at === i ? filed(point) : old)) };
}

/** Without one; the last one stays, since a mark without readings is none. */
export function withoutReading(mark: ReadingsMark, i: number): ReadingsMark {
  return mark.points.length < 2 ? mark : { ...mark, points: mark.points.filter((_, at) => at !== i) };
}

/** Place of the last area drawn on the face of readings, whose outline they may be held within; null for none. */
export function lastAreaFor(marks: readonly MarkFile[], { face }: ReadingsMark): number | null {
  const at = marks.findLastIndex((mark) => mark.kind === 'area' && mark.face === face);
  return at < 0 ? null : at;
}

/** The readings held within the outline of an area, which goes: it was drawn for that alone. */
export function withinArea(job: JobFile, part: number, at: number, area: number): JobFile {
  const [mark, drawn] = [job.parts[part].wear[at], job.parts[part].wear[area]];
  if (mark?.kind !== 'readings' || drawn?.kind !== 'area') return job;
  return withoutMark(withMark(job, part, at, { ...mark, within: drawn.outline }), part, area);
}

/** The readings on the whole face again. */
export function everywhere(job: JobFile, part: number, at: number): JobFile {
  const mark = job.parts[part].wear[at];
  if (mark?.kind !== 'readings') return job;
  const { within: _, ...whole } = mark;
  return withMark(job, part, at, whole);
}

const filed = ([first, second, depth]: ReadingPoint): [number, number, number] => [first, second, depth];
