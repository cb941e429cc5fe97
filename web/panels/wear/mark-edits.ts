/** Changes to the list of marks of a part. Pure; a mark the job store refuses changes nothing. */
import type { JobFile, MarkFile, PartFile } from '../../../geometry/job/job-file.ts';
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
  kind: 'patch' | 'pit' | 'area' | 'edge',
  part: PartFile,
  face: string,
  { depth, radius }: { readonly depth: Mm; readonly radius: Mm },
): MarkFile {
  const [first, second] = faceRanges(part, face).map(([from, to]): [number, number] => {
    // A quarter of the turn, or the middle third.
    if (to - from === 360) return [0, 90];
    return [rounded(from + (to - from) / 3), rounded(to - (to - from) / 3)];
  });
  switch (kind) {
    case 'edge': {
      const [[from, to]] = faceRanges(part, face);
      return {
        kind,
        face,
        profile: [
          [from, depth],
          [Math.floor(to * 10) / 10, depth],
        ],
      };
    }
    case 'patch':
      return { kind, face, first, second, depth };
    case 'pit':
      return {
        kind,
        face,
        at: startPoint(part, face, first, second),
        diameter: 2 * radius,
        depth,
        form: 'bowl',
      };
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

/** The middle of a face; on the front of a shroud half way between hub and inlet and between two vanes, where none stands on it. */
function startPoint(
  part: PartFile,
  face: string,
  first: readonly [number, number],
  second: readonly [number, number],
): [number, number] {
  if (part.kind !== 'impeller' || face !== 'shroud/front') return [middle(first), middle(second)];
  const { inletDiameter, firstAngle = 0, count } = part.vanes;
  const angle = (((firstAngle + 180 / count) % 360) + 360) % 360;
  return [rounded((part.hubDiameter + inletDiameter) / 4), rounded(angle)];
}

const rounded = (value: number): number => Number(value.toFixed(1));
const middle = ([from, to]: readonly [number, number]): number => rounded((from + to) / 2);

const VANE = /^vane-(\*|\d+)\//;

/** The mark on every vane alike; null when it is on none or on all of them. */
export function onAllVanes(mark: MarkFile): MarkFile | null {
  const vane = VANE.exec(mark.face)?.[1];
  return vane === undefined || vane === '*' ? null : { ...mark, face: mark.face.replace(VANE, 'vane-*/') };
}

/** A mark of every vane on one of them alone; null when it is not one of every vane. */
export function onOneVane(mark: MarkFile, vane: number): MarkFile | null {
  return VANE.exec(mark.face)?.[1] === '*'
    ? { ...mark, face: mark.face.replace(VANE, `vane-${vane}/`) }
    : null;
}
