/** What lies under a laid section, worked out from the live map and, where it still holds, from the last estimate's fill. */
import { isListed } from '../../geometry/fill/fill-map.ts';
import { GENERIC_COAT, wholeRepair } from '../../geometry/job/defaults.ts';
import type { JobFile, PartFile } from '../../geometry/job/job-file.ts';
import { measuredMark } from '../../geometry/job/measured-mark.ts';
import { measuredCoat } from '../../geometry/job/measured-material.ts';
import { gaugedOn } from '../../geometry/sheet/job-sections.ts';
import {
  type FillUnder,
  type Gauged,
  type SectionProfile,
  sectionProfile,
} from '../../geometry/sheet/section.ts';
import { jobStore } from '../job/job-store.ts';
import { type EstimateState, estimateStore } from '../worker/estimate-client.ts';
import type { LaidSection } from './laid-section.ts';
import { type LiveFace, liveFace, marksPressed } from './live-faces.ts';

/** Worked out once for a section, a state of the wear and a state of the estimate: two pictures and the panel ask for it. */
export function sectionSeen({ live, section }: LaidSection): SectionProfile {
  const { job } = jobStore.getState();
  const estimate = estimateStore.getState();
  const { face, map } = live;
  const behind = face.opposite === null ? undefined : liveFace(live.part, face.opposite);
  const presses = marksPressed(map) + (behind === undefined ? 0 : marksPressed(behind.map));
  const known = seen.get(section);
  if (
    known?.job === job &&
    known.estimate === estimate &&
    known.live.map === map &&
    known.behind?.map === behind?.map &&
    known.presses === presses
  ) {
    return known.profile;
  }
  const part = job.parts.find(({ id }) => id === live.part);
  const repair = wholeRepair(job.repair);
  const coat = measuredCoat(job.coat ?? GENERIC_COAT);
  const isCoated = isListed(repair.coatedFaces, live.part, face.name);
  const profile = sectionProfile(face, map, section, {
    fill: part === undefined ? null : fillKnown(live, job, part, estimate),
    film: isCoated ? coat.coats * coat.dryFilm : 0,
    behind: behind?.map ?? null,
    readings: part === undefined ? [] : gaugedIn(part, face.name),
  });
  seen.set(section, { job, estimate, live, behind, presses, profile });
  return profile;
}

interface Seen {
  readonly job: JobFile;
  readonly estimate: EstimateState;
  readonly live: LiveFace;
  readonly behind: LiveFace | undefined;
  readonly presses: number;
  readonly profile: SectionProfile;
}

const seen = new WeakMap<object, Seen>();

/** What the last estimate says of the fill of a face; null when wear, sizes or repair have changed since. */
function fillKnown(
  { part: id, face }: LiveFace,
  job: JobFile,
  part: PartFile,
  { job: estimated, result, regions }: EstimateState,
): FillUnder | null {
  const then = estimated?.parts.find((known) => known.id === id);
  const labels = regions.find((known) => known.part === id && known.face === face.name);
  const found = result?.parts.find((known) => known.id === id)?.regions;
  if (then === undefined || labels === undefined || found === undefined) return null;
  if (!isEqual(job.repair, estimated?.repair) || !isSameButSections(part, then)) return null;
  if (labels.rows !== face.grid.rows || labels.columns !== face.grid.columns) return null;
  const actions = new Map(found.map(({ id: region, action }) => [region, action] as const));
  const { allowanceFaces, coatAllowance } = wholeRepair(job.repair);
  return {
    label: labels.label,
    actions: labels.ids.map((region) => actions.get(region) ?? 'leave'),
    allowance: isListed(allowanceFaces, id, face.name) ? coatAllowance : 0,
  };
}

/** Whether two states of a part differ in nothing but what is laid over it. Told once for two parts: a line under the hand asks every frame. */
function isSameButSections(now: PartFile, then: PartFile): boolean {
  const known = compared.get(now);
  if (known?.then === then) return known.isSame;
  const { sections: ours, ...a } = now;
  const { sections: theirs, ...b } = then;
  const isSame = isEqual(a, b);
  compared.set(now, { then, isSame });
  return isSame;
}

const compared = new WeakMap<PartFile, { readonly then: PartFile; readonly isSame: boolean }>();

/** The job store keeps untouched branches, so this mostly ends at the references; an undo may bring equal ones. */
function isEqual(a: object | undefined, b: object | undefined): boolean {
  if (a === b || a === undefined || b === undefined) return a === b;
  const [ours, theirs] = [Object.entries(a), new Map<string, unknown>(Object.entries(b))];
  return (
    ours.length === theirs.size &&
    ours.every(([name, value]) => {
      const other = theirs.get(name);
      return Object.is(value, other) || JSON.stringify(value) === JSON.stringify(other);
    })
  );
}

/** The gauge readings on a face, in our units. */
function gaugedIn(part: PartFile, face: string): readonly Gauged[] {
  const known = gauged.get(part.wear)?.get(face);
  if (known !== undefined) return known;
  const marks = part.wear.flatMap((mark) =>
    mark.kind === 'readings' ? (measuredMark(mark, part) ?? []) : [],
  );
  const found = gaugedOn(face, marks);
  gauged.set(part.wear, new Map([...(gauged.get(part.wear) ?? []), [face, found]]));
  return found;
}

const gauged = new WeakMap<object, ReadonlyMap<string, readonly Gauged[]>>();
