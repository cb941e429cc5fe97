import type { Body } from '../../geometry/part/part.ts';
import type { Mm, Vec3 } from '../../geometry/units.ts';
import { TURN } from '../../geometry/units.ts';
import type { LivePart } from '../wear/live-faces.ts';
import type { Shown } from './camera.ts';
import { rimOf } from './rim.ts';

/** Room about a round part for the numbers of its angles, as a share of its radius. */
const NUMBERS = 1.14;
const POINTS = 48;

/** What a view of a part has to show: its outer edge at its highest and at its lowest, and the numbers round it. */
export function partBounds({ part: { body } }: LivePart): Shown {
  const outer = outlineOf(body);
  const [top, bottom] = heightsOf(body);
  const [x, y] = [0, 1].map((k) => middleOf(outer.map((point) => point[k])));
  return {
    middle: [x, y, (top + bottom) / 2],
    points: outer.flatMap(([px, py]): Vec3[] => [
      [px, py, top],
      [px, py, bottom],
    ]),
  };
}

function outlineOf(body: Body): readonly (readonly [Mm, Mm])[] {
  const rim = rimOf(body);
  if (rim !== null) return circle(NUMBERS * rim.radius);
  const edge = body.kind === 'plate' ? body.loops.find(({ role }) => role === 'edge') : undefined;
  return edge?.kind === 'polygon' ? edge.corners : circle(NUMBERS);
}

function heightsOf(body: Body): readonly [top: Mm, bottom: Mm] {
  if (body.kind === 'impeller') {
    const { hubHeight, shroudThickness, vanes } = body.shape;
    // Where the picture is widest, at the rim, stand the outer ends of the vanes.
    return [Math.max(vanes.heightOutlet, Math.min(hubHeight, vanes.heightInlet) / 2), -shroudThickness];
  }
  const round = ['edge', 'bore'].map((role) => body.loops.find((loop) => loop.role === role));
  const heights = round.map((loop) => (loop?.kind === 'circle' ? body.height(loop.radius, 0) : 0));
  return [Math.max(...heights), Math.min(...heights) - body.thickness];
}

function circle(radius: Mm): readonly (readonly [Mm, Mm])[] {
  return Array.from({ length: POINTS }, (_, i) => {
    const angle = (TURN * i) / POINTS;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });
}

const middleOf = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2;
