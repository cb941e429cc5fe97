import type { Mm } from '../../../geometry/units.ts';

/** A strip across the rotor, square to the line of the net pull. */
export interface PullBand {
  /** Distances along the net vector, mm from the shaft. */
  readonly from: Mm;
  readonly to: Mm;
  /** What 1 cm2 filled 1 mm more does at `from`, g.mm; negative shrinks the pull. */
  readonly value: number;
  /** For the colour: its middle against the strongest, -1..1. */
  readonly strength: number;
}

/** cm3 that 1 mm on 1 cm2 takes. */
const VOLUME = 0.1;
const BANDS_A_SIDE = 3;

/**
 * How the pull of more filler changes across a rotor: mass times the distance along the net vector. Small against the vector, so to
 * first order; mm, g.mm, density g/cm3. Source: mechanics.
 */
export function pullBands(outerRadius: Mm, density: number): PullBand[] {
  const strongest = VOLUME * density * outerRadius;
  const step = niceStep(strongest / BANDS_A_SIDE);
  const wide = step / (VOLUME * density);
  const first = -Math.ceil(outerRadius / wide);
  return Array.from({ length: -2 * first }, (_, i) => {
    const from = Math.max(-outerRadius, (first + i) * wide);
    const to = Math.min(outerRadius, (first + i + 1) * wide);
    return { from, to, value: (first + i) * step, strength: (from + to) / 2 / outerRadius };
  });
}

/** 1, 2 or 5 times a power of ten, the nearest below. */
function niceStep(size: number): number {
  const power = 10 ** Math.floor(Math.log10(size));
  return power * ([5, 2, 1].find((times) => times * power <= size) ?? 1);
}
