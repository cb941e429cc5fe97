import { GENERIC_COAT, GENERIC_FILLER, wholeRepair } from './defaults.ts';
import type { Job, Mark, Overrule, Repair, Unsupported, WornPart } from './job.ts';
import type { JobFile, PartFile, RepairFile } from './job-file.ts';
import { measuredImpeller } from './measured-impeller.ts';
import { measuredMark, pointOn } from './measured-mark.ts';
import { measuredCoat, measuredFiller } from './measured-material.ts';
import { measuredClimate, measuredLog, measuredPlan, measuredService } from './measured-plan.ts';
import { measuredPlate } from './measured-plate.ts';
import { measuredRotor } from './measured-rotor.ts';
import { measuredClearance, measuredFlowTest, measuredHistory } from './measured-running.ts';

/**
 * The one step from the file's units into ours, defaults put in: deg to rad (only along a coordinate that is an angle),
 * g/cm3 to g/mm3, cm3 to mm3, um to mm, % to a share, bolt circles to holes.
 * What this version does not work out yet is listed in `unsupported` and left out of the rest.
 * @param file  a job that `readJob` found no fault in
 */
export function measured(file: JobFile): Job {
  const unsupported: Unsupported[] = [];
  const parts = file.parts.map((part, i): WornPart => {
    const marks = measuredMarks(part, `parts[${i}]`, unsupported);
    return part.kind === 'wear-plate' ? measuredPlate(part, marks) : measuredImpeller(part, marks);
  });
  return {
    title: file.title ?? '',
    notes: file.notes ?? '',
    parts,
    filler: measuredFiller(file.filler ?? GENERIC_FILLER),
    coat: measuredCoat(file.coat ?? GENERIC_COAT),
    repair: measuredRepair(file.repair, file.parts),
    rotor: file.rotor === undefined ? null : measuredRotor(file.rotor),
    clearance: file.clearance === undefined ? null : measuredClearance(file.clearance),
    surface: file.climate?.surface ?? null,
    climate: file.climate === undefined ? null : measuredClimate(file.climate),
    service: file.service === undefined ? null : measuredService(file.service),
    plan: measuredPlan(file.plan),
    log: measuredLog(file.log ?? []),
    flowTest: file.flowTest === undefined ? null : measuredFlowTest(file.flowTest),
    history: measuredHistory(file.history),
    unsupported,
  };
}

/** Writes what it can't take over into `unsupported`. */
function measuredMarks(part: PartFile, field: string, unsupported: Unsupported[]): readonly Mark[] {
  return part.wear.flatMap((mark, i) => {
    const taken = measuredMark(mark, part);
    if (taken !== null) return [taken];
    unsupported.push({
      field: `${field}.wear[${i}]`,
      what: `the mark "${mark.kind}" on "${part.id}:${mark.face}"`,
    });
    return [];
  });
}

function measuredRepair(file: RepairFile | undefined, parts: readonly PartFile[]): Repair {
  const repair = wholeRepair(file);
  return {
    leaveBelow: repair.leaveBelow,
    coatAllowance: repair.coatAllowance,
    allowanceFaces: repair.allowanceFaces,
    coatedFaces: repair.coatedFaces,
    overbuild: repair.overbuild,
    fillerWaste: repair.fillerWaste / 100,
    coatWaste: repair.coatWaste / 100,
    applicationRate: repair.applicationRate * 1000,
    readingWorth: file?.readingWorth === undefined ? null : file.readingWorth * 1000,
    overrules: repair.overrule.flatMap(({ at, point, action }): Overrule[] => {
      const [id, face] = at.split(':');
      const part = parts.find((candidate) => candidate.id === id);
      if (part === undefined) return [];
      return [{ part: id, face, point: pointOn(part, face)(point), action }];
    }),
  };
}
