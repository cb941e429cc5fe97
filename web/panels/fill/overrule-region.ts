import { cellAt } from '../../../geometry/depth/depth-at.ts';
import { wholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile, OverruleFile } from '../../../geometry/job/job-file.ts';
import { toGridPoint } from '../../../geometry/part/face.ts';
import type { RegionResult } from '../../../geometry/sheet/result.ts';
import { ownPoint } from '../../tools/file-point.ts';
import { liveFace } from '../../wear/live-faces.ts';
import type { FaceRegions } from '../../worker/estimate-job.ts';

/** A region's depth this close to the limit may fall either way once nothing is overruled, mm. */
const CLOSE = 0.01;

/**
 * The job with a region filled or left as the person wants it. What the limit says anyway needs no overrule, so going back to that
 * takes the overrule away.
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
  const others = repair.overrule.filter((rule) => rule.at !== at || !isIn(rule, part, region, regions));
  const usual = region.deepest >= repair.leaveBelow ? 'fill' : 'leave';
  const isSure = Math.abs(region.deepest - repair.leaveBelow) > CLOSE;
  const point: OverruleFile['point'] = [region.at[0], region.at[1]];
  const overrule = isSure && action === usual ? others : [...others, { at, point, action }];
  return { ...job, repair: { ...job.repair, overrule } };
}

/** True when the overrule's point lies in the region. */
function isIn(
  { point }: OverruleFile,
  part: string,
  region: RegionResult,
  regions: FaceRegions | undefined,
): boolean {
  const live = liveFace(part, region.face);
  if (live === undefined || regions === undefined) return false;
  const { face } = live;
  const cell = cellAt(face, ...toGridPoint(face, ownPoint(face, point)));
  const label = cell < 0 ? 0 : (regions.label[cell] ?? 0);
  return label > 0 && regions.ids[label - 1] === region.id;
}
