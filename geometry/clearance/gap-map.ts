import type { Clearance } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { evenGap, fillingOf, filmOn, type GapState, tipDepths } from './gap.ts';
import type { GapBasis } from './gap-basis.ts';
import type { GapSetting } from './gap-setting.ts';
import { leastByBin } from './ring-depths.ts';

/** The least gap round the plate as the rotor turns past it: by ring from the shaft outwards, then by sector from angle 0 counter-clockwise. */
export interface GapMap {
  /** Middles of the rings, all of one width, from one end of the overlap to the other. */
  readonly radii: readonly Mm[];
  readonly sectors: number;
  /** null where there is no plate or no tip passes. */
  readonly asFound: readonly (readonly (Mm | null)[])[];
  readonly filled: readonly (readonly (Mm | null)[])[];
  readonly coated: readonly (readonly (Mm | null)[])[];
}

/** A picture needs no more rings. */
const MOST_RINGS = 40;

/** Of each place of the plate the least gap to any tip that passes there, so the least of the map is the least of the gap. */
export function gapMap(basis: GapBasis, ask: Clearance, setting: GapSetting): GapMap {
  const { rings, shared, plate, tips, openings } = basis;
  const { sectors } = plate.residuals;
  const count = Math.min(MOST_RINGS, rings.count);
  const draw = (state: GapState): (Mm | null)[][] => {
    const isCoated = state === 'coated';
    const even = evenGap(ask, setting) - (isCoated ? filmOn(plate, setting, setting.barePlate) : 0);
    const below = leastByBin(plate.residuals, state === 'asFound' ? 'none' : fillingOf(plate, setting));
    const map = Array.from({ length: count }, () => Array.from({ length: sectors }, (): Mm | null => null));
    shared.forEach((ring, i) => {
      const onTips = Math.min(
        ...tips
          .filter(({ residuals }) => residuals.weight[ring] > 0)
          .map(
            (tip) =>
              tipDepths(tip, setting, state).least[ring] -
              (isCoated ? filmOn(tip, setting, setting.bareTips) : 0),
          ),
      );
      const opening = ask.asNewHolds === 'at the closest' ? openings[i].least : 0;
      const row = map[Math.floor(((ring + 0.5) / rings.count) * count)];
      for (let sector = 0; sector < sectors; sector++) {
        const depth = below[ring * sectors + sector];
        if (depth === Infinity) continue;
        row[sector] = Math.min(row[sector] ?? Infinity, even + opening + depth + onTips);
      }
    });
    return map;
  };
  return {
    radii: Array.from(
      { length: count },
      (_, i) => rings.from + ((i + 0.5) / count) * rings.count * rings.width,
    ),
    sectors,
    asFound: draw('asFound'),
    filled: draw('filled'),
    coated: draw('coated'),
  };
}
