import type { Mm } from '../units.ts';
import type { WallEstimate } from './thin-places.ts';
import { addedRates, type PartWearRate, type WearRate } from './wear-rate.ts';

/** Running hours until something reaches its limit; 95 of 100 between `from` and `to`. */
export interface Due {
  readonly what: 'wall' | 'gap';
  /** The part whose wall it is; null for the gap. */
  readonly part: string | null;
  /** How far it is from its limit after the repair, mm; null when that is not known. */
  readonly margin: Mm | null;
  /** The limit, mm: the least thickness, or the widest gap. */
  readonly limit: Mm | null;
  readonly hours: number | null;
  /** Both null with a single interval; `to` null too where the rate may be as low as nothing. */
  readonly from: number | null;
  readonly to: number | null;
  /** Why there are no hours, in a sentence. */
  readonly why: string | null;
}

/** One part as it leaves the repair. */
export interface RepairedPart {
  readonly id: string;
  readonly leastThickness: Mm | null;
  readonly walls: readonly WallEstimate[];
}

/** The gap as it is coated, and the parts that make it. */
export interface RepairedGap {
  readonly most: Mm;
  readonly limit: Mm;
  readonly plate: string;
  readonly impeller: string;
}

/** When each part's wall, and the gap, want looking after again; all at the rate of the deepest wear. */
export function whenDue(
  parts: readonly RepairedPart[],
  rates: readonly PartWearRate[],
  gap: RepairedGap | null,
): Due[] {
  const rateOf = (part: string) => rates.find((rate) => rate.part === part && rate.of === 'deepest') ?? null;
  return [
    ...parts.map((part) => wallDue(part, rateOf(part.id))),
    ...(gap === null ? [] : [gapDue(gap, rateOf(gap.plate), rateOf(gap.impeller))]),
  ];
}

/**
 * From the repaired surface through the putty to the metal's limit, where the two come to least. How fast putty wears is not known: it
 * counts as metal.
 */
function wallDue({ id, leastThickness, walls }: RepairedPart, rate: WearRate | null): Due {
  const standing = Math.min(...walls.map((wall) => wall.standing));
  const margin = leastThickness === null || !Number.isFinite(standing) ? null : standing - leastThickness;
  const under = walls.some(({ verdict }) => verdict === 'under' || verdict === 'through');
  const due = { what: 'wall', part: id, margin, limit: leastThickness } as const;
  if (under) return never(due, 'The metal is under its limit already.');
  if (leastThickness === null) return never(due, 'The least thickness is not known.');
  return reached(due, rate);
}

function gapDue({ most, limit, plate, impeller }: RepairedGap, a: WearRate | null, b: WearRate | null): Due {
  const due = { what: 'gap', part: null, margin: limit - most, limit } as const;
  if (most >= limit) return never(due, 'The gap is as wide as allowed already.');
  if (a === null || b === null)
    return never(due, `How fast ${a === null ? plate : impeller} wears is not known.`);
  return reached(due, addedRates(a, b));
}

type Asked = Pick<Due, 'what' | 'part' | 'margin' | 'limit'>;

const never = (due: Asked, why: string): Due => ({ ...due, hours: null, from: null, to: null, why });

/** The margin over the rate; the fast end of the rate is the early end of the hours. */
function reached(due: Asked, rate: WearRate | null): Due {
  const { margin } = due;
  if (rate === null) return never(due, 'How fast it wears is not known: no hours are given.');
  if (margin === null) return never(due, 'What is left of the wall is not known.');
  if (rate.perHour <= 0) return never(due, 'Nothing has worn so far.');
  const { range } = rate;
  return {
    ...due,
    hours: margin / rate.perHour,
    from: range === null ? null : margin / range.high,
    to: range === null || range.low <= 0 ? null : margin / range.low,
    why: null,
  };
}
