import { checkFlowTest } from './check-flow-test.ts';
import { checkImpeller } from './check-impeller.ts';
import { checkMark } from './check-mark.ts';
import { checkCoat, checkFiller } from './check-material.ts';
import { checkLog, checkPlan } from './check-plan.ts';
import { checkPlate } from './check-plate.ts';
import { checkReference } from './check-reference.ts';
import { checkRotor } from './check-rotor.ts';
import { checkSection } from './check-section.ts';
import { faceChoices, hasFace } from './face-names.ts';
import { type Fault, faultText, shown } from './fault.ts';
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
    ...(job.rotor ? checkRotor(job.rotor, parts) : []),
    ...checkClearance(job, parts),
    ...(job.flowTest ? checkFlowTest(job.flowTest) : []),
    ...(job.history?.repairs ?? []).flatMap((repair, i) =>
      checkRepair(repair, parts, `history.repairs[${i}]`),
    ),
    ...(job.plan ? checkPlan(job.plan) : []),
    ...checkLog(job.log ?? []),
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
    ...(part.sections ?? []).flatMap((section, i) =>
      section === null ? [] : checkSection(section, part, `${field}.sections[${i}]`),
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

function checkRepair(
  repair: NonNullable<NonNullable<Job['history']>['repairs']>[number],
  parts: Parts,
  field: string,
): Fault[] {
  const faults = checkReference(repair?.part, parts, `${field}.part`);
  const { mean, deepest } = repair ?? {};
  if (mean != null && deepest != null && mean > deepest)
    faults.push({ field: `${field}.mean`, found: shown(mean), needs: `at most deepest, ${deepest}` });
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
  const impeller = parts.find((part) => part?.kind === 'impeller' && part.id === clearance.impeller);
  const heights = impeller?.kind === 'impeller' ? impeller.vanes : null;
  const lowest = Math.min(heights?.heightInlet ?? Infinity, heights?.heightOutlet ?? Infinity);
  if (clearance.dressTips != null && clearance.dressTips >= lowest) {
    const needs = `less than ${lowest}, the height of the vanes where they are lowest`;
    faults.push({ field: 'clearance.dressTips', found: shown(clearance.dressTips), needs });
  }
  return faults;
}
