import { TURN, toRadians } from '../units.ts';
import type { Corner } from './corners.ts';
import type { Hole } from './job.ts';
import type { BoltCircleFile } from './job-file.ts';

/** The holes of a bolt circle, counter-clockwise from the start angle; mm. */
export function holesOfCircle(circle: BoltCircleFile): Hole[] {
  const start = toRadians(circle.startAngle ?? 0);
  return Array.from({ length: circle.count }, (_, i) => {
    const angle = start + (i * TURN) / circle.count;
    return {
      x: (circle.circleDiameter / 2) * Math.cos(angle),
      y: (circle.circleDiameter / 2) * Math.sin(angle),
      radius: circle.holeDiameter / 2,
    };
  });
}

const SIDES = 96;
/** Puts the corners so far out that the polygon has the area of the circle; at 96 sides that is 0.04 % of the radius. */
const REACH = Math.sqrt(TURN / SIDES / Math.sin(TURN / SIDES));

/** A round hole as a polygon of the same area and centre, for a plate that is given by its outline. */
export function holePolygon(hole: Hole): Corner[] {
  return Array.from({ length: SIDES }, (_, i) => {
    const angle = (i * TURN) / SIDES;
    const reach = hole.radius * REACH;
    return [hole.x + reach * Math.cos(angle), hole.y + reach * Math.sin(angle)];
  });
}
