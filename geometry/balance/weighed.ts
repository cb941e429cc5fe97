import type { Metal } from '../part/metal.ts';
import type { Density, Gram, GramMm } from '../units.ts';

/** A mass and how it pulls at the shaft: g, g.mm, and g.mm2 for the products with z. Negative where something is missing. */
export interface Weighed {
  readonly mass: Gram;
  readonly x: GramMm;
  readonly y: GramMm;
  readonly xz: number;
  readonly yz: number;
}

export const WEIGHTLESS: Weighed = { mass: 0, x: 0, y: 0, xz: 0, yz: 0 };

/** @param density  g/mm3; negative for what is missing */
export function weighed(metal: Metal, density: Density): Weighed {
  return {
    mass: metal.volume * density,
    x: metal.x * density,
    y: metal.y * density,
    xz: metal.xz * density,
    yz: metal.yz * density,
  };
}

export function weighedTogether(pieces: readonly Weighed[]): Weighed {
  return pieces.reduce(
    (sum, piece) => ({
      mass: sum.mass + piece.mass,
      x: sum.x + piece.x,
      y: sum.y + piece.y,
      xz: sum.xz + piece.xz,
      yz: sum.yz + piece.yz,
    }),
    WEIGHTLESS,
  );
}
