/** Changes to the sections kept with a part. Pure; a section the job store refuses changes nothing. */
import type { JobFile, PartFile, SectionFile } from '../../../../geometry/job/job-file.ts';
import type { Lay } from '../../../tools/straightedge.ts';
import { faceRanges } from '../face-words.ts';

export function withSections(
  job: JobFile,
  part: number,
  change: (sections: readonly SectionFile[]) => readonly SectionFile[],
): JobFile {
  return {
    ...job,
    parts: job.parts.map((old, i): PartFile => {
      if (i !== part) return old;
      const { sections = [], ...rest } = old;
      const changed = change(sections);
      // A part that keeps none says nothing of them.
      return changed.length === 0 ? rest : { ...rest, sections: [...changed] };
    }),
  };
}

export function withSection(job: JobFile, part: number, at: number, section: SectionFile): JobFile {
  return withSections(job, part, (sections) => sections.map((old, i) => (i === at ? section : old)));
}

export function withoutSection(job: JobFile, part: number, at: number): JobFile {
  return withSections(job, part, (sections) => sections.filter((_, i) => i !== at));
}

/** A section through the middle of a face, to be typed over: a line from one end of its first number to the other. */
export function startSection(part: PartFile, face: string, lay: Lay): SectionFile {
  const [first, second] = faceRanges(part, face);
  if (lay === 'along-first') return { kind: lay, face, at: middle(second) };
  if (lay === 'along-second') return { kind: lay, face, at: middle(first) };
  // Half a turn in the bore: a whole one would end where it begins.
  const to = first[1] - first[0] === 360 ? first[0] + 180 : first[1];
  return { kind: lay, face, from: [first[0], middle(second)], to: [to, middle(second)] };
}

type Range = readonly [from: number, to: number];

/** Half of a turn is the start of it: 0 deg stands at the mark on the part. */
const middle = ([from, to]: Range): number =>
  to - from === 360 ? from : Number(((from + to) / 2).toFixed(1));
