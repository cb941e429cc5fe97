import { standsFor } from '../job/face-names.ts';
import type { Mark, Readings } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import { applyArea } from './area.ts';
import { brushTouches } from './brush-touches.ts';
import { createDepthMap, type DepthMap } from './depth-map.ts';
import { applyEdgeLoss } from './edge-loss.ts';
import { applyPatch } from './patch.ts';
import { applyPit } from './pit.ts';
import type { ReadSurface } from './read-surface.ts';
import { overlay, type ReadTrace, traceOf } from './read-trace.ts';
import { applyReadings } from './readings.ts';
import { applySmooth } from './smooth.ts';
import { applyStroke } from './stroke.ts';

/** The surface of readings on a face; null when there is none, or none yet: they then change nothing. */
export type SurfaceOf = (mark: Readings) => ReadSurface | null;

interface Asked {
  /** Without it readings change nothing: for faces that have none. */
  readonly surfaceOf?: SurfaceOf;
  /** Gets the marks that touch a cell of the face; written into. */
  readonly landed?: Set<Mark>;
  /** Gets where each mark of readings decides the depth; written into. */
  readonly traces?: ReadTrace[];
}

/** The depth map of a face as new, with every mark on it applied in the order given. */
export function replay(
  face: Face,
  marks: readonly Mark[],
  { surfaceOf = () => null, landed, traces }: Asked = {},
): DepthMap {
  const map = createDepthMap(face.grid);
  for (const mark of marks) {
    if (!standsFor(mark.face, face.name)) continue;
    const isTraced = traces !== undefined && (traces.length > 0 || mark.kind === 'readings');
    const before = isTraced ? map.depth.slice() : null;
    if (applyMark(map, face, mark, surfaceOf)) landed?.add(mark);
    if (before === null) continue;
    for (const trace of traces ?? []) overlay(trace, mark, before, map.depth);
    if (mark.kind === 'readings') traces?.push(traceOf(mark, before, map.depth));
  }
  return map;
}

/** Applies one mark that is on this face. Writes into `map`; returns false when the mark touches no cell of the face. */
export function applyMark(map: DepthMap, face: Face, mark: Mark, surfaceOf: SurfaceOf): boolean {
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
    case 'readings': {
      const surface = surfaceOf(mark);
      return surface !== null && applyReadings(map, face, mark, surface);
    }
  }
}
