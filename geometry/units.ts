/**
 * Names for numbers. Plain aliases: they say the unit where the value is declared and cost nothing.
 * Inside geometry/ every quantity is in one of these; the file's units (degrees, cm3, g/cm3) live only in job/ and sheet/.
 */
export type Mm = number;
export type Mm2 = number;
export type Mm3 = number;
/** First moment of a volume about a plane through the origin. */
export type Mm4 = number;
/** Counter-clockwise seen from +z. */
export type Rad = number;
export type Deg = number;
export type Gram = number;
/** Mass times its distance from the shaft: an unbalance. */
export type GramMm = number;
/** Turns a minute. */
export type Rpm = number;
/** g/mm3; cast iron is about 0.0072. */
export type Density = number;
export type Minute = number;
/** By the clock on the wall of the shop, no zone: `2026-12-01T07:00` (ISO 8601). */
export type LocalTime = string;
/** With its distance from UTC: `2026-12-01T07:12:30+01:00` (RFC 3339). */
export type Instant = string;
export type Celsius = number;
/** A share or an allowance, 1 = all of it. */
export type Fraction = number;

export type Vec3 = readonly [number, number, number];

/** The two numbers that place a point on a face, as the geometry definitions list them; angles in radians. */
export type FacePoint = readonly [first: number, second: number];

export const TURN: Rad = 2 * Math.PI;
const DEGREE = Math.PI / 180;

export const toRadians = (angle: Deg): Rad => angle * DEGREE;
export const toDegrees = (angle: Rad): Deg => angle / DEGREE;

/** The same direction in [0, 2 pi). */
export function wrapTurn(angle: Rad): Rad {
  const wrapped = angle % TURN;
  return wrapped < 0 ? wrapped + TURN : wrapped;
}
