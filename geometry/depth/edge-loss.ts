import type { EdgeLoss } from '../job/job.ts';
import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { blockWithin } from './chart.ts';
import type { DepthMap } from './depth-map.ts';
import { pressImprint } from './press.ts';

/**
 * Loss along an edge: depth against the face's first coordinate, linear between the points, alike all the way across, nothing
 * outside. Writes into `map`.
 * @returns  false when it touches no cell of the face
 * Accuracy: exact at cell centres; the ends and the points of the profile lie true to 1/32 cell.
 * Source: job format, "Mark"; tests/geometry/depth/edge-loss.test.ts
 */
export function applyEdgeLoss(map: DepthMap, face: Face, { profile, blend }: EdgeLoss): boolean {
  const { grid } = face;
  const alongU = face.columnsAre === 'second';
  const from = profile[0][0];
  const to = profile[profile.length - 1][0];
  const [u1, v1] = [grid.u0 + grid.rows * grid.du, grid.v0 + grid.columns * grid.dv];
  const block = alongU ? blockWithin(face, from, to, grid.v0, v1) : blockWithin(face, grid.u0, u1, from, to);
  if (block === null) return false;
  const [start, step] = alongU ? [grid.u0, grid.du] : [grid.v0, grid.dv];
  pressImprint(map, face, {
    block,
    blend,
    peak: null,
    reaches: (row, column) => {
      const low = start + (alongU ? row : column) * step;
      const high = low + step;
      if (high <= from || low >= to) return 'none';
      return profile.some(([along]) => along >= low && along <= high) ? 'cut' : 'all';
    },
    depthAt: (u, v) => lossAt(profile, alongU ? u : v),
  });
  return true;
}

/** Depth of a profile at a place along it; -1 outside its span. */
function lossAt(profile: EdgeLoss['profile'], along: number): Mm {
  const next = profile.findIndex(([end]) => end >= along);
  if (next < 0 || along < profile[0][0]) return -1;
  if (next === 0) return profile[0][1];
  const [a, before] = profile[next - 1];
  const [b, after] = profile[next];
  return before + ((along - a) / (b - a)) * (after - before);
}
