/**
 * The nominal shape of a face, so that a ray can be cut with it: a cone about z (a plane when flat) or a cylinder about z seen from
 * inside. Found from what every face says of itself.
 */
import type { Face } from '../../geometry/part/face.ts';
import type { Mm, Vec3 } from '../../geometry/units.ts';
import type { Ray } from './camera.ts';

export interface Surface {
  /** Distances along the ray at which it meets the surface from outside the metal, `lower` mm below it; nearest first. */
  meets(ray: Ray, lower?: Mm): readonly Mm[];
  /** How far a point lies below the surface, mm, and the grid point above it. */
  below(point: Vec3): { readonly depth: Mm; readonly u: number; readonly v: number };
}

export function surfaceOf(face: Face): Surface {
  const { grid } = face;
  const [, , nz] = face.normal(grid.u0, grid.v0);
  return Math.abs(nz) < 1e-9 ? cylinder(face) : cone(face);
}

function cone(face: Face): Surface {
  const { grid, picture } = face;
  const u1 = grid.u0 + grid.rows * grid.du;
  const [nx, , cos] = face.normal(u1, 0);
  const polar = picture.kind === 'polar';
  const sin = polar ? -nx : 0;
  const tan = sin / cos;
  const level = face.position(u1, 0, 0)[2] - (polar ? u1 * tan : 0);
  return {
    meets(ray, lower = 0) {
      const { from, along } = ray;
      const gap = from[2] - (level - lower / cos);
      if (tan === 0) {
        const t = -gap / along[2];
        return along[2] * cos < 0 && t > 0 ? [t] : [];
      }
      // (gap + t dz)^2 = tan^2 r(t)^2, on the half of the double cone where the two have one sign.
      const k = tan * tan;
      const a = along[2] ** 2 - k * (along[0] ** 2 + along[1] ** 2);
      const b = gap * along[2] - k * (from[0] * along[0] + from[1] * along[1]);
      const c = gap * gap - k * (from[0] ** 2 + from[1] ** 2);
      return roots(a, b, c).filter((t) => {
        const r = Math.hypot(from[0] + t * along[0], from[1] + t * along[1]);
        const rise = gap + t * along[2];
        const outward = (from[0] + t * along[0]) * along[0] + (from[1] + t * along[1]) * along[1];
        return t > 0 && rise * tan >= 0 && -sin * (outward / Math.max(r, 1e-9)) + cos * along[2] < 0;
      });
    },
    below: face.below,
  };
}

function cylinder(face: Face): Surface {
  const { grid } = face;
  const [x0, y0] = face.position(0, grid.v0, 0);
  const radius = Math.hypot(x0, y0);
  return {
    meets({ from, along }, lower = 0) {
      const a = along[0] ** 2 + along[1] ** 2;
      const b = from[0] * along[0] + from[1] * along[1];
      const c = from[0] ** 2 + from[1] ** 2 - (radius + lower) ** 2;
      // From inside the ray leaves the cylinder: the further root.
      return roots(a, b, c)
        .slice(1)
        .filter((t) => t > 0);
    },
    below: face.below,
  };
}

/** Real roots of a t^2 + 2 b t + c, smaller first. */
function roots(a: number, b: number, c: number): readonly number[] {
  if (Math.abs(a) < 1e-12) return Math.abs(b) < 1e-12 ? [] : [-c / (2 * b)];
  const inside = b * b - a * c;
  if (inside < 0) return [];
  const root = Math.sqrt(inside);
  const [p, q] = [(-b - root) / a, (-b + root) / a];
  return p < q ? [p, q] : [q, p];
}
