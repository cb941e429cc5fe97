import { wholeRepair } from '../../../geometry/job/defaults.ts';
import { standsFor } from '../../../geometry/job/face-names.ts';
import type { JobFile, OverruleFile } from '../../../geometry/job/job-file.ts';
import { toFacePoint } from '../../../geometry/part/face.ts';
import type { RegionResult, Result } from '../../../geometry/sheet/result.ts';
import type { Mm } from '../../../geometry/units.ts';
import { ownPoint } from '../../tools/file-point.ts';
import { flatDistance } from '../../tools/flat-distance.ts';
import { type LiveFace, liveFaces } from '../../wear/live-faces.ts';
import type { FaceRegions } from '../../worker/estimate-job.ts';
import { pinOf } from './overrule-region.ts';
import { regionAt } from './region-label.ts';

/** A choice to fill or to leave whose point lies on no worn patch: it changes nothing. */
export interface IdleChoice {
  /** Place in the job's list of overrules. */
  readonly index: number;
  readonly rule: OverruleFile;
  readonly part: string;
  /** As the job file spells it; may stand for all vanes. */
  readonly face: string;
  /** What is left of the wear it was meant for, it seems; null where none is near. */
  readonly nearby: { readonly region: RegionResult; readonly number: number } | null;
}

/** A patch further from the point than this is another one, mm. */
const NEAR: Mm = 30;

/**
 * The choices that came to nothing since they were made, for one that was cleared part of the wear.
 * @param regions  of the same job as the result
 */
export function idleChoices(
  job: JobFile,
  result: Result,
  regions: readonly FaceRegions[],
): readonly IdleChoice[] {
  const faces = liveFaces();
  return wholeRepair(job.repair).overrule.flatMap((rule, index): IdleChoice[] => {
    const [part, face] = rule.at.split(':');
    const named = faces
      .filter((live) => live.part === part && standsFor(face, live.face.name))
      .flatMap((live) => {
        const known = regions.find((one) => one.part === part && one.face === live.face.name);
        return known === undefined ? [] : [{ live, known }];
      });
    if (named.some(({ live, known }) => regionAt(live.face, known, rule.point) !== null)) return [];
    // One for all vanes is meant for several patches: none of them is the one it lost.
    const [only] = named;
    const id = named.length === 1 ? nearestRegion(only.live, only.known, rule.point) : null;
    const own = result.parts.find((known) => known.id === part)?.regions ?? [];
    const at = own.findIndex((region) => region.id === id);
    return [{ index, rule, part, face, nearby: at < 0 ? null : { region: own[at], number: at + 1 } }];
  });
}

/** The job without that choice. */
export function withoutChoice(job: JobFile, { index }: IdleChoice): JobFile {
  const overrule = wholeRepair(job.repair).overrule.filter((_, i) => i !== index);
  return { ...job, repair: { ...job.repair, overrule } };
}

/** The job with that choice made for the region nearby. */
export function withChoiceMoved(
  job: JobFile,
  { index, part, nearby }: IdleChoice,
  regions: FaceRegions | undefined,
): JobFile {
  if (nearby === null) return job;
  const point = pinOf(part, nearby.region, regions);
  const overrule = wholeRepair(job.repair).overrule.map((rule, i) =>
    i === index ? { ...rule, point } : rule,
  );
  return { ...job, repair: { ...job.repair, overrule } };
}

/** Id of the region that comes nearest to a point; null when none is NEAR. */
function nearestRegion(
  { face }: LiveFace,
  { label, ids, rows, columns }: FaceRegions,
  point: OverruleFile['point'],
): string | null {
  const { grid } = face;
  if (rows !== grid.rows || columns !== grid.columns) return null;
  const from = ownPoint(face, point);
  let [least, nearest] = [NEAR, 0];
  for (let cell = 0; cell < label.length; cell++) {
    if (label[cell] === 0) continue;
    const column = cell % columns;
    const row = (cell - column) / columns;
    const place = toFacePoint(face, grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv);
    const apart = flatDistance(face, from, place);
    if (apart < least) [least, nearest] = [apart, label[cell]];
  }
  return nearest === 0 ? null : ids[nearest - 1];
}
