import type { Clearance } from '../job/job.ts';
import type { FacePoint, Mm } from '../units.ts';
import {
  type FaceResiduals,
  faceResiduals,
  type Residuals,
  type Rings,
  type RunningFace,
} from './face-residuals.ts';

/** The least of the gap as one part turns past the other, its mean, and the most, mm; below 0 the parts meet. */
export interface GapSpread {
  readonly least: Mm;
  readonly mean: Mm;
  readonly most: Mm;
}

/** The gap of one ring as found, filled, and filled and coated. */
export interface GapStates {
  readonly asFound: GapSpread;
  readonly filled: GapSpread;
  readonly coated: GapSpread;
}

export interface GapRing extends GapStates {
  readonly radius: Mm;
  /** How much further than at the closest the parts stand apart by their drawings, mm. */
  readonly opening: Mm;
}

/** Where a place of the plate and one of a tip meet as the rotor is turned. */
export interface GapPlace {
  readonly gap: Mm;
  readonly radius: Mm;
  readonly plate: FacePoint;
  /** Name of the tip and the place on it. */
  readonly tip: string;
  readonly on: FacePoint;
}

export interface Gap extends GapStates {
  /** Both ends of the overlap, by radius. */
  readonly from: Mm;
  readonly to: Mm;
  /** From the shaft outwards. */
  readonly byRadius: readonly GapRing[];
  /** Over each vane alone, by name of its tip. */
  readonly byVane: readonly (GapStates & { readonly tip: string })[];
  /** Of the coated gap. */
  readonly tightest: GapPlace;
  readonly widest: GapPlace;
  /** Thickness of the coats on the plate and on the tips, mm; on the tips the thickest. */
  readonly films: { readonly plate: Mm; readonly tips: Mm };
  /** How much further apart the parts stand somewhere than at the closest by their drawings, mm; 0 when plate and tips run parallel. */
  readonly mismatch: Mm;
}

/** Choices that a lever may set otherwise than the job has them. */
export interface GapChoices {
  /** mm kept for the coat in what is filled of both running faces; null as the job has it. */
  readonly allowance?: Mm | null;
}

/** A ring is this wide, or as wide as two cells where they are coarser, mm. */
const RING: Mm = 1;

/**
 * The axial gap between the face of the plate and the tips of the vanes over the radii they share. Every place of a tip meets every place
 * of the plate at its radius once a turn, so the least of a ring is the least of both, and so is the most.
 * gap = as new + shim + tips dressed + what is missing of plate and tip - coats. Depths count as they are measured, along the normal of the face.
 * @returns null when the two share no radius
 * Accuracy: the maps' cells, places within one ring (1 mm of radius) taken as one. Source: job format, "Clearance"; tests/geometry/clearance/gap.test.ts
 */
export function runningGap(
  plate: RunningFace,
  tips: readonly RunningFace[],
  ask: Clearance,
  { allowance = null }: GapChoices = {},
): Gap | null {
  const rings = sharedRings(plate, tips);
  if (rings === null) return null;
  const on = (running: RunningFace): Measured => ({
    running,
    residuals: faceResiduals(running, rings, allowance ?? undefined),
  });
  const below = on(plate);
  const above = tips.map(on);
  const shared = Array.from({ length: rings.count }, (_, ring) => ring).filter(
    (ring) => below.residuals.weight[ring] > 0 && above.some(({ residuals }) => residuals.weight[ring] > 0),
  );
  if (shared.length === 0) return null;

  const stack = shared.map((ring) => height(below, ring) + tipHeight(above, ring));
  const closest = Math.max(...stack);
  const openings = stack.map((sum) => closest - sum);
  const opened = ask.asNewHolds === 'at the closest' ? openings : openings.map(() => 0);
  const statesOf = (tips: readonly Measured[], ring: number, opening: Mm): GapStates => {
    const base = ask.asNew + ask.shim + opening;
    return {
      asFound: spread(below, tips, ring, base, 'worn', false),
      filled: spread(below, tips, ring, base + ask.dressTips, 'filled', false),
      coated: spread(below, tips, ring, base + ask.dressTips, 'filled', true),
    };
  };
  const byRadius = shared.map(
    (ring, i): GapRing => ({
      radius: rings.from + (ring + 0.5) * rings.width,
      opening: openings[i],
      ...statesOf(above, ring, opened[i]),
    }),
  );
  const placeOf = (i: number, end: 'least' | 'most'): GapPlace => ({
    gap: byRadius[i].coated[end],
    radius: byRadius[i].radius,
    ...meeting(below, above, shared[i], end),
  });
  return {
    from: rings.from,
    to: rings.from + rings.count * rings.width,
    byRadius,
    byVane: above.flatMap((tip) => {
      const own = shared.flatMap((ring, i) =>
        tip.residuals.weight[ring] > 0 ? [statesOf([tip], ring, opened[i])] : [],
      );
      return own.length === 0 ? [] : [{ tip: tip.running.face.name, ...overall(own) }];
    }),
    ...overall(byRadius),
    tightest: placeOf(
      extreme(byRadius, ({ coated }) => -coated.least),
      'least',
    ),
    widest: placeOf(
      extreme(byRadius, ({ coated }) => coated.most),
      'most',
    ),
    films: { plate: plate.film, tips: Math.max(0, ...tips.map(({ film }) => film)) },
    mismatch: Math.max(...openings),
  };
}

