import { wholeRepair } from '../../../geometry/job/defaults.ts';
import { standsFor } from '../../../geometry/job/face-names.ts';
import type { JobFile, OverruleFile } from '../../../geometry/job/job-file.ts';
import type { RegionResult } from '../../../geometry/sheet/result.ts';
import { filePoint } from '../../tools/file-point.ts';
import { liveFace } from '../../wear/live-faces.ts';
import type { FaceRegions } from '../../worker/estimate-job.ts';
import { inmostPoint } from './inmost-point.ts';
import { regionAt } from './region-label.ts';

/** A region's depth this close to the limit may fall either way once nothing is overruled, mm. */
const CLOSE = 0.01;

/**
 * The job with a region filled or left as the person wants it. What the limit says anyway needs no overrule, so going back to that
 * takes the overrule away. One that is there already stays where it was put, so that regions which grew together keep theirs when they
 * come apart; a new one is pinned to the middle of the region.
 * @param regions  which region each cell of the region's face belongs to
 */
export function withRegionChosen(
  job: JobFile,
  part: string,
  region: RegionResult,
  action: 'fill' | 'leave',
  regions: FaceRegions | undefined,
): JobFile {
  const repair = wholeRepair(job.repair);
  const at = `${part}:${region.face}`;
  const meant = repair.overrule.filter((rule) => isFor(rule, part, region, regions));
  const own = meant.filter((rule) => rule.at === at);
  const others = repair.overrule.filter((rule) => !own.includes(rule));
  const usual = region.deepest >= repair.leaveBelow ? 'fill' : 'leave';
  const isSure = Math.abs(region.deepest - repair.leaveBelow) > CLOSE;
  // A choice for all vanes holds for this one too, until it has its own.
  const isUsual = isSure && action === usual && own.length === meant.length;
  const points = own.length > 0 ? own.map(({ point }) => point) : [pinOf(part, region, regions)];
  const overrule = isUsual ? others : [...others, ...points.map((point) => ({ at, point, action }))];
  return { ...job, repair: { ...job.repair, overrule } };
}

/** Where the choice for a region is pinned: its middle, or its deepest point where the screen does not know the region. */
export function pinOf(
  part: string,
  region: RegionResult,
  regions: FaceRegions | undefined,
): OverruleFile['point'] {
  const live = liveFace(part, region.face);
  const inmost = live && regions && inmostPoint(live.face, regions, region.id);
  const [first, second] = inmost && live ? filePoint(live.face, inmost) : region.at;
  return [first, second];
}

/** True when the overrule's point lies in the region. */
function isFor(
  { at, point }: OverruleFile,
  part: string,
  region: RegionResult,
  regions: FaceRegions | undefined,
): boolean {
  const live = liveFace(part, region.face);
  if (live === undefined || regions === undefined) return false;
  const [on, face] = at.split(':');
  return on === part && standsFor(face, region.face) && regionAt(live.face, regions, point) === region.id;
}
