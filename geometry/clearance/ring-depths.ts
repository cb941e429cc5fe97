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
 * The residual depths of a face under one way to fill it, dressed to a plane `dressed` mm under the nominal surface: what lies higher comes
 * off, what lies deeper stays.
 * Throws RangeError when the allowance or the plane is neither 0 nor one of the caps that the residuals were worked out for, nor deeper than all.
 * Accuracy: a plane nearer than the limit of damage, 0.05 mm, takes sound places at their own depth in the mean
 */
export function ringDepths(residuals: FaceResiduals, filling: Filling, dressed: Mm = 0): RingDepths {
  const { rings, sectors, weight } = residuals;
  const layers = layersOf(residuals, filling);
  const above = dressed > 0 ? aboveOf(residuals, filling, dressed) : null;
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
    least[ring] = Math.max(low, dressed);
    mean[ring] = above === null ? sum / weight[ring] : (sum - above[ring]) / weight[ring] + dressed;
    most[ring] = Math.max(high, dressed);
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

/** By ring: weight times depth, no depth counted as more than the plane. max(d, plane) = d + plane - min(d, plane). */
function aboveOf(residuals: FaceResiduals, filling: Filling, plane: Mm): Float64Array {
  const { depths, rings } = residuals;
  const { sound, left, filled } = depths;
  const isFilled = (kind: 'left' | 'filled'): boolean =>
    filling !== 'none' && (kind === 'filled' || filling.fillsLeft);
  const allowance = filling === 'none' ? 0 : filling.allowance;
  const parts = [
    sound.sum,
    cappedAt(residuals, left, isFilled('left') ? Math.min(allowance, plane) : plane),
    cappedAt(residuals, filled, isFilled('filled') ? Math.min(allowance, plane) : plane),
  ];
  return Float64Array.from({ length: rings.count }, (_, ring) =>
    parts.reduce((sum, part) => sum + part[ring], 0),
  );
}

function cappedAt({ caps, deepest }: FaceResiduals, { sum, capped }: Depths, cap: Mm): Float64Array {
  if (cap === 0) return new Float64Array(sum.length);
  const i = caps.findIndex((known) => Math.abs(known - cap) < SAME);
  if (i >= 0) return capped[i];
  if (cap >= deepest) return sum;
  throw new RangeError(`ringDepths: needs a plane of 0, ${caps.join(', ')} or beyond ${deepest}, got ${cap}`);
}

/** Two caps nearer to each other are one, mm. */
const SAME: Mm = 1e-6;

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
