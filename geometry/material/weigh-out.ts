import type { Fraction, Gram, Mm3 } from '../units.ts';
import { type Mix, portionsOf } from './mix.ts';

/** What the scale is to show for one mix. */
export interface WeighedOut {
  readonly partA: Gram;
  readonly partB: Gram;
  /** How much too much B (negative: too little) the rounding leaves, as a share of the right amount. */
  readonly ratioError: Fraction;
}

/** Further off than this the mix is another one. Common practice; the data sheet may be stricter. */
export const RATIO_LIMIT: Fraction = 0.02;
/** A mix may come out smaller than asked for by this share, to be had from the waste. */
const LESS: Fraction = 0.05;
/** And larger by this share where nothing else limits it. */
const MORE: Fraction = 0.25;
const DUST = 1e-9;

/**
 * The masses of A and B for a mix, both as the scale can show them: of all pairs whose ratio is right within 2 % the one that is
 * nearest to what is asked for, part by part.
 * @param volume   of the mix, mm3
 * @param largest  no more than this is mixed at once, mm3
 * @param step     of the scale, g
 * @returns null when A or B has no density, so that grams are not known, or when no pair within the limits of ratio and size is on the scale: it is too coarse for so small a mix
 */
export function weighOut(mix: Mix, volume: Mm3, largest: Mm3, step: Gram): WeighedOut | null {
  if (mix.densityA === null || mix.densityB === null) return null;
  const { partA, partB } = portionsOf(mix, volume);
  if (!(partA.mass > 0 && partB.mass > 0)) return null;
  const total = partA.mass + partB.mass;
  const ratio = partB.mass / partA.mass;
  const most = Math.min(total * (1 + MORE), Math.max(total, (total * largest) / volume));
  const least = total * (1 - LESS);
  const nearest = Math.max(1, Math.round(partA.mass / step));
  let best: WeighedOut | null = null;
  let bestOff = Infinity;
  // Outward from the nearest step of A: what lies further off than the best so far cannot be nearer.
  for (let k = 0; (k - 1) * step < Math.min(bestOff, MORE * total); k++) {
    for (const a of k === 0 ? [nearest] : [nearest - k, nearest + k]) {
      // The nearest two of B for this A.
      for (const b of new Set([Math.floor(a * ratio + DUST), Math.ceil(a * ratio - DUST)])) {
        const sum = (a + b) * step;
        const ratioError = b / a / ratio - 1;
        if (a < 1 || b < 1 || Math.abs(ratioError) > RATIO_LIMIT) continue;
        if (sum < least - DUST || sum > most + DUST) continue;
        const off = Math.abs(a * step - partA.mass) + Math.abs(b * step - partB.mass);
        if (off >= bestOff) continue;
        best = { partA: onScale(a, step), partB: onScale(b, step), ratioError };
        bestOff = off;
      }
    }
  }
  return best;
}

/** 3 x 0.1 is 0.3 on the scale. */
function onScale(steps: number, step: Gram): Gram {
  return Number((steps * step).toPrecision(12));
}
