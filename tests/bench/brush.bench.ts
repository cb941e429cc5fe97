import { createDepthMap } from '../../geometry/depth/depth-map.ts';
import { beginStroke, endStroke, extendStroke } from '../../geometry/depth/stroke.ts';
import { lostMetal } from '../../geometry/moments/integrate.ts';
import { type BenchResult, ratio } from './measure.ts';
import { largeFace, wornMap } from './worn-face.ts';

/** The brush goes round the face on this radius, mm. */
const RING = 220;

/** One move of the brush, an eighth of its radius on, against integrating the whole face anew. */
export function bench(): BenchResult {
  const face = largeFace();
  const map = wornMap(face);
  const results = [
    { radius: 10, edge: 'soft' as const, most: 1 / 60 },
    // A hard edge asks 32 samples of every cell it cuts, which is what keeps volumes true to 0.1 %.
    { radius: 10, edge: 'hard' as const, most: 1 / 12 },
    { radius: 60, edge: 'soft' as const, most: 1 / 4 },
  ].map(({ radius, edge, most }) => {
    const painted = createDepthMap(face.grid);
    let angle = 0;
    let moves = 0;
    const stroke = () =>
      beginStroke(painted, face, { radius, edge, depth: 2, blend: 'deepest', clear: false });
    let inHand = stroke();
    const move = () => {
      angle += radius / 8 / RING;
      moves += 1;
      if (moves % 200 === 0) {
        endStroke(inHand);
        inHand = stroke();
      }
      return extendStroke(inHand, [RING, angle]);
    };
    return ratio(
      `brush move, radius ${radius} mm, ${edge}`,
      move,
      'lost metal, 2M cells',
      () => lostMetal(face, map).volume,
      // Once round the ring first: compiled, and no memory is touched for the first time while the clock runs.
      { most, warm: Math.ceil((2 * Math.PI * RING) / (radius / 8)) },
    );
  });
  return { timings: results.flatMap((r) => r.timings), ratios: results.flatMap((r) => r.ratios) };
}
