import type { Mm3, Mm4 } from '../units.ts';

/** A volume and where it sits: mm3, first moments mm4, products mm5, part frame. */
export interface Metal {
  readonly volume: Mm3;
  readonly x: Mm4;
  readonly y: Mm4;
  readonly z: Mm4;
  readonly xz: number;
  readonly yz: number;
}
