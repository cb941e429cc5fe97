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
  const [start, step, count] = alongU ? [grid.u0, grid.du, grid.rows] : [grid.v0, grid.dv, grid.columns];
  const hasPoint = cellsWithPoints(profile, start, step, count);
  pressImprint(map, face, {
    block,
    blend,
    peak: null,
    reaches: (row, column) => {
      const cell = alongU ? row : column;
      const low = start + cell * step;
      if (low + step <= from || low >= to) return 'none';
      return hasPoint[cell] === 1 ? 'cut' : 'all';
    },
    depthAt: (u, v) => lossAt(profile, alongU ? u : v),
  });
  return true;
}

/** 1 for the rows, or columns, that a point of the profile lies in or on the border of: the depth bends there. */
function cellsWithPoints(
  profile: EdgeLoss['profile'],
  start: number,
  step: number,
  count: number,
): Uint8Array {
  const has = new Uint8Array(count);
  for (const [along] of profile) {
    const place = (along - start) / step;
    for (const cell of [Math.floor(place), Math.ceil(place) - 1])
      if (cell >= 0 && cell < count) has[cell] = 1;
  }
  return has;
}

/** Depth of a profile at a place along it; -1 outside its span. */
function lossAt(profile: EdgeLoss['profile'], along: number): Mm {
  const last = profile.length - 1;
  if (along < profile[0][0] || along > profile[last][0]) return -1;
  // The first point that lies at `along` or further on.
  let [low, high] = [0, last];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (profile[middle][0] >= along) high = middle;
    else low = middle + 1;
  }
  if (low === 0) return profile[0][1];
  const [a, before] = profile[low - 1];
  const [b, after] = profile[low];
  return before + ((along - a) / (b - a)) * (after - before);
}
