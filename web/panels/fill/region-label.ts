import { cellAt } from '../../../geometry/depth/depth-at.ts';
import { type Face, toGridPoint } from '../../../geometry/part/face.ts';
import type { FacePoint } from '../../../geometry/units.ts';
import { ownPoint } from '../../tools/file-point.ts';
import type { FaceRegions } from '../../worker/estimate-job.ts';

/** Id of the damage region under a point of a face; null on sound metal and off the face. @param point  in the file's units */
export function regionAt(face: Face, regions: FaceRegions, point: FacePoint): string | null {
  const cell = cellAt(face, ...toGridPoint(face, ownPoint(face, point)));
  const label = cell < 0 ? 0 : (regions.label[cell] ?? 0);
  return label > 0 ? regions.ids[label - 1] : null;
}
