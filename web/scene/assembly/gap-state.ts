import { isListed } from '../../../geometry/fill/fill-map.ts';
import { GENERIC_COAT, wholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { measuredCoat } from '../../../geometry/job/measured-material.ts';
import type { Face } from '../../../geometry/part/face.ts';
import type { Mm } from '../../../geometry/units.ts';
import type { GapState } from '../../view/view-store.ts';
import type { LiveFace, LivePart } from '../../wear/live-faces.ts';
import type { FaceRegions } from '../../worker/estimate-job.ts';

/** What is filled, as far as the estimate has come. */
export interface Filling {
  readonly job: JobFile;
  readonly regions: readonly FaceRegions[];
  /** Ids of the regions of a part that are filled. */
  filled(part: string): ReadonlySet<string>;
}

/**
 * A part with its damage filled: up to the surface, or to where the coat will bring it there. A face the estimate does not know yet stays
 * as it was found.
 */
export function filledPart(live: LivePart, { job, regions, filled }: Filling): LivePart {
  const ids = filled(live.part.id);
  const { coatAllowance, allowanceFaces } = wholeRepair(job.repair);
  return {
    part: live.part,
    faces: live.faces.map((face) => {
      const known = regions.find((on) => on.part === face.part && on.face === face.face.name);
      if (known === undefined) return face;
      const allowance = isListed(allowanceFaces, face.part, face.face.name) ? coatAllowance : 0;
      return filledFace(face, known, ids, allowance);
    }),
  };
}

function filledFace(
  live: LiveFace,
  { rows, columns, label, ids }: FaceRegions,
  filled: ReadonlySet<string>,
  allowance: Mm,
): LiveFace {
  const { map } = live;
  if (rows !== map.grid.rows || columns !== map.grid.columns || !ids.some((id) => filled.has(id)))
    return live;
  const isFilled = ids.map((id) => filled.has(id));
  const depth = map.depth.map((mm, cell) =>
    label[cell] > 0 && isFilled[label[cell] - 1] ? Math.min(mm, allowance) : mm,
  );
  // Cut cells are drawn by their means; a sample each would not be seen.
  return { ...live, map: { ...map, depth, slot: map.slot.map(() => -1) } };
}

/**
 * How much further apart than as found the parts are set, mm: dressing takes metal off the tips. Coats stand on both faces, and the picture
 * has no skin for them: it brings the plate nearer by as much.
 */
export function setApart(state: GapState, job: JobFile): Mm {
  const { clearance, coat = GENERIC_COAT, repair } = job;
  if (state === 'as found' || clearance === undefined) return 0;
  const dressed = clearance.dressTips ?? 0;
  if (state === 'filled') return dressed;
  const { coats, dryFilm } = measuredCoat(coat);
  const film = (part: string, face: Face['name']): Mm =>
    isListed(wholeRepair(repair).coatedFaces, part, face) ? coats * dryFilm : 0;
  return dressed - film(clearance.plate, 'face') - film(clearance.impeller, 'vane-1/tip');
}
