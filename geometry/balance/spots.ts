import type { Mm, Rad } from '../units.ts';

/** Places are looked at this far apart, mm: finer than a fitter sets a drill. */
const SPACING: Mm = 1;

/** A disc or a sector of the shroud, seen along the shaft. */
export type Spot =
  | { readonly kind: 'disc'; readonly radius: Mm; readonly angle: Rad; readonly reach: Mm }
  | {
      readonly kind: 'sector';
      readonly inner: Mm;
      readonly outer: Mm;
      readonly from: Rad;
      readonly to: Rad;
    };

/** The least of a quantity over a spot, its edge included; stops at the first that is 0 or less. */
export function leastOver(spot: Spot, quantity: (radius: Mm, angle: Rad) => number): number {
  let least = Infinity;
  const look = (radius: Mm, angle: Rad): boolean => {
    least = Math.min(least, quantity(radius, angle));
    return least > 0;
  };
  if (spot.kind === 'disc') lookRound(spot, look);
  else lookAlong(spot, look);
  return least;
}

function lookRound(
  { radius, angle, reach }: Extract<Spot, { kind: 'disc' }>,
  look: (radius: Mm, angle: Rad) => boolean,
): void {
  if (!look(radius, angle)) return;
  const rings = Math.max(2, Math.ceil(reach / SPACING));
  for (let ring = 1; ring <= rings; ring++) {
    const off = (reach * ring) / rings;
    for (let i = 0; i < 6 * ring; i++) {
      const turn = (2 * Math.PI * i) / (6 * ring);
      const [x, y] = [radius + off * Math.cos(turn), off * Math.sin(turn)];
      if (!look(Math.hypot(x, y), angle + Math.atan2(y, x))) return;
    }
  }
}

function lookAlong(
  { inner, outer, from, to }: Extract<Spot, { kind: 'sector' }>,
  look: (radius: Mm, angle: Rad) => boolean,
): void {
  const rows = Math.max(2, Math.ceil((outer - inner) / SPACING));
  const columns = Math.max(2, Math.ceil(((to - from) * outer) / SPACING));
  for (let i = 0; i <= rows; i++) {
    for (let j = 0; j <= columns; j++) {
      if (!look(inner + ((outer - inner) * i) / rows, from + ((to - from) * j) / columns)) return;
    }
  }
}
