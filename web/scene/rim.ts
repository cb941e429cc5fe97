import type { Body } from '../../geometry/part/part.ts';
import type { Mm } from '../../geometry/units.ts';

/** The round outer edge of a part: its radius, how high its upper edge lies and how far its wall reaches down. */
export interface Rim {
  readonly radius: Mm;
  readonly z: Mm;
  readonly wall: Mm;
}

/** Null on a plate given by an outline. */
export function rimOf(body: Body): Rim | null {
  if (body.kind === 'impeller') {
    const { outerRadius, shroudThickness } = body.shape;
    return { radius: outerRadius, z: 0, wall: shroudThickness };
  }
  const edge = body.loops.find(({ role }) => role === 'edge');
  if (edge?.kind !== 'circle') return null;
  return { radius: edge.radius, z: body.height(edge.radius, 0), wall: body.thickness };
}
