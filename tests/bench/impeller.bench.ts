import { createDepthMap } from '../../geometry/depth/depth-map.ts';
import { replay } from '../../geometry/depth/replay.ts';
import { beginStroke, endStroke, extendStroke } from '../../geometry/depth/stroke.ts';
import { type Estimate, estimate } from '../../geometry/estimate.ts';
import type { Mark, Vanes } from '../../geometry/job/job.ts';
import { lostMetal } from '../../geometry/moments/integrate.ts';
import type { Face } from '../../geometry/part/face.ts';
import { evenly, impellerFace, job, madeImpeller, VANES } from '../geometry/made.ts';
import { measured } from '../oracle/solids.ts';
import { vaneSolids } from '../oracle/vane-solids.ts';
import { type BenchResult, ratio } from './measure.ts';
import { plainSum } from './worn-face.ts';

const SIX: Vanes = { ...VANES, count: 6, heightInlet: 40, heightOutlet: 26, nose: 'round' };
/** About two million cells on all faces together. */
const CELL = 0.35;
/** A vane side of about two million cells. */
const FINE = 0.06;

/** An impeller's full estimate, a vane side added up, a brush move on it, and the same metal by a mesh boolean. */
export async function bench(): Promise<BenchResult> {
  const worn = { ...job([]), parts: [madeImpeller(SIX, {}, marks())] };
  const all = () => estimate(worn, { cell: CELL });
  const whole = all();
  const cells = whole.parts[0].faces.reduce((sum, { map }) => sum + map.depth.length, 0);
  // An open one: at this cell a shroud would not fit. Square-nosed: every row has a law.
  const fine = impellerFace(
    'vane-1/pressure',
    madeImpeller({ ...SIX, count: 1, nose: 'square' }, { shroudThickness: 0 }),
    FINE,
  );
  const deep = replay(fine, [evenly(fine.name, 2)]);
  const results = [
    ratio(
      `full estimate, 6 vanes, ${(cells / 1e6).toFixed(1)}M cells`,
      () => all().filler.volume,
      'plain sum of the same cells',
      () => summed(whole),
      { warm: 2, repeats: 15 },
    ),
    ratio(
      `lost metal, a vane side of ${(deep.depth.length / 1e6).toFixed(1)}M cells`,
      () => lostMetal(fine, deep).volume,
      'plain sum of the same cells',
      () => plainSum(deep),
      { most: 4 },
    ),
    ratio(
      'brush move on that side, radius 10 mm, soft',
      brush(fine),
      'lost metal of that side',
      () => lostMetal(fine, deep).volume,
    ),
    await byBoolean(),
  ];
  return { timings: results.flatMap((r) => r.timings), ratios: results.flatMap((r) => r.ratios) };
}

/** Eaten edges and scoured sides of every vane, pits on the shroud. */
function marks(): Mark[] {
  const vanes = Array.from({ length: 6 }, (_, i): Mark[] => [
    {
      kind: 'edge',
      face: `vane-${i + 1}/leading-edge`,
      blend: 'deepest',
      profile: [
        [0, 1],
        [20, 2 + i / 2],
        [40, 1.5],
      ],
    },
    {
      kind: 'stroke',
      face: `vane-${i + 1}/pressure`,
      blend: 'deepest',
      path: [
        [110, 8],
        [150, 11],
        [190, 13],
      ],
      radius: 8,
      depth: 1.5 + i / 5,
      edge: 'soft',
      clear: false,
    },
  ]).flat();
  const pits = Array.from(
    { length: 20 },
    (_, i): Mark => ({
      kind: 'pit',
      face: 'shroud/front',
      blend: 'deepest',
      at: [60 + 4 * i, 0.3 * i],
      radius: 4,
      depth: 2,
      form: 'bowl',
    }),
  );
  return [...vanes, ...pits];
}

function summed({ parts }: Estimate): number {
  return parts[0].faces.reduce((sum, { map }) => sum + plainSum(map), 0);
}

/** To and fro along a vane side, an eighth of the radius a move, a new stroke every pass. */
function brush(face: Face): () => unknown {
  const map = createDepthMap(face.grid);
  const stroke = () =>
    beginStroke(map, face, { radius: 10, edge: 'soft', depth: 2, blend: 'deepest', clear: false });
  let inHand = stroke();
  let moves = 0;
  return () => {
    moves += 1;
    if (moves % 128 === 0) {
      endStroke(inHand);
      inHand = stroke();
    }
    return extendStroke(inHand, [20 + (moves % 128) * 1.25, 18]);
  };
}

/** One vane less a layer of its side, the solids built beforehand: only the subtraction and the measuring are timed. */
async function byBoolean(): Promise<BenchResult> {
  const shape: Vanes = { ...SIX, nose: 'square' };
  const face = impellerFace('vane-1/pressure', madeImpeller(shape));
  const map = replay(face, [evenly(face.name, 2.5)]);
  const vane = vaneSolids(shape, false);
  const whole = await vane.whole();
  const layer = await vane.side(1, 2.5, -1, 250, -1, 60);
  const before = measured(whole).volume;
  const lost = () => before - measured(whole.subtract(layer)).volume;
  const ours = lostMetal(face, map).volume;
  if (Math.abs(ours / lost() - 1) > 3e-3)
    throw new Error(`impeller.bench: ${ours} mm3 by integral, ${lost()} by boolean`);
  return ratio(
    'mesh boolean of a vane and a layer of its side, 4k triangles each',
    lost,
    'lost metal of that side, default cell',
    () => lostMetal(face, map).volume,
    { warm: 2, repeats: 15 },
  );
}
