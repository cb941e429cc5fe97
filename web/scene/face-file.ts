import { standsFor } from '../../geometry/job/face-names.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { measuredMark } from '../../geometry/job/measured-mark.ts';
import { faceDrawing } from '../../geometry/sheet/face-drawing.ts';
import { readingsOn } from '../../geometry/sheet/reading-marks.ts';
import type { Result } from '../../geometry/sheet/result.ts';
import type { Mm } from '../../geometry/units.ts';
import { nameFor } from '../files/save-job.ts';
import { ownPoint } from '../tools/file-point.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';

/**
 * The picture of a face as a file to print at 1 : 1.
 * @param result  of the job as it is; without one the picture has no numbered regions
 * @param scaledFor  depth the colours are made for, mm
 */
export function faceFile(
  { part }: LivePart,
  { face, map }: LiveFace,
  job: JobFile,
  result: Result | null,
  scaledFor: Mm,
): { readonly name: string; readonly text: string } {
  const file = job.parts.find(({ id }) => id === part.id);
  const marks = file?.wear.filter((mark) => standsFor(mark.face, face.name)) ?? [];
  const own = marks.flatMap((mark) => (file && measuredMark(mark, file)) ?? []);
  const known = result?.parts.find(({ id }) => id === part.id);
  const regions = (known?.regions ?? [])
    .map(({ at, deepest, face: on }, i) => ({ at: ownPoint(face, at), deepest, number: i + 1, on }))
    .filter(({ on }) => on === face.name);
  const wornArea = known?.faces.find((one) => one.face === face.name)?.wornArea ?? 0;
  return {
    name: nameFor(job).replace(/\.job\.json$/, `.${part.id}-${face.name.replaceAll('/', '-')}.svg`),
    text: faceDrawing({
      title: job.title ?? '',
      part: part.id,
      body: part.body,
      face,
      map,
      scaledFor,
      regions,
      wornArea: wornArea * 100,
      readings: readingsOn(face, own),
    }),
  };
}
