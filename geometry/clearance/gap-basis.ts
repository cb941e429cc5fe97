import { deepestOf } from '../depth/depth-map.ts';
import type { Coat } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { faceRadii } from './face-radii.ts';
import { type FaceResiduals, faceResiduals, type RunningFace } from './face-residuals.ts';
import { allowancesOf, planesOf } from './gap-setting.ts';
import { type Opening, openingsOf } from './openings.ts';
import { type Filling, type RingDepths, ringDepths } from './ring-depths.ts';
import type { Rings } from './row-walk.ts';

/** Everything of the two parts that the gap is made of, worked out once for every setting. */
export interface GapBasis {
  readonly rings: Rings;
  /** The rings that plate and tips both have cells in. */
  readonly shared: readonly number[];
  readonly plate: MeasuredFace;
  readonly tips: readonly MeasuredFace[];
  /** By shared ring: how much further than at the closest the parts stand apart by their drawings, over the width of the ring. */
  readonly openings: readonly Opening[];
}

export interface MeasuredFace {
  readonly running: RunningFace;
  readonly residuals: FaceResiduals;
  /** Worked out once for each way to fill. */
  depths(filling: Filling, dressed?: Mm): RingDepths;
}

/** A ring is this wide, or as wide as two cells where they are coarser, mm. */
const RING: Mm = 1;
/** Shares of the turn in the picture of the gap: 3 deg. */
const SECTORS = 120;
const FEWEST_SECTORS = 12;

/** @returns null when plate and tips share no radius */
export function gapBasis(
  plate: RunningFace,
  tips: readonly RunningFace[],
  coat: Pick<Coat, 'coats' | 'dryFilm'>,
  dressTips: Mm,
): GapBasis | null {
  const rings = sharedRings(plate, tips);
  if (rings === null) return null;
  const measured = (running: RunningFace, sectors: number, planes: readonly Mm[] = []): MeasuredFace => {
    const caps = [...new Set([...allowancesOf(running.fill.allowance, coat), ...planes])];
    const residuals = faceResiduals(running, rings, caps, sectors);
    const known = new Map<string, RingDepths>();
    return {
      running,
      residuals,
      depths: (filling, dressed = 0) => {
        const key = filling === 'none' ? filling : `${filling.allowance} ${filling.fillsLeft} ${dressed}`;
        const found = known.get(key) ?? ringDepths(residuals, filling, dressed);
        known.set(key, found);
        return found;
      },
    };
  };
  const below = measured(plate, sectorsOf(plate, rings));
  const above = tips.map((tip) => measured(tip, 1, planesOf(dressTips, deepestOf(tip.map))));
  const shared = Array.from({ length: rings.count }, (_, ring) => ring).filter(
    (ring) => below.residuals.weight[ring] > 0 && above.some(({ residuals }) => residuals.weight[ring] > 0),
  );
  if (shared.length === 0) return null;
  return { rings, shared, plate: below, tips: above, openings: openingsOf(rings, shared, plate, tips) };

  function sectorsOf({ map: { grid } }: RunningFace, { from }: Rings): number {
    const cells = grid.wraps ? grid.columns : (2 * Math.PI * from) / (1.5 * Math.max(grid.du, grid.dv));
    return Math.max(FEWEST_SECTORS, Math.min(SECTORS, Math.floor(cells / 2)));
  }
}

/** Rings over the radii that plate and tips share; null when they share none. */
function sharedRings(plate: RunningFace, tips: readonly RunningFace[]): Rings | null {
  const own = faceRadii(plate.face);
  const onTips = tips.flatMap(({ face }) => faceRadii(face) ?? []);
  if (own === null || onTips.length === 0) return null;
  const from = Math.max(own.from, Math.min(...onTips.map((end) => end.from)));
  const to = Math.min(own.to, Math.max(...onTips.map((end) => end.to)));
  if (!(to > from)) return null;
  const coarse = 2 * Math.max(...[plate, ...tips].map(({ map }) => map.grid.du));
  const count = Math.max(1, Math.floor((to - from) / Math.max(RING, coarse)));
  return { from, width: (to - from) / count, count };
}
