/** What a gauge shows, as a depth of wear. */
import type { Face } from '../../geometry/part/face.ts';
import { toGridPoint } from '../../geometry/part/face.ts';
import type { FacePoint, Mm } from '../../geometry/units.ts';
import { formatQuantity } from '../fields/format-quantity.ts';
import { type ScreenUnits, shownUnit } from '../fields/quantity-units.ts';
import { ownPoint } from './file-point.ts';

/**
 * What was read: the depth itself; two readings of a gauge that hangs from a bar, on sound metal and at the place; or the wall that
 * is left, by ultrasonic thickness gauge.
 */
export type ReadingKind = 'depth' | 'two-readings' | 'wall-left';

/**
 * The depth a reading stands for, mm; negative where a gauge reads less than on sound metal.
 * @param against  the reading on sound metal, or the wall as new behind the place; of no use to a depth
 */
export function readDepth(kind: ReadingKind, reading: Mm, against: Mm): Mm {
  if (kind === 'depth') return reading;
  return withoutDust(kind === 'two-readings' ? reading - against : against - reading);
}

/** The sum that makes a depth, as it stands beside the field: `12.40 - 9.85 = 2.55 mm deep`; '' where there is none to make. */
export function depthSum(kind: ReadingKind, reading: Mm, against: Mm, units: ScreenUnits): string {
  if (kind === 'depth') return '';
  const [from, less] = kind === 'two-readings' ? [reading, against] : [against, reading];
  const sizes = [from, less, readDepth(kind, reading, against)];
  const figures = sizes.map((size) => formatQuantity(size, 'length', units));
  const typed = sizes.map((size) => formatQuantity(size, 'length', units, { as: 'typed' }));
  // Figures line up, but only where none of them was rounded do they add up.
  const [first, second, depth] = figures.every((text, i) => Number(text) === Number(typed[i]))
    ? figures
    : typed;
  return `${first} - ${second} = ${depth} ${shownUnit('length', units).symbol} deep`;
}

/** The wall as new behind a place of a face, as the file spells the place; null where the wall is no measure of what is left. */
export function wallAsNew(face: Face, at: FacePoint): Mm | null {
  const [u] = toGridPoint(face, ownPoint(face, at));
  return face.isWall(u) ? face.wall(u) : null;
}

/** A difference of two readings to 0.1 um: finer than any gauge, coarser than the dust of binary numbers. */
const withoutDust = (size: Mm): Mm => Math.round(size * 10_000) / 10_000 + 0;
