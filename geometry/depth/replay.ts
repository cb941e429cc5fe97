import { standsFor } from '../job/face-names.ts';
import type { Mark } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { applyArea } from './area.ts';
import { brushTouches } from './brush-touches.ts';
import { createDepthMap, type DepthMap } from './depth-map.ts';
import { applyEdgeLoss } from './edge-loss.ts';
import { applyPatch } from './patch.ts';
import { applyPit } from './pit.ts';
import { applySmooth } from './smooth.ts';
import { applyStroke } from './stroke.ts';

/**
 * The depth map of a face as new, with every mark on it applied in the order given.
 * @param landed  gets the marks that touch a cell of the face; written into
 */
export function replay(face: Face, marks: readonly Mark[], landed: Set<Mark> = new Set()): DepthMap {
  const map = createDepthMap(face.grid);
  for (const mark of marks) {
    if (standsFor(mark.face, face.name) && applyMark(map, face, mark)) landed.add(mark);
  }
  return map;
}

/** Applies one mark that is on this face. Writes into `map`; returns false when the mark touches no cell of the face. */
export function applyMark(map: DepthMap, face: Face, mark: Mark): boolean {
  switch (mark.kind) {
    case 'patch':
      return applyPatch(map, face, mark);
    case 'area':
      return applyArea(map, face, mark);
    case 'pit':
      return applyPit(map, face, mark);
    case 'stroke':
      applyStroke(map, face, mark);
      return brushTouches(map, face, mark);
    case 'edge':
      return applyEdgeLoss(map, face, mark);
    case 'smooth':
      applySmooth(map, face, mark);
      return brushTouches(map, face, mark);
  }
}
