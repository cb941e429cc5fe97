import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { Fraction, Mm } from '../../geometry/units.ts';
import type { LivePart } from '../wear/live-faces.ts';

/** Share of the wall that drawn wear may take: what is drawn deeper would come out at the back. */
const MOST_OF_WALL: Fraction = 0.9;

/**
 * How many times its true depth wear is drawn: as wanted, or as much as the walls have room for; whole steps of a tenth, never less than 1.
 * @param share  of its wall that the wear takes where it takes most, see `wallShare`
 */
export function drawnTimes(wanted: number, share: Fraction): number {
  if (share <= 0) return wanted;
  const most = Math.floor((MOST_OF_WALL / share) * 10) / 10;
  return Math.max(1, Math.min(wanted, most));
}

/** The greatest share of a wall that wear takes anywhere on a part; wear on both sides of one wall counts together. */
export function wallShare({ faces }: LivePart): Fraction {
  const deepest = new Map(faces.map(({ face, map }) => [face.name, deepestOf(map)]));
  let most = 0;
  for (const { face } of faces) {
    const here = deepest.get(face.name) ?? 0;
    if (here === 0) continue;
    const behind = face.opposite === null ? 0 : (deepest.get(face.opposite) ?? 0);
    most = Math.max(most, (here + behind) / leastWall(face));
  }
  return most;
}

function leastWall({ grid, wall }: Face): Mm {
  return Math.min(wall(grid.u0), wall(grid.u0 + grid.rows * grid.du));
}

function deepestOf({ depth }: DepthMap): Mm {
  let deepest = 0;
  for (let cell = 0; cell < depth.length; cell++) if (depth[cell] > deepest) deepest = depth[cell];
  return deepest;
}
