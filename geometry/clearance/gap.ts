import type { Clearance } from '../job/job.ts';
import type { FacePoint, Mm } from '../units.ts';
import type { GapBasis, MeasuredFace } from './gap-basis.ts';
import { filmOf, type GapSetting } from './gap-setting.ts';
import type { Opening } from './openings.ts';
import { type Filling, placeInRing, type RingDepths } from './ring-depths.ts';

/** The least of the gap as one part turns past the other, its mean, and the most, mm; below 0 the parts meet. */
export interface GapSpread {
  readonly least: Mm;
  readonly mean: Mm;
  readonly most: Mm;
}

export type GapState = 'asFound' | 'filled' | 'coated';

/** The gap as found, filled, and filled and coated. */
export type GapStates = { readonly [S in GapState]: GapSpread };

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

type Ask = Pick<Clearance, 'asNew' | 'asNewHolds'>;

/**
 * The axial gap between the face of the plate and the tips of the vanes over the radii they share. Every place of a tip meets every place
 * of the plate at its radius once a turn, so the least of a ring is the least of both, and so is the most.
 * gap = as new + shim + what is missing of plate and tip - coats. Tips are dressed to a plane: what is missing of them is no less than that.
 * Depths count as they are measured, along the normal of the face.
 * Accuracy: the maps' cells, places within one ring (1 mm of radius) taken as one. Source: job format, "Clearance"; tests/geometry/clearance/gap.test.ts
 */
export function runningGap(basis: GapBasis, ask: Ask, setting: GapSetting): Gap {
  const { rings, shared, plate, tips, openings } = basis;
  const states = (own: readonly MeasuredFace[]) => ({
    asFound: spreads(basis, own, ask, setting, 'asFound'),
    filled: spreads(basis, own, ask, setting, 'filled'),
    coated: spreads(basis, own, ask, setting, 'coated'),
  });
  const over = (own: readonly MeasuredFace[]): GapStates => {
    const { asFound, filled, coated } = states(own);
    return { asFound: overall(asFound), filled: overall(filled), coated: overall(coated) };
  };
  const all = states(tips);
  const byRadius = shared.flatMap((ring, i): GapRing[] => {
    const [asFound, filled, coated] = [all.asFound[i], all.filled[i], all.coated[i]];
    if (asFound === null || filled === null || coated === null) return [];
    const radius = rings.from + (ring + 0.5) * rings.width;
    return [{ radius, opening: openings[i].middle, asFound, filled, coated }];
  });
  const place = (end: 'least' | 'most'): GapPlace => {
    const sign = end === 'least' ? -1 : 1;
    const i = extreme(byRadius, ({ coated }) => sign * coated[end]);
    return {
      gap: byRadius[i].coated[end],
      radius: byRadius[i].radius,
      ...meeting(plate, tips, setting, shared[i], end),
    };
  };
  return {
    from: rings.from,
    to: rings.from + rings.count * rings.width,
    byRadius,
    byVane: tips.flatMap((tip) =>
      shared.some((ring) => tip.residuals.weight[ring] > 0)
        ? [{ tip: tip.running.face.name, ...over([tip]) }]
        : [],
    ),
    ...over(tips),
    tightest: place('least'),
    widest: place('most'),
    films: {
      plate: filmOn(plate, setting, setting.barePlate),
      tips: Math.max(0, ...tips.map((tip) => filmOn(tip, setting, setting.bareTips))),
    },
    mismatch: Math.max(...openings.map(({ most }) => most)),
  };
}

/** The gap under a setting once all is filled and coated, over all radii and vanes. */
export function coatedGap(basis: GapBasis, ask: Ask, setting: GapSetting): GapSpread {
  return overall(spreads(basis, basis.tips, ask, setting, 'coated'));
}

/** How a running face is filled under a setting. */
export function fillingOf({ running }: MeasuredFace, setting: GapSetting): Exclude<Filling, 'none'> {
  const { allowance, fillsLeft } = setting;
  if (allowance === 'as it is') return { allowance: running.fill.allowance, fillsLeft };
  return { allowance: allowance === 'the film' ? filmOf(setting) : allowance, fillsLeft };
}

