import { lostMetal } from '../../geometry/moments/integrate.ts';
import { type BenchResult, ratio } from './measure.ts';
import { largeFace, plainSum, wornMap } from './worn-face.ts';

/** Volume, first moments and products of two million worn cells against the plain sum of the same cells. */
export function bench(): BenchResult {
  const face = largeFace();
  const map = wornMap(face);
  return ratio(
    'lost metal, 2M cells',
    () => lostMetal(face, map).volume,
    'plain sum, 2M cells',
    () => plainSum(map),
    { most: 3 },
  );
}
