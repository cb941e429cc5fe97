/** Readings and random fields made to order for the kriging tests. */
import type { Observed } from '../../../../geometry/depth/kriging/kriging.ts';

/** Readings [x, y, depth] of one plane, all with the same error. */
export function observed(
  points: readonly (readonly [x: number, y: number, depth: number])[],
  variance = 0,
): Observed {
  return {
    places: Float64Array.from(points.flatMap(([x, y]) => [x, y, 0])),
    depth: Float64Array.from(points, ([, , depth]) => depth),
    error: new Float64Array(points.length).fill(variance),
  };
}

/** Numbers in [0, 1) that are the same on every run (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Franke's test surface over the unit square.
 * Source: R. Franke, A Critical Comparison of Some Methods for Interpolation of Scattered Data, NPS-53-79-003 (1979).
 */
export function franke(x: number, y: number): number {
  const [a, b] = [9 * x, 9 * y];
  return (
    0.75 * Math.exp(-((a - 2) ** 2 + (b - 2) ** 2) / 4) +
    0.75 * Math.exp(-((a + 1) ** 2) / 49 - (b + 1) / 10) +
    0.5 * Math.exp(-((a - 7) ** 2 + (b - 3) ** 2) / 4) -
    0.2 * Math.exp(-((a - 4) ** 2) - (b - 7) ** 2)
  );
}