/** The coats on a running face under a setting, mm. */
export const filmOn = ({ running }: MeasuredFace, setting: GapSetting, isBare: boolean): Mm =>
  running.coated && !isBare ? filmOf(setting) : 0;

/** What every place of the gap has in common: as new and as set. */
export const evenGap = ({ asNew }: Ask, { shim }: GapSetting): Mm => asNew + shim;

/** What is missing of a tip in a state, ring by ring. */
export const tipDepths = (tip: MeasuredFace, setting: GapSetting, state: GapState): RingDepths =>
  state === 'asFound' ? tip.depths('none') : tip.depths(fillingOf(tip, setting), setting.dressTips);

const PARALLEL: Opening = { least: 0, middle: 0, most: 0 };

/** By shared ring; null where none of these tips passes. */
function spreads(
  { shared, plate, openings }: GapBasis,
  tips: readonly MeasuredFace[],
  ask: Ask,
  setting: GapSetting,
  state: GapState,
): (GapSpread | null)[] {
  const isCoated = state === 'coated';
  const below = plate.depths(state === 'asFound' ? 'none' : fillingOf(plate, setting));
  const above = tips.map((tip) => ({
    depths: tipDepths(tip, setting, state),
    weight: tip.residuals.weight,
    film: isCoated ? filmOn(tip, setting, setting.bareTips) : 0,
  }));
  const even = evenGap(ask, setting) - (isCoated ? filmOn(plate, setting, setting.barePlate) : 0);
  return shared.map((ring, i) => {
    const opening = ask.asNewHolds === 'at the closest' ? openings[i] : PARALLEL;
    let [least, sum, total, most] = [Infinity, 0, 0, -Infinity];
    for (const { depths, weight, film } of above) {
      const own = weight[ring];
      if (own === 0) continue;
      least = Math.min(least, depths.least[ring] - film);
      most = Math.max(most, depths.most[ring] - film);
      sum += own * (depths.mean[ring] - film);
      total += own;
    }
    if (total === 0) return null;
    return {
      least: even + opening.least + below.least[ring] + least,
      mean: even + opening.middle + below.mean[ring] + sum / total,
      most: even + opening.most + below.most[ring] + most,
    };
  });
}

/** Over several rings: the least and the most of all, and the mean, each ring alike. */
function overall(rings: readonly (GapSpread | null)[]): GapSpread {
  let [least, sum, count, most] = [Infinity, 0, 0, -Infinity];
  for (const ring of rings) {
    if (ring === null) continue;
    least = Math.min(least, ring.least);
    most = Math.max(most, ring.most);
    sum += ring.mean;
    count += 1;
  }
  return { least, mean: sum / count, most };
}

/** Which of a list scores highest; the first of equals. */
function extreme<T>(items: readonly T[], score: (item: T) => number): number {
  return items.reduce((best, item, i) => (score(item) > score(items[best]) ? i : best), 0);
}

/** The places whose filled and coated state makes the least or the most of a ring. */
function meeting(
  plate: MeasuredFace,
  tips: readonly MeasuredFace[],
  setting: GapSetting,
  ring: number,
  end: 'least' | 'most',
): Pick<GapPlace, 'plate' | 'tip' | 'on'> {
  const sign = end === 'least' ? -1 : 1;
  const there = tips.filter(({ residuals }) => residuals.weight[ring] > 0);
  const left = (tip: MeasuredFace): Mm =>
    tipDepths(tip, setting, 'coated')[end][ring] - filmOn(tip, setting, setting.bareTips);
  const tip = there[extreme(there, (each) => sign * left(each))];
  const at = (face: MeasuredFace): FacePoint =>
    placeInRing(face.running.face, face.residuals, fillingOf(face, setting), ring, end);
  return { plate: at(plate), tip: tip.running.face.name, on: at(tip) };
}
