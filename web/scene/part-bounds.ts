import type { Mm, Vec3 } from '../../geometry/units.ts';
import { TURN } from '../../geometry/units.ts';
import type { LivePart } from '../wear/live-faces.ts';
import type { Shown } from './camera.ts';

/** Room about a round plate for the numbers of its angles, as a share of its radius. */
const NUMBERS = 1.14;
const POINTS = 48;

/** What a view of a part has to show: its outer edge along the face and along the back, and the numbers round it. */
export function partBounds({ part: { body } }: LivePart): Shown {
  const edge = body.loops.find(({ role }) => role === 'edge');
  const bore = body.loops.find(({ role }) => role === 'bore');
  const outer: readonly (readonly [Mm, Mm])[] =
    edge?.kind === 'polygon' ? edge.corners : circle(NUMBERS * (edge?.radius ?? 1));
  const heights = [edge, bore].map((loop) => (loop?.kind === 'circle' ? body.height(loop.radius, 0) : 0));
  const [top, bottom] = [Math.max(...heights), Math.min(...heights) - body.thickness];
  const [x, y] = [0, 1].map((k) => middleOf(outer.map((point) => point[k])));
  return {
    middle: [x, y, (top + bottom) / 2],
    points: outer.flatMap(([px, py]): Vec3[] => [
      [px, py, top],
      [px, py, bottom],
    ]),
  };
}

function circle(radius: Mm): readonly (readonly [Mm, Mm])[] {
  return Array.from({ length: POINTS }, (_, i) => {
    const angle = (TURN * i) / POINTS;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

const middleOf = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
