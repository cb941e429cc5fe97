import type { Density, Fraction, Gram, Mm3 } from '../units.ts';

/** What the data sheet says of a two-part material. Filler and coat both are one. */
export interface Mix {
  /** Of the mix, as stated. */
  readonly density: Density;
  /** Parts of A to parts of B by volume. */
  readonly ratioByVolume: readonly [number, number];
  /** Used only when both are known. */
  readonly densityA: Density | null;
  readonly densityB: Density | null;
}

/** A quantity of one component. */
export interface Portion {
  readonly volume: Mm3;
  readonly mass: Gram;
}

/**
 * Density of the mix, g/mm3: (ra dA + rb dB) / (ra + rb); as stated when A or B is not given.
 * Assumes no change of volume on mixing.
 */
export function mixedDensity(mix: Mix): Density {
  return computedDensity(mix) ?? mix.density;
}

/** How far the stated density lies from the one that A, B and the ratio give, as a share of the latter; null when A or B is not given. */
export function densityMismatch(mix: Mix): Fraction | null {
  const computed = computedDensity(mix);
  return computed === null ? null : mix.density / computed - 1;
}

/**
 * How much of A and of B makes a volume of the mix, mm3. The two volumes and the two masses add up to those of the mix.
 * Without the densities of A and B both are taken to be as dense as the mix: only the sum of their masses is then true, and the estimate warns.
 */
export function portionsOf(mix: Mix, volume: Mm3): { readonly partA: Portion; readonly partB: Portion } {
  const [a, b] = mix.ratioByVolume;
  const bothKnown = computedDensity(mix) !== null;
  const volumeA = (volume * a) / (a + b);
  const volumeB = (volume * b) / (a + b);
  return {
    partA: { volume: volumeA, mass: volumeA * (bothKnown ? (mix.densityA ?? 0) : mix.density) },
    partB: { volume: volumeB, mass: volumeB * (bothKnown ? (mix.densityB ?? 0) : mix.density) },
  };
}

function computedDensity({ ratioByVolume: [a, b], densityA, densityB }: Mix): Density | null {
  if (densityA === null || densityB === null) return null;
  return (a * densityA + b * densityB) / (a + b);
}