interface Measured {
  readonly running: RunningFace;
  readonly residuals: FaceResiduals;
}

/** Rings over the radii that plate and tips share; null when they share none. */
function sharedRings(plate: RunningFace, tips: readonly RunningFace[]): Rings | null {
  if (tips.length === 0) return null;
  const ends = [plate, ...tips].map(radiiOf);
  const onTips = ends.slice(1);
  const from = Math.max(ends[0].from, Math.min(...onTips.map((end) => end.from)));
  const to = Math.min(ends[0].to, Math.max(...onTips.map((end) => end.to)));
  if (!(to > from)) return null;
  const coarse = 2 * Math.max(...[plate, ...tips].map(({ map }) => map.grid.du));
  const count = Math.max(1, Math.floor((to - from) / Math.max(RING, coarse)));
  return { from, width: (to - from) / count, count };
}

/** Of a cell. */
const HAIR = 1e-9;

/** The least and the greatest radius of a face, mm. */
function radiiOf({ face, map: { grid } }: RunningFace): { from: Mm; to: Mm } {
  let [from, to] = [Infinity, 0];
  // A hair inside its own edge a face holds whatever rounding does.
  const inside = (line: number, lines: number): number => Math.min(Math.max(line, HAIR), lines - HAIR);
  for (let row = 0; row <= grid.rows; row++) {
    for (let column = 0; column <= grid.columns; column++) {
      const u = grid.u0 + inside(row, grid.rows) * grid.du;
      const v = grid.v0 + inside(column, grid.columns) * grid.dv;
      if (!face.holds(u, v)) continue;
      const [x, y] = face.position(u, v, 0);
      const radius = Math.hypot(x, y);
      if (radius < from) from = radius;
      if (radius > to) to = radius;
    }
  }
  return { from, to };
}

const height = ({ residuals }: Measured, ring: number): Mm => residuals.height[ring] / residuals.weight[ring];

function tipHeight(tips: readonly Measured[], ring: number): Mm {
  let [sum, weight] = [0, 0];
  for (const { residuals } of tips) {
    sum += residuals.height[ring];
    weight += residuals.weight[ring];
  }
  return sum / weight;
}

function spread(
  plate: Measured,
  tips: readonly Measured[],
  ring: number,
  base: Mm,
  state: 'worn' | 'filled',
  isCoated: boolean,
): GapSpread {
  const film = ({ running }: Measured): Mm => (isCoated ? running.film : 0);
  const of = ({ residuals }: Measured): Residuals => residuals[state];
  const start = base - film(plate);
  let [least, sum, weight, most] = [Infinity, 0, 0, -Infinity];
  for (const tip of tips) {
    const own = tip.residuals.weight[ring];
    if (own === 0) continue;
    least = Math.min(least, of(tip).least[ring] - film(tip));
    most = Math.max(most, of(tip).most[ring] - film(tip));
    sum += of(tip).sum[ring] - own * film(tip);
    weight += own;
  }
  return {
    least: start + of(plate).least[ring] + least,
    mean: start + of(plate).sum[ring] / plate.residuals.weight[ring] + sum / weight,
    most: start + of(plate).most[ring] + most,
  };
}

/** Over several rings: the least and the most of all, and the mean, each ring alike. */
function overall(rings: readonly GapStates[]): GapStates {
  const over = (state: keyof GapStates): GapSpread => ({
    least: Math.min(...rings.map((ring) => ring[state].least)),
    mean: rings.reduce((sum, ring) => sum + ring[state].mean, 0) / rings.length,
    most: Math.max(...rings.map((ring) => ring[state].most)),
  });
  return { asFound: over('asFound'), filled: over('filled'), coated: over('coated') };
}

/** Which of a list scores highest; the first of equals. */
function extreme<T>(items: readonly T[], score: (item: T) => number): number {
  return items.reduce((best, item, i) => (score(item) > score(items[best]) ? i : best), 0);
}

/** The places whose filled and coated state makes the least or the most of a ring. */
function meeting(
  plate: Measured,
  tips: readonly Measured[],
  ring: number,
  end: 'least' | 'most',
): Pick<GapPlace, 'plate' | 'tip' | 'on'> {
  const at = end === 'least' ? 'leastAt' : 'mostAt';
  const sign = end === 'least' ? -1 : 1;
  const there = tips.filter(({ residuals }) => residuals.weight[ring] > 0);
  const tip =
    there[extreme(there, ({ running, residuals }) => sign * (residuals.filled[end][ring] - running.film))];
  const below = plate.residuals.filled[at][ring];
  const on = tip.residuals.filled[at][ring];
  if (below === null || on === null)
    throw new Error('runningGap: needs a ring that both faces have cells in');
  return { plate: below, tip: tip.running.face.name, on };
}
