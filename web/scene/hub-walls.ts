/** Hub, bore and rim of an impeller, which stop a ray and are no worn face. */
import type { Impeller } from '../../geometry/job/job.ts';
import type { Mm } from '../../geometry/units.ts';
import type { Ray } from './camera.ts';

/** How far a ray goes until hub, bore or rim stops it; infinite where none does. */
export function hubBlockAt(shape: Impeller, ray: Ray): Mm {
  const { hubRadius, boreRadius, hubHeight, outerRadius, shroudThickness } = shape;
  const back = -shroudThickness;
  return Math.min(
    wallAt(ray, hubRadius, back, hubHeight, 'outside'),
    wallAt(ray, boreRadius, back, hubHeight, 'inside'),
    wallAt(ray, outerRadius, back, 0, 'outside'),
    ringAt(ray, boreRadius, hubRadius, hubHeight, 'above'),
    ringAt(ray, boreRadius, hubRadius, back, 'below'),
  );
}

/** A ray through the very edge of a wall meets it, mm. */
const EDGE: Mm = 1e-6;

function wallAt({ from, along }: Ray, radius: Mm, low: Mm, high: Mm, side: 'outside' | 'inside'): Mm {
  const a = along[0] ** 2 + along[1] ** 2;
  const b = from[0] * along[0] + from[1] * along[1];
  const root = b * b - a * (from[0] ** 2 + from[1] ** 2 - radius * radius);
  if (root < 0 || a < 1e-12 || high <= low) return Number.POSITIVE_INFINITY;
  const t = (-b + (side === 'outside' ? -1 : 1) * Math.sqrt(root)) / a;
  const z = from[2] + t * along[2];
  return t > 0 && z >= low - EDGE && z <= high + EDGE ? t : Number.POSITIVE_INFINITY;
}

function ringAt({ from, along }: Ray, inner: Mm, outer: Mm, z: Mm, side: 'above' | 'below'): Mm {
  const t = (z - from[2]) / along[2];
  const faces = side === 'above' ? along[2] < 0 : along[2] > 0;
  if (!faces || t <= 0) return Number.POSITIVE_INFINITY;
  const r = Math.hypot(from[0] + t * along[0], from[1] + t * along[1]);
  return r >= inner && r <= outer ? t : Number.POSITIVE_INFINITY;
}
