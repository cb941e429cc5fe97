import type { Mark } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { applyArea } from './area.ts';
import { createDepthMap, type DepthMap } from './depth-map.ts';
import { applyPatch } from './patch.ts';
import { applyPit } from './pit.ts';
import { applySmooth } from './smooth.ts';
import { applyStroke } from './stroke.ts';

/** The depth map of a face as new, with every mark on it applied in the order given. */
export function replay(face: Face, marks: readonly Mark[]): DepthMap {
  const map = createDepthMap(face.grid);
  for (const mark of marks) {
    if (mark.face === face.name) applyMark(map, face, mark);
  }
  return map;
}

/** Applies one mark that is on this face. Writes into `map`. */
export function applyMark(map: DepthMap, face: Face, mark: Mark): void {
  switch (mark.kind) {
    case 'patch':
      applyPatch(map, face, mark);
      break;
    case 'area':
      applyArea(map, face, mark);
      break;
    case 'pit':
      applyPit(map, face, mark);
      break;
    case 'stroke':
      applyStroke(map, face, mark);
      break;
    case 'smooth':
      applySmooth(map, face, mark);
      break;
  }
}
