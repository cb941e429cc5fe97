import type { Fraction, Mm3, Mm4 } from '../units.ts';

/** A volume and where it sits: mm3, first moments mm4, products mm5, part frame. */
export interface Metal {
  readonly volume: Mm3;
  readonly x: Mm4;
  readonly y: Mm4;
  readonly z: Mm4;
  readonly xz: number;
  readonly yz: number;
}

/** A metal being added up. */
export type MetalSum = { -readonly [K in keyof Metal]: number };

export const NO_METAL: Metal = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };

/** Adds a share of a piece of metal. Writes into `total`. */
export function addMetal(total: MetalSum, piece: Metal, share: Fraction): void {
  total.volume += share * piece.volume;
  total.x += share * piece.x;
  total.y += share * piece.y;
  total.z += share * piece.z;
  total.xz += share * piece.xz;
  total.yz += share * piece.yz;
}
