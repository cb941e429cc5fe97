import type { Lever } from '../../../geometry/clearance/levers.ts';
import { GENERIC_COAT, wholeRepair } from '../../../geometry/job/defaults.ts';
import type { ClearanceFile, JobFile, RepairFile } from '../../../geometry/job/job-file.ts';
import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';
import { coatedGroups, withCoated } from '../fill/coated-groups.ts';

/** The job with levers pulled, one after the other; each of another kind. */
export function withLevers(job: JobFile, levers: readonly Lever[], { left }: ClearanceResult): JobFile {
  return levers.reduce((changed, lever) => withLever(changed, lever, left), job);
}

function withLever(job: JobFile, { kind, amount }: Lever, left: ClearanceResult['left']): JobFile {
  const { clearance } = job;
  if (clearance === undefined) return job;
  switch (kind) {
    case 'flush':
      return withRepair(job, { coatAllowance: 0 });
    case 'stop-short':
      return withRepair(job, { coatAllowance: amount ?? 0, allowanceFaces: allowed(job, clearance) });
    case 'bare-plate':
      return withBare(job, clearance.plate, 'face');
    case 'bare-tips':
      return withBare(job, clearance.impeller, 'vane-*/tip');
    case 'bare-both':
      return withBare(withBare(job, clearance.plate, 'face'), clearance.impeller, 'vane-*/tip');
    case 'one-coat-less': {
      const coat = job.coat ?? GENERIC_COAT;
      return { ...job, coat: { ...coat, coats: coat.coats - 1 } };
    }
    case 'shim':
      return { ...job, clearance: { ...clearance, shim: changed(clearance.shim, amount) } };
    case 'dress-tips':
      return { ...job, clearance: { ...clearance, dressTips: changed(clearance.dressTips, amount) } };
    case 'fill-left': {
      const rules = left.map(({ at, point: [first, second] }) => ({
        at,
        point: [first, second] as [number, number],
        action: 'fill' as const,
      }));
      return withRepair(job, { overrule: [...wholeRepair(job.repair).overrule, ...rules] });
    }
  }
}

const withRepair = (job: JobFile, change: RepairFile): JobFile => ({
  ...job,
  repair: { ...job.repair, ...change },
});

/** What the filler stops short of, the two running faces with it. */
function allowed(job: JobFile, { plate, impeller }: ClearanceFile): RepairFile['allowanceFaces'] {
  const listed = wholeRepair(job.repair).allowanceFaces;
  const running = [`${plate}:face`, `${impeller}:vane-*/tip`];
  const covered = (face: string): boolean =>
    listed.some(
      (pattern) => pattern === face || pattern === face.replace(/^[^:]*/, '*') || pattern === '*:*',
    );
  return [...listed, ...running.filter((face) => !covered(face))];
}

function withBare(job: JobFile, part: string, face: string): JobFile {
  const groups = coatedGroups(job);
  const group = groups.find((known) => known.part === part && known.face === face);
  if (group === undefined) return job;
  return withRepair(job, {
    coatedFaces: withCoated(wholeRepair(job.repair).coatedFaces, groups, group, false),
  });
}

/** To a hundredth of a mm. */
const changed = (before: number | undefined, by: number | null): number =>
  Math.round(((before ?? 0) + (by ?? 0)) * 100) / 100;
