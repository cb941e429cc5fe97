import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { RunningFace } from './face-residuals.ts';
import type { Rings } from './row-walk.ts';

/** How much further than at the closest two parts stand apart by their drawings, over the width of a ring. */
export interface Opening {
  readonly least: Mm;
  /** In the middle of the ring. */
  readonly middle: Mm;
  readonly most: Mm;
}

/**
 * The openings of the shared rings: plate and tips stand towards each other, so where both are high they are close. A tip counts as turned
 * to the cone that its camber runs on.
 * Accuracy: exact where plate and tips rise in proportion to the radius, as cones and raked vanes do
 */
export function openingsOf(
  { from, width }: Rings,
  shared: readonly number[],
  plate: RunningFace,
  tips: readonly RunningFace[],
): Opening[] {
  const onPlate = heightLaw(plate.face);
  const onTips = tips.map(({ face }) => heightLaw(face));
  const stack = (radius: Mm): Mm =>
    onPlate(radius) + onTips.reduce((sum, law) => sum + law(radius), 0) / onTips.length;
  const sums = shared.map((ring) => [0, 0.5, 1].map((place) => stack(from + (ring + place) * width)));
  const closest = Math.max(...sums.flat());
  return sums.map((places) => ({
    least: closest - Math.max(...places),
    middle: closest - places[1],
    most: closest - Math.min(...places),
  }));
}

/** Rows that tell how a face rises. */
const ROWS = 64;
/** Nearer than this two places have one radius, mm. */
const SAME: Mm = 1e-6;

/** Height z in the part's own frame against radius, along the middles of the rows: straight between them, and on beyond the first and the last. */
function heightLaw({ grid, position }: Face): (radius: Mm) => Mm {
  const { u0, du, v0, dv, rows, columns } = grid;
  const count = Math.min(rows, ROWS);
  const places = Array.from({ length: count }, (_, i) => {
    const row = count === 1 ? 0 : Math.round((i / (count - 1)) * (rows - 1));
    const [x, y, z] = position(u0 + (row + 0.5) * du, v0 + (columns / 2) * dv, 0);
    return { radius: Math.hypot(x, y), height: z };
  })
    .sort((a, b) => a.radius - b.radius)
    .filter(({ radius }, i, all) => i === 0 || radius - all[i - 1].radius > SAME);
  if (places.length === 1) return () => places[0].height;
  return (radius) => {
    let i = 1;
    while (i < places.length - 1 && places[i].radius < radius) i++;
    const [a, b] = [places[i - 1], places[i]];
    return a.height + ((radius - a.radius) / (b.radius - a.radius)) * (b.height - a.height);
  };
}
