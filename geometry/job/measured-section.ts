import { toRadians } from '../units.ts';
import { angleCoordinate } from './face-names.ts';
import type { Section } from './job.ts';
import type { PartFile, SectionFile } from './job-file.ts';
import { pointOn } from './measured-mark.ts';

/** The sections of a part in our units. */
export function measuredSections(part: PartFile): readonly Section[] {
  return (part.sections ?? []).map((section) => measuredSection(section, part));
}

/** A section in our units: degrees to radians along the coordinate of its face that is an angle. */
function measuredSection(section: SectionFile, part: PartFile): Section {
  const { face } = section;
  if (section.kind === 'line') {
    const point = pointOn(part, face);
    return { kind: 'line', face, from: point(section.from), to: point(section.to) };
  }
  const fixed = section.kind === 'along-first' ? 1 : 0;
  const at = angleCoordinate(part, face) === fixed ? toRadians(section.at) : section.at;
  return { kind: section.kind, face, at };
}
