/**
 * What comes off with a tool, in closed form: these propose a correction, `corrected` integrates it. Density g/mm3, lengths mm,
 * unbalance g.mm; the pull lies towards the middle of the tool's place. Source: calculus; tests/geometry/balance/metal-off.test.ts.
 */
import type { Density, Gram, GramMm, Mm, Mm3, Rad } from '../units.ts';

/** An axial flat-bottomed hole of this radius, its centre at `at` from the shaft. */
export function axialHole(density: Density, radius: Mm, depth: Mm, at: Mm): GramMm {
  return density * Math.PI * radius ** 2 * depth * at;
}

export function depthOfAxialHole(wanted: GramMm, density: Density, radius: Mm, at: Mm): Mm {
  return wanted / axialHole(density, radius, 1, at);
}

/** A radial flat-bottomed hole from the rim at `rim` inward. The rim is taken as flat over the hole. */
export function radialHole(density: Density, radius: Mm, depth: Mm, rim: Mm): GramMm {
  return density * Math.PI * radius ** 2 * (rim * depth - depth ** 2 / 2);
}

/** null when even a hole down to the shaft would not take as much. */
export function depthOfRadialHole(wanted: GramMm, density: Density, radius: Mm, rim: Mm): Mm | null {
  const square = rim ** 2 - (2 * wanted) / (density * Math.PI * radius ** 2);
  return square < 0 ? null : rim - Math.sqrt(square);
}

/** Half the angle of the usual twist drill's point, 118 deg. Common practice. */
const HALF_POINT: Rad = (59 / 180) * Math.PI;

/** What the point of a twist drill takes below its full diameter. */
export function drillPoint(diameter: Mm): Mm3 {
  return (Math.PI * diameter ** 3) / (24 * Math.tan(HALF_POINT));
}

/** How deep the tip of a twist drill goes to take as much as a flat-bottomed hole; null when that is less than its point. */
export function tipDepth(diameter: Mm, flatDepth: Mm): Mm | null {
  const point = diameter / (2 * Math.tan(HALF_POINT));
  // The point holds a third of the cylinder about it.
  return flatDepth < point / 3 ? null : flatDepth + (2 / 3) * point;
}

/** A sector of a flat ring skimmed evenly: radii from and to, half its angle. */
export interface Sector {
  readonly inner: Mm;
  readonly outer: Mm;
  readonly halfAngle: Rad;
}

export function sectorMass(density: Density, { inner, outer, halfAngle }: Sector, depth: Mm): Gram {
  return density * depth * halfAngle * (outer ** 2 - inner ** 2);
}

export function sector(density: Density, { inner, outer, halfAngle }: Sector, depth: Mm): GramMm {
  return (2 / 3) * density * depth * (outer ** 3 - inner ** 3) * Math.sin(halfAngle);
}

export function depthOfSector(wanted: GramMm, density: Density, shape: Sector): Mm {
  return wanted / sector(density, shape, 1);
}
