import type { Face } from '../part/face.ts';
import type { FacePoint, Mm } from '../units.ts';
import { type Depths, type FaceResiduals, placeOf } from './face-residuals.ts';

/** What becomes of the worn places of a face: nothing yet, or filled up to so far under the surface. */
export type Filling = 'none' | { readonly allowance: Mm; readonly fillsLeft: boolean };

/** How far a face lies below its nominal surface, ring by ring; NaN where it has nothing in a ring. */
export interface RingDepths {
  readonly least: Float64Array;
  readonly mean: Float64Array;
  readonly most: Float64Array;
}

/**
 * The residual depths of a face under one way to fill it.
 * Throws RangeError when the allowance is neither 0 nor one of those the residuals were worked out for.
 */
export function ringDepths(residuals: FaceResiduals, filling: Filling): RingDepths {
  const { rings, sectors, weight } = residuals;
  const layers = layersOf(residuals, filling);
  const [least, mean, most] = [0, 1, 2].map(() => new Float64Array(rings.count).fill(NaN));
  for (let ring = 0; ring < rings.count; ring++) {
    if (weight[ring] === 0) continue;
    let [low, sum, high] = [Infinity, 0, -Infinity];
    for (const { depths, cap, sums } of layers) {
      sum += sums[ring];
      for (let bin = ring * sectors; bin < (ring + 1) * sectors; bin++) {
        low = Math.min(low, depths.least[bin], depths.least[bin] === Infinity ? Infinity : cap);
        high = Math.max(high, Math.min(depths.most[bin], cap));
      }
    }
    least[ring] = low;
    mean[ring] = sum / weight[ring];
    most[ring] = high;
  }
  return { least, mean, most };
}

/** The least residual depth of every bin under one way to fill; Infinity where the bin is no face. */
export function leastByBin(residuals: FaceResiduals, filling: Filling): Float64Array {
  const { rings, sectors } = residuals;
  const least = new Float64Array(rings.count * sectors).fill(Infinity);
  for (const { depths, cap } of layersOf(residuals, filling)) {
    for (let bin = 0; bin < least.length; bin++) {
      const own = depths.least[bin];
      if (own < Infinity) least[bin] = Math.min(least[bin], own, cap);
    }
  }
  return least;
}

/** Where a ring has its least or its most residual depth, in the face's own coordinates. */
export function placeInRing(
  face: Face,
  residuals: FaceResiduals,
  filling: Filling,
  ring: number,
  end: 'least' | 'most',
): FacePoint {
  const { sectors } = residuals;
  let [best, at] = [-Infinity, -1];
  for (const { depths, cap } of layersOf(residuals, filling)) {
    for (let bin = ring * sectors; bin < (ring + 1) * sectors; bin++) {
      const own = depths[end][bin];
      if (!Number.isFinite(own)) continue;
      const score = end === 'least' ? -Math.min(own, cap) : Math.min(own, cap);
      if (score <= best) continue;
      [best, at] = [score, end === 'least' ? depths.leastAt[bin] : depths.mostAt[bin]];
    }
  }
  if (at < 0) throw new RangeError('placeInRing: needs a ring that the face has cells in');
  return placeOf(face, at);
}

interface Layer {
  readonly depths: Depths;
  /** No residual of the kind is more than this. */
  readonly cap: Mm;
  readonly sums: Float64Array;
}

function layersOf({ depths, caps }: FaceResiduals, filling: Filling): Layer[] {
  const { sound, left, filled } = depths;
  const asWorn = (depths: Depths): Layer => ({ depths, cap: Infinity, sums: depths.sum });
  if (filling === 'none') return [asWorn(sound), asWorn(left), asWorn(filled)];
  const { allowance, fillsLeft } = filling;
  const i = caps.indexOf(allowance);
  if (i < 0 && allowance !== 0)
    throw new RangeError(`ringDepths: needs an allowance of 0, ${caps.join(', ')}, got ${allowance}`);
  const asFilled = (depths: Depths): Layer => ({
    depths,
    cap: allowance,
    sums: allowance === 0 ? new Float64Array(depths.sum.length) : depths.capped[i],
  });
  return [asWorn(sound), fillsLeft ? asFilled(left) : asWorn(left), asFilled(filled)];
}
