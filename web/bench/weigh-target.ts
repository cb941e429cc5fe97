import { partBFor, type WeighedAmiss, weighedAmiss } from '../../geometry/material/weighing.ts';
import type { BatchResult, CoatMixResult } from '../../geometry/sheet/result.ts';
import type { Gram } from '../../geometry/units.ts';

/** What the scale shows on the way: A first, then B into the same bowl, without taring. */
export type WeighTarget =
  | {
      readonly kind: 'weigh';
      /** Scale with A in the bowl, and with B on top of it. */
      readonly scaleA: Gram;
      readonly partB: Gram;
      readonly scaleAB: Gram;
      readonly amiss: WeighedAmiss | null;
    }
  /** A is in the bowl, and the scale cannot show the B that goes with it within 2 %. */
  | { readonly kind: 'too-coarse'; readonly scaleA: Gram }
  | { readonly kind: 'measure'; readonly why: 'no-densities' | 'too-coarse' }
  | { readonly kind: 'cartridge' };

export interface WeighedMix {
  readonly mix: Pick<BatchResult | CoatMixResult, 'partA' | 'partB' | 'weigh'>;
  readonly selfMixing: boolean;
  /** The data sheet names the densities of A and of B. */
  readonly hasDensities: boolean;
  /** Of the scale, g. */
  readonly step: Gram;
}

/**
 * What to weigh for a mix, from what is in the bowl.
 * @param massA  that really went in; undefined before
 * @param massB  likewise
 */
export function weighTarget(
  { mix, selfMixing, hasDensities, step }: WeighedMix,
  massA: Gram | undefined,
  massB: Gram | undefined,
): WeighTarget {
  if (selfMixing) return { kind: 'cartridge' };
  if (!hasDensities) return { kind: 'measure', why: 'no-densities' };
  if (massA === undefined) {
    if (mix.weigh === null) return { kind: 'measure', why: 'too-coarse' };
    const { partA, partB } = mix.weigh;
    return { kind: 'weigh', scaleA: partA, partB, scaleAB: onScale(partA + partB), amiss: null };
  }
  const partB = partBFor(massA, mix, step);
  const amiss = massB === undefined ? null : weighedAmiss(massA, massB, mix);
  if (partB === null) return { kind: 'too-coarse', scaleA: massA };
  return { kind: 'weigh', scaleA: massA, partB, scaleAB: onScale(massA + partB), amiss };
}

/** What is wrong with the mix in the bowl, and what to add to put it right: more of the other part, where there is room for it. */
export function amissWords({ kind, error }: WeighedAmiss): string {
  const much = `${Math.abs(error * 100).toFixed(0)} % too ${error > 0 ? 'much' : 'little'} B`;
  return kind === 'by-volume'
    ? `${much}: that is the ratio by volume. On the scale it is another one. Do not use this mix as it is.`
    : `${much}. Put it right before mixing.`;
}

/**
 * What to add so that the ratio is right again: B where it is short, A where there is too much B.
 * @returns null when nothing is amiss, or the scale cannot show it
 */
export function putRight(
  { mix, step }: Pick<WeighedMix, 'mix' | 'step'>,
  massA: Gram,
  massB: Gram,
): { readonly part: 'A' | 'B'; readonly mass: Gram; readonly scale: Gram } | null {
  const amiss = weighedAmiss(massA, massB, mix);
  if (amiss === null) return null;
  const part = amiss.error > 0 ? 'A' : 'B';
  const ratio = mix.partB.mass / mix.partA.mass;
  const missing = part === 'A' ? massB / ratio - massA : massA * ratio - massB;
  const mass = Math.round(missing / step) * step;
  return mass > 0 ? { part, mass: onScale(mass), scale: onScale(massA + massB + mass) } : null;
}

/** 0.1 + 0.2 is 0.3 on the scale. */
function onScale(mass: Gram): Gram {
  return Number(mass.toPrecision(12));
}
