import type { Mm, Rad } from '../units.ts';
import { ANGLE_STEP, toStep, upToStep, webOf } from './attempt.ts';
import { heading } from './vector.ts';

/** Holes of one size on one circle, evenly spread about a direction. */
export interface HoleRow {
  readonly drill: Mm;
  /** Circle the centres stand on; the rim's for radial holes. */
  readonly circle: Mm;
  readonly angles: readonly Rad[];
  /** Sum of the cosines off the direction: a row pulls as much as so many holes on it. */
  readonly together: number;
}

/** The outermost hole pulls half as much as one on the line; further off none is worth its work. */
const WIDEST: Rad = Math.PI / 3;
/** Times the closest spacing. */
const SPREADS = [1, 1.5, 2, 3];

/**
 * Every row of up to `most` holes that may stand about a direction, the closest spacing first.
 * @param narrow  radius at which the holes come nearest each other, mm: where radial ones end
 */
export function holeRows(direction: Rad, drill: Mm, circle: Mm, most: number, narrow = circle): HoleRow[] {
  const middle = toStep(direction, ANGLE_STEP);
  const apart = 2 * Math.asin(Math.min(1, (drill + webOf(drill)) / (2 * narrow)));
  const rows: HoleRow[] = [];
  for (let count = 1; count <= most; count++) {
    for (const spread of count === 1 ? [1] : SPREADS) {
      // Whole steps apart from the middle as well, for an even number.
      const pitch = upToStep(apart * spread, 2 * ANGLE_STEP);
      if (((count - 1) / 2) * pitch > WIDEST) break;
      const offs = Array.from({ length: count }, (_, i) => (i - (count - 1) / 2) * pitch);
      rows.push({
        drill,
        circle,
        angles: offs.map((off) => heading(middle + off)),
        together: offs.reduce((sum, off) => sum + Math.cos(middle + off - direction), 0),
      });
    }
  }
  return rows;
}
