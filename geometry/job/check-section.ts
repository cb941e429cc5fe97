import { angleCoordinate, faceChoices, hasFace, radiusCoordinate } from './face-names.ts';
import { type Fault, shown } from './fault.ts';
import type { PartFile, SectionFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type Section = Readable<SectionFile>;
type Part = Readable<PartFile>;

/**
 * What a section must agree on with its part: it lies on one face that exists, no radius is below 0, and a line has a length.
 * A section that misses its face is no fault.
 */
export function checkSection(section: Section, part: Part, field: string): Fault[] {
  const { face } = section;
  if (face == null) return [];
  if (face.includes('*') || !hasFace(part, face)) {
    const needs = `one face of this part: ${oneFaceChoices(part)}`;
    return [{ field: `${field}.face`, found: shown(face), needs }];
  }
  const radii = checkRadii(section, part, face, field);
  return radii.length > 0 ? radii : checkLength(section, part, face, field);
}

function checkRadii(section: Section, part: Part, face: string, field: string): Fault[] {
  if (radiusCoordinate(part, face) === null) return [];
  const needs = 'a radius, at least 0';
  if (section.kind === 'along-second') {
    const { at } = section;
    return at != null && at < 0 ? [{ field: `${field}.at`, found: shown(at), needs }] : [];
  }
  if (section.kind !== 'line') return [];
  return (['from', 'to'] as const).flatMap((name) => {
    const radius = section[name]?.[0];
    return radius !== undefined && radius < 0
      ? [{ field: `${field}.${name}[0]`, found: shown(radius), needs }]
      : [];
  });
}

function checkLength(section: Section, part: Part, face: string, field: string): Fault[] {
  if (section.kind !== 'line' || section.from == null || section.to == null) return [];
  const angle = angleCoordinate(part, face);
  const isSame = [0, 1].every((i) => {
    const off = (section.to?.[i] ?? 0) - (section.from?.[i] ?? 0);
    return i === angle ? off % 360 === 0 : off === 0;
  });
  // On the axis every angle is the same place.
  const isAxis = angle === 1 && section.from[0] === 0 && section.to[0] === 0;
  if (!isSame && !isAxis) return [];
  const needs = `another place than from ${shown(section.from)}`;
  return [{ field: `${field}.to`, found: shown(section.to), needs }];
}

/** The faces there are, without the way to name several at once. */
const oneFaceChoices = (part: Part): string => faceChoices(part).replace(' (vane-* for all)', '');
