import type { Face } from '../part/face.ts';
import type { FacePoint, Mm } from '../units.ts';
import { gauge } from './figure.ts';
import { type FlatFrame, flatPoint } from './flat-frame.ts';
import type { RegionMark } from './flat-marks.ts';

/** More numbers than this on one face hide the wear; the table still lists every region. */
const MOST_NUMBERS = 40;
/** With more regions than this their depths stand in the table alone. */
const MOST_DEPTHS = 12;

/** A damage region of a face by its number in the table. */
export interface NumberedRegion {
  readonly number: number;
  /** Its deepest point. */
  readonly at: FacePoint;
  readonly deepest: Mm;
}

/** @param regions  those of the face, deepest first */
export function regionMarks(
  regions: readonly NumberedRegion[],
  face: Face,
  frame: FlatFrame,
): readonly RegionMark[] {
  return regions.slice(0, MOST_NUMBERS).map(({ number, at, deepest }) => ({
    at: flatPoint(face, frame, at),
    text: String(number),
    depth: regions.length > MOST_DEPTHS ? null : `${gauge(deepest)} mm`,
  }));
}
