/** Random worn surfaces whose volume is known in closed form, and seeded chance to draw them and the readings with. */
import type { Hole } from '../../geometry/job/job.ts';

/** Numbers in [0, 1), the same for the same seed. */
export type Chance = () => number;

/** A congruential generator of 32 bits, its high bits mixed (Knuth, The Art of Computer Programming 2, 3.3.4, from memory). */
export function seeded(seed: number): Chance {
  let state = Math.imul(seed + 1, 0x9e3779b1) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const mixed = Math.imul(state ^ (state >>> 15), 0x85ebca6b);
    return ((mixed ^ (mixed >>> 13)) >>> 0) / 4294967296;
  };
}

export const between = (chance: Chance, low: number, high: number): number => low + (high - low) * chance();

/** Of mean 0 and standard deviation 1. */
export function normal(chance: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());
}

export type FieldShape = 'matern-3/2' | 'matern-5/2' | 'gaussian';

/** Waves of one height in random directions: depth = mean + height * sum of cos(kx x + ky y + phase). mm. */
export interface RandomField {
  readonly mean: number;
  readonly height: number;
  readonly waves: readonly (readonly [kx: number, ky: number, phase: number])[];
}

/**
 * A field of covariance `shape`, by the spectral method: wave vectors drawn from its spectral density. In the plane that is a normal
 * distribution for the Gaussian and Student's t of 3 and 5 degrees of freedom for the two Materns, over the length (Rasmussen and
 * Williams, Gaussian Processes for Machine Learning, 2006, 4.2.1).
 */
export function randomField(
  chance: Chance,
  { shape, length, sd, mean }: { shape: FieldShape; length: number; sd: number; mean: number },
  waves = 300,
): RandomField {
  const freedom = { 'matern-3/2': 3, 'matern-5/2': 5, gaussian: 0 }[shape];
  const vector = () => {
    const squares = Array.from({ length: freedom }, () => normal(chance) ** 2).reduce((a, b) => a + b, 0);
    const wide = freedom === 0 ? 1 : Math.sqrt(squares / freedom);
    const [a, b] = [normal(chance), normal(chance)];
    return [a / (wide * length), b / (wide * length), 2 * Math.PI * chance()] as const;
  };
  return { mean, height: sd * Math.sqrt(2 / waves), waves: Array.from({ length: waves }, vector) };
}

export function depthOf({ mean, height, waves }: RandomField, x: number, y: number): number {
  let sum = 0;
  for (const [kx, ky, phase] of waves) sum += Math.cos(kx * x + ky * y + phase);
  return mean + height * sum;
}

/** Volume under the field on a disc, mm3: a wave adds up to cos(at the centre) * 2 pi r J1(k r) / k. */
export function volumeOnDisc({ mean, height, waves }: RandomField, { x, y, radius }: Hole): number {
  let sum = 0;
  for (const [kx, ky, phase] of waves) {
    const k = Math.hypot(kx, ky);
    sum += ((Math.cos(kx * x + ky * y + phase) * 2 * Math.PI * radius) / k) * bessel1(k * radius);
  }
  return mean * Math.PI * radius * radius + height * sum;
}

/** J1(x) = mean of cos(p - x sin p) over half a turn; the trapezoidal rule on a periodic function is exact once it has more points than x. */
function bessel1(x: number): number {
  const points = Math.ceil(x / 2) + 20;
  let sum = 0;
  for (let i = 0; i < points; i += 1) {
    const p = (2 * Math.PI * (i + 0.5)) / points;
    sum += Math.cos(p - x * Math.sin(p));
  }
  return sum / points;
}
