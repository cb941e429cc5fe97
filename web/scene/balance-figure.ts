import type { Part } from '../../geometry/part/part.ts';
import type { BalanceResult } from '../../geometry/sheet/balance-result.ts';
import { type Mm, type Rad, TURN, toRadians, type Vec3 } from '../../geometry/units.ts';

/** Lines of the balance in the part frame, mm. */
export interface BalanceFigure {
  /** Circle of what is permitted; the arrow is drawn to its scale. */
  readonly limit: readonly Vec3[];
  readonly shaft: readonly Vec3[];
  readonly head: readonly Vec3[];
  /** Where the figure stands. */
  readonly word: Vec3;
  /** Outlines of what is taken off or put on. */
  readonly taken: readonly Outline[];
}

export interface Outline {
  readonly ring: readonly Vec3[];
  /** On the back of the shroud: seen through the part from the vane side. */
  readonly isBehind: boolean;
}

/** The circle's radius as a share of the rotor's, and the longest an arrow gets. */
const LIMIT = 0.45;
const LONGEST = 1.15;
const HEAD = 0.08;
const CORNERS = 64;

/**
 * The net vector and its limit in the plane above the vanes, to one scale; a vector too long for the picture is cut off at 1.15 of the
 * radius, its figure tells.
 */
export function balanceFigure(part: Part, { net, permissible, correction }: BalanceResult): BalanceFigure {
  const { radius, top } = sizesOf(part);
  const at = (r: Mm, angle: Rad, z = top): Vec3 => [r * Math.cos(angle), r * Math.sin(angle), z];
  const ring = (r: Mm) => Array.from({ length: CORNERS }, (_, i) => at(r, (TURN * i) / CORNERS));
  const angle = toRadians(net.angle);
  const length = Math.min(LONGEST * radius, (net.amount / permissible) * LIMIT * radius);
  const head = Math.min(HEAD * radius, length);
  const foot = length - head;
  const aside = head * 0.45;
  const corner = (side: number): Vec3 => [
    foot * Math.cos(angle) - side * Math.sin(angle),
    foot * Math.sin(angle) + side * Math.cos(angle),
    top,
  ];
  return {
    limit: ring(LIMIT * radius),
    shaft: [at(0, 0), at(foot, angle)],
    head: [at(length, angle), corner(aside), corner(-aside)],
    word: at(length + 0.09 * radius, angle),
    taken: correction.taken.flatMap(({ correction: one }) => outlines(one, part)),
  };
}

function sizesOf({ body, faces }: Part): { readonly radius: Mm; readonly top: Mm } {
  if (body.kind === 'impeller') {
    const { outerRadius, hubHeight, vanes } = body.shape;
    return { radius: outerRadius, top: Math.max(hubHeight, vanes.heightInlet, vanes.heightOutlet) };
  }
  const { grid } = faces[0];
  return { radius: grid.u0 + grid.rows * grid.du, top: 0 };
}

type Taken = BalanceResult['correction']['taken'][number]['correction'];

/** Rings of holes and frames of sectors, where they are on the part. */
function outlines(correction: Taken, part: Part): Outline[] {
  const isBehind = correction.face === 'shroud/back';
  return ringsOf(correction, part).map((ring) => ({ ring, isBehind }));
}

function ringsOf(correction: Taken, part: Part): (readonly Vec3[])[] {
  const depth = part.body.kind === 'impeller' ? part.body.shape.shroudThickness : 0;
  if (correction.kind === 'holes') {
    const { face, at, diameter } = correction;
    const { radius } = sizesOf(part);
    return at.map(([first, second]) =>
      Array.from({ length: 24 }, (_, i): Vec3 => {
        const [a, b] = [
          (diameter / 2) * Math.cos((TURN * i) / 24),
          (diameter / 2) * Math.sin((TURN * i) / 24),
        ];
        if (face === 'shroud/back') {
          const angle = toRadians(second);
          return [first * Math.cos(angle) + a, first * Math.sin(angle) + b, -depth];
        }
        const angle = toRadians(first) + a / radius;
        return [radius * Math.cos(angle), radius * Math.sin(angle), -second + b];
      }),
    );
  }
  const [[inner, outer], [from, to]] = [correction.first, correction.second];
  const z = correction.kind === 'skim' ? -depth : correction.height;
  const arc = (r: Mm, start: number, end: number) =>
    Array.from({ length: 25 }, (_, i): Vec3 => {
      const angle = toRadians(start + ((end - start) * i) / 24);
      return [r * Math.cos(angle), r * Math.sin(angle), z];
    });
  return [[...arc(inner, from, to), ...arc(outer, to, from)]];
}
