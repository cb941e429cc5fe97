/** Changes to the list of marks of a part. Pure; a mark the job store refuses changes nothing. */
import type { JobFile, MarkFile, WearPlateFile } from '../../../geometry/job/job-file.ts';
import type { Mm } from '../../../geometry/units.ts';
import { faceRanges } from './face-words.ts';

export function withMarks(
  job: JobFile,
  part: number,
  change: (marks: readonly MarkFile[]) => readonly MarkFile[],
): JobFile {
  return {
    ...job,
    parts: job.parts.map((old, i) => (i === part ? { ...old, wear: [...change(old.wear)] } : old)),
  };
}

export function withMark(job: JobFile, part: number, at: number, mark: MarkFile): JobFile {
  return withMarks(job, part, (marks) => marks.map((old, i) => (i === at ? mark : old)));
}

export function withoutMark(job: JobFile, part: number, at: number): JobFile {
  return withMarks(job, part, (marks) => marks.filter((_, i) => i !== at));
}

/** The mark one place earlier (-1) or later (+1) in the list. */
export function withMarkMoved(job: JobFile, part: number, at: number, by: -1 | 1): JobFile {
  return withMarks(job, part, (marks) => {
    const moved = [...marks];
    [moved[at], moved[at + by]] = [moved[at + by], moved[at]];
    return moved;
  });
}

/** A mark in the middle of a face to be typed over. */
export function startMark(
  kind: 'patch' | 'pit' | 'area',
  plate: WearPlateFile,
  face: string,
  { depth, radius }: { readonly depth: Mm; readonly radius: Mm },
): MarkFile {
  const [first, second] = faceRanges(plate, face).map(([from, to]): [number, number] => {
    // A quarter of the turn, or the middle third.
    if (to - from === 360) return [0, 90];
    return [rounded(from + (to - from) / 3), rounded(to - (to - from) / 3)];
  });
  switch (kind) {
    case 'patch':
      return { kind, face, first, second, depth };
    case 'pit':
      return { kind, face, at: [middle(first), middle(second)], diameter: 2 * radius, depth, form: 'bowl' };
    case 'area':
      return {
        kind,
        face,
        outline: [
          [first[0], second[0]],
          [first[1], second[0]],
          [first[1], second[1]],
          [first[0], second[1]],
        ],
        depth,
      };
  }
}

const rounded = (value: number): number => Number(value.toFixed(1));
const middle = ([from, to]: readonly [number, number]): number => rounded((from + to) / 2);
