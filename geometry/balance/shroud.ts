import type { DepthMap } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import type { Face } from '../part/face.ts';
import type { VaneShape } from '../part/vane-shape.ts';
import type { Mm } from '../units.ts';

/** The disc behind the vanes as worn: what metal can be taken off of, or putty built up on. */
export interface Shroud {
  readonly back: WornFace;
  readonly front: WornFace;
  readonly rim: Face;
  readonly vanes: readonly VaneShape[];
  /** What must stay of the wall; null when the job does not say. */
  readonly leastThickness: Mm | null;
}

export interface WornFace {
  readonly face: Face;
  readonly map: DepthMap;
  readonly fill: FillMap;
}

/** As new. */
export function shroudSizes({ back }: Shroud): {
  readonly inner: Mm;
  readonly outer: Mm;
  readonly thickness: Mm;
} {
  const { grid } = back.face;
  const outer = grid.u0 + grid.rows * grid.du;
  return { inner: grid.u0, outer, thickness: back.face.wall((grid.u0 + outer) / 2) };
}

/** Where the job names no least thickness, this share of the shroud as new is kept. From memory: common practice, half the wall. */
const KEPT_SHARE = 0.5;

/** The wall that must stay, mm. */
export function wallToLeave(shroud: Shroud): Mm {
  return shroud.leastThickness ?? shroudSizes(shroud).thickness * KEPT_SHARE;
}
