/**
 * The colours of what is left of a wall, used for nothing else and not to be taken for those of depth: pale where the wall is thick,
 * through mauve to plum where it is thin. Lightness falls evenly, so the order survives a grey print and needs no eye for hues.
 * Source: tests/geometry/sheet/wall-colour.test.ts
 */
import type { Fraction } from '../units.ts';
import { colourOf, rampOf } from './depth-colour.ts';

const WALL_RAMP: Uint8Array = rampOf([
  { lightness: 0.95, chroma: 0.012, hue: 310 },
  { lightness: 0.78, chroma: 0.075, hue: 316 },
  { lightness: 0.58, chroma: 0.12, hue: 318 },
  { lightness: 0.33, chroma: 0.13, hue: 318 },
]);

/** @param share  thickness as a share of the way from the thin end of the scale to the thick one; clamped to 0..1 */
export const wallColour = (share: Fraction): string => colourOf(WALL_RAMP, 1 - share);
