import type { ClearanceResult } from '../../../geometry/sheet/clearance-result.ts';

/** What a gap means against the band. */
export type GapBand = 'meets' | 'tight' | 'fits' | 'wide';

/** A stretch of a ring that means the same, by sectors. */
export interface BandArc {
  readonly band: GapBand;
  readonly ring: number;
  /** Sectors from and to, the last one not counted. */
  readonly from: number;
  readonly to: number;
}

export function bandOf(gap: number, { least, most }: ClearanceResult['band']): GapBand {
  if (gap <= 0) return 'meets';
  if (gap < least - EVEN) return 'tight';
  return gap > most + EVEN ? 'wide' : 'fits';
}

/** On its limit a gap keeps it, mm. */
const EVEN = 1e-6;

/**
 * The rings of a map cut into stretches of one meaning.
 * @param rings  gaps by ring and sector, mm; null where nothing runs
 */
export function bandArcs(
  rings: readonly (readonly (number | null)[])[],
  band: ClearanceResult['band'],
): BandArc[] {
  return rings.flatMap((gaps, ring) => {
    const arcs: BandArc[] = [];
    let from = 0;
    const bands = gaps.map((gap) => (gap === null ? null : bandOf(gap, band)));
    for (let sector = 1; sector <= bands.length; sector++) {
      if (sector < bands.length && bands[sector] === bands[from]) continue;
      const own = bands[from];
      if (own !== null) arcs.push({ band: own, ring, from, to: sector });
      from = sector;
    }
    return arcs;
  });
}

/** Path of a piece of a ring, y down the page, angles counter-clockwise in radians; a whole turn stays a ring. */
export function arcPath(inner: number, outer: number, from: number, to: number): string {
  const at = (radius: number, angle: number): string =>
    `${(radius * Math.cos(angle)).toFixed(2)} ${(-radius * Math.sin(angle)).toFixed(2)}`;
  const middle = (from + to) / 2;
  const along = (radius: number, ends: readonly number[], sweep: 0 | 1): string =>
    ends
      .map((angle) => `A${radius.toFixed(2)} ${radius.toFixed(2)} 0 0 ${sweep} ${at(radius, angle)}`)
      .join('');
  return `M${at(outer, from)}${along(outer, [middle, to], 0)}L${at(inner, to)}${along(inner, [middle, from], 1)}Z`;
}
