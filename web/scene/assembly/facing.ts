import type { Clearance } from '../../../geometry/job/job.ts';
import type { ImpellerBody, Part, PlateBody } from '../../../geometry/part/part.ts';
import type { Mm } from '../../../geometry/units.ts';

/** How a plate and an impeller face each other as new. */
export interface Facing {
  readonly plate: PlateBody;
  readonly rotor: ImpellerBody;
  /** Both ends of the radii they share. */
  readonly from: Mm;
  readonly to: Mm;
  /**
   * Height of the plate's own origin over that of the impeller, mm: so high that at the closest radius the nominal faces stand apart by
   * the gap as new and the shim.
   */
  readonly standOff: Mm;
  /** How much further than at the closest they stand apart by their sizes, mm. */
  openingAt(radius: Mm): Mm;
  /** The plate is drawn following the tips: the gap as new holds everywhere, whatever the sizes say. */
  readonly follows: boolean;
  /** How far the plate is drawn bent towards the vanes, mm: by the opening where the gap as new holds everywhere, else not. */
  bendAt(radius: Mm): Mm;
  /** Height of the tips as they were turned, mm. */
  tipAt(radius: Mm): Mm;
}

/** Places along the radius; between two of them both faces run straight. */
const STEPS = 200;

/**
 * Stands the running face of a plate over the tips of an impeller's vanes. A tip is taken at the height its vane has at that radius on
 * the camber, all across.
 * @returns null when the parts are no plate and impeller, or share no radius
 * Exact. Source: job format, "Clearance"; tests/web/scene/assembly/facing.test.ts
 */
export function facing(
  plate: Part,
  impeller: Part,
  { asNew, shim, asNewHolds }: Pick<Clearance, 'asNew' | 'shim' | 'asNewHolds'>,
): Facing | null {
  const [below, above] = [plate.body, impeller.body];
  if (below.kind !== 'plate' || above.kind !== 'impeller') return null;
  const { vanes, outerRadius } = above.shape;
  const rake = (vanes.heightOutlet - vanes.heightInlet) / (outerRadius - vanes.inletRadius);
  const tipAt = (radius: Mm): Mm =>
    vanes.heightInlet + rake * (clamp(radius, vanes.inletRadius, outerRadius) - vanes.inletRadius);
  const ends = plateRadii(plate);
  const from = Math.max(ends.from, vanes.inletRadius);
  const to = Math.min(ends.to, outerRadius);
  if (!(to > from)) return null;

  const stackAt = (radius: Mm): Mm => {
    const shared = clamp(radius, from, to);
    return below.height(shared, 0) + tipAt(shared);
  };
  const closest = Math.max(
    ...Array.from({ length: STEPS + 1 }, (_, i) => stackAt(from + ((to - from) * i) / STEPS)),
  );
  const follows = asNewHolds === 'everywhere';
  const openingAt = (radius: Mm): Mm => closest - stackAt(radius);
  return {
    plate: below,
    rotor: above,
    from,
    to,
    standOff: asNew + shim + closest,
    openingAt,
    follows,
    bendAt: follows ? openingAt : () => 0,
    tipAt,
  };
}

/** Places looked at along each side of a plate of any outline. */
const LOOKED = 160;

/** The least and the greatest radius of the running face, mm. */
function plateRadii({ faces: [face] }: Part): { readonly from: Mm; readonly to: Mm } {
  const { grid, picture } = face;
  if (picture.kind === 'polar') return { from: grid.u0, to: grid.u0 + grid.rows * grid.du };
  let [from, to] = [Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i <= LOOKED; i++) {
    for (let k = 0; k <= LOOKED; k++) {
      const u = grid.u0 + (i / LOOKED) * grid.rows * grid.du;
      const v = grid.v0 + (k / LOOKED) * grid.columns * grid.dv;
      if (!face.holds(u, v)) continue;
      const [x, y] = face.position(u, v, 0);
      const radius = Math.hypot(x, y);
      [from, to] = [Math.min(from, radius), Math.max(to, radius)];
    }
  }
  return { from, to };
}

const clamp = (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most);
