import { checkImpeller } from './check-impeller.ts';
import { checkMark } from './check-mark.ts';
import { checkCoat, checkFiller } from './check-material.ts';
import { checkPlate } from './check-plate.ts';
import { faceChoices, hasFace } from './face-names.ts';
import { type Fault, faultText, missing, shown } from './fault.ts';
import type { JobFile } from './job-file.ts';
import type { Readable } from './readable.ts';

type Job = Readable<JobFile>;
type Parts = NonNullable<Job['parts']>;

/**
 * What the fields of a job must agree on with each other, every fault at once. Takes a job that is read in part as well:
 * whatever could not be read is `null`, and what depends on it is not checked.
 */
export function checkJob(job: Job): Fault[] {
  const parts = job.parts ?? [];
  const faults = [
    ...checkIds(parts),
    ...parts.flatMap((part, i) => (part === null ? [] : checkPart(part, `parts[${i}]`))),
    ...(job.filler ? checkFiller(job.filler) : []),
    ...(job.coat ? checkCoat(job.coat) : []),
    ...checkOverrules(job, parts),
    ...checkRotor(job, parts),
    ...checkClearance(job, parts),
  ];
  // A circle of holes says of each hole the same.
  return [...new Map(faults.map((fault) => [faultText(fault), fault])).values()];
}

function checkPart(part: NonNullable<Parts[number]>, field: string): Fault[] {
  return [
    ...(part.kind === 'wear-plate' ? checkPlate(part, field) : []),
    ...(part.kind === 'impeller' ? checkImpeller(part, field) : []),
    ...(part.wear ?? []).flatMap((mark, i) =>
      mark === null ? [] : checkMark(mark, part, `${field}.wear[${i}]`),
    ),
  ];
}

function checkIds(parts: Parts): Fault[] {
  const firstWith = new Map<string, number>();
  const faults: Fault[] = [];
  for (const [i, part] of parts.entries()) {
    if (part?.id == null) continue;
    const first = firstWith.get(part.id);
    if (first === undefined) firstWith.set(part.id, i);
    else {
      const problem = `${shown(part.id)} is already the id of parts[${first}]; needs an id of its own`;
      faults.push({ field: `parts[${i}].id`, found: shown(part.id), needs: 'an id of its own', problem });
    }
  }
  return faults;
}

/** The fault of an id no part has, or a part of the wrong kind has. */
function checkReference(
  id: string | null | undefined,
  parts: Parts,
  field: string,
  kind?: 'wear-plate' | 'impeller',
): Fault[] {
  if (id == null || parts.some((part) => part === null || part.id == null)) return [];
  const named = parts.filter((part) => part?.id === id);
  const fits = parts.filter((part) => kind === undefined || part?.kind === kind || part?.kind == null);
  if (named.some((part) => fits.includes(part))) return [];
  const what = kind === undefined ? 'a part' : kind === 'impeller' ? 'an impeller' : 'a wear plate';
  const ids = fits.map((part) => shown(part?.id)).join(', ');
  const needs = `the id of ${what} of this job${ids === '' ? ', which has none' : `: ${ids}`}`;
  return [{ field, found: shown(id), needs }];
}

function checkOverrules(job: Job, parts: Parts): Fault[] {
  return (job.repair?.overrule ?? []).flatMap((overrule, i) => {
    if (overrule?.at == null) return [];
    const field = `repair.overrule[${i}].at`;
    const [id, face] = overrule.at.split(':');
    const unknown = checkReference(id, parts, field);
    if (unknown.length > 0) {
      return [{ field, found: shown(overrule.at), needs: `part:face with ${unknown[0].needs}` }];
    }
    const part = parts.find((candidate) => candidate?.id === id);
    if (part == null || hasFace(part, face)) return [];
    return [
      { field, found: shown(overrule.at), needs: `"${id}:" and a face of that part: ${faceChoices(part)}` },
    ];
  });
}

function checkRotor(job: Job, parts: Parts): Fault[] {
  const { rotor } = job;
  if (rotor == null) return [];
  const faults = checkReference(rotor.part, parts, 'rotor.part');
  if (rotor.planes === 2 && rotor.planeSpacing === undefined) {
    faults.push(missing('rotor.planeSpacing', 'the distance between the two planes in mm'));
  }
  return faults;
}

function checkClearance(job: Job, parts: Parts): Fault[] {
  const { clearance } = job;
  if (clearance == null) return [];
  const { least, most } = clearance;
  const faults = [
    ...checkReference(clearance.plate, parts, 'clearance.plate', 'wear-plate'),
    ...checkReference(clearance.impeller, parts, 'clearance.impeller', 'impeller'),
  ];
  if (least != null && most != null && least > most) {
    faults.push({ field: 'clearance.least', found: shown(least), needs: `at most ${most}, the field most` });
  }
  return faults;
}
