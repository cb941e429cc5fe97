import { isListed } from '../../../geometry/fill/fill-map.ts';
import { wholeRepair } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { PartResult } from '../../../geometry/sheet/result.ts';

/** What is worn on a face, or on a whole part. File's units: cm2, mm, cm3. */
export interface WearTotal {
  readonly wornArea: number;
  readonly deepest: number;
  readonly lost: number;
  readonly fill: number;
  /** Left for the coat; null on a face that is not coated. */
  readonly left: number | null;
}

export interface FaceTotal extends WearTotal {
  readonly face: string;
}

export interface PartTotals {
  readonly part: string;
  /** The worn ones, in the order of the part. */
  readonly faces: readonly FaceTotal[];
  readonly sum: WearTotal;
  /** Faces that meet are worn at a corner they share: the sum holds it once, and is less than its faces together. */
  readonly sharesCorners: boolean;
}

/** Less than this, cm3, is rounding and no corner. */
const DUST = 0.005;

/** The wear of a part face by face, and all of it. */
export function partTotals(part: PartResult, job: JobFile): PartTotals {
  const { coatedFaces } = wholeRepair(job.repair);
  const faces = part.faces
    .filter(({ wornArea }) => wornArea > 0)
    .map(({ face, wornArea, deepest, lostVolume, fillVolume, leftVolume }) => ({
      face,
      wornArea,
      deepest,
      lost: lostVolume,
      fill: fillVolume,
      left: isListed(coatedFaces, part.id, face) ? leftVolume : null,
    }));
  const sum = {
    wornArea: faces.reduce((area, face) => area + face.wornArea, 0),
    deepest: Math.max(0, ...faces.map(({ deepest }) => deepest)),
    lost: part.lostVolume,
    fill: part.fillVolume,
    left: part.leftVolume,
  };
  const together = (of: 'lost' | 'fill' | 'left') => faces.reduce((all, face) => all + (face[of] ?? 0), 0);
  return {
    part: part.id,
    faces,
    sum,
    sharesCorners: (['lost', 'fill', 'left'] as const).some((of) => together(of) - sum[of] > DUST),
  };
}
