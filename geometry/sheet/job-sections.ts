import type { Estimate } from '../estimate.ts';
import type { FaceEstimate } from '../estimate-part.ts';
import { standsFor } from '../job/face-names.ts';
import type { Mark, Section } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { type Gauged, type SectionProfile, sectionProfile } from './section.ts';

/** A section kept in the job, and what lies under it. */
export interface JobSection {
  readonly part: string;
  readonly face: Face;
  readonly section: Section;
  readonly profile: SectionProfile;
}

/** What lies under every section of one part of the job. */
export function jobSections({ job, parts }: Estimate, partIndex: number): JobSection[] {
  const { id, faces } = parts[partIndex];
  const { sections, marks } = job.parts[partIndex];
  const named = (name: string | null) => faces.find(({ face }) => face.name === name);
  return sections.map((section) => {
    const known = named(section.face);
    if (!known) throw new Error(`jobSections: needs a face of the part, got ${id}:${section.face}`);
    const { face, map, coated } = known;
    const profile = sectionProfile(face, map, section, {
      fill: fillUnder(known),
      film: coated ? job.coat.coats * job.coat.dryFilm : 0,
      behind: named(face.opposite)?.map ?? null,
      readings: gaugedOn(face.name, marks),
    });
    return { part: id, face, section, profile };
  });
}

/** The gauge readings that were taken on a face. */
export function gaugedOn(face: string, marks: readonly Mark[]): Gauged[] {
  return marks.flatMap((mark) =>
    mark.kind === 'readings' && standsFor(mark.face, face)
      ? mark.points.map(({ at, depth }) => ({ at, depth, error: mark.gaugeError }))
      : [],
  );
}

function fillUnder({ fill: { label, regions, allowance } }: FaceEstimate) {
  return { label, actions: regions.map(({ action }) => action), allowance };
}
