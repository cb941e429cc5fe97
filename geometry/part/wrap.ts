import type { Impeller, Vanes } from '../job/job.ts';
import type { Warning } from '../job/warning.ts';
import { type Mm, type Rad, toDegrees, toRadians } from '../units.ts';
import { camberLine } from './camber.ts';

/** A rubbing of a vane is true to about this; further off than it the drawn vane is another one. */
const MOST_OFF: Rad = toRadians(5);

/** How far a vane wraps from leading edge to outer end, drawn with either camber: end angles alone do not fix a vane. */
export function drawnWraps(vanes: Vanes, outerRadius: Mm): Record<Vanes['camber'], Rad> {
  const drawn = (camber: Vanes['camber']) => camberLine({ ...vanes, camber }, outerRadius).wrap;
  return { linear: drawn('linear'), arc: drawn('arc') };
}

/**
 * A warning when the measured wrap is more than 5 deg off the drawn one, saying which camber fits better.
 * Source: geometry definitions, "Impeller"; tests/geometry/part/wrap.test.ts.
 */
export function wrapWarnings({ id, vanes, outerRadius }: Impeller): Warning[] {
  if (vanes.wrap === null) return [];
  const { wrap, camber } = vanes;
  const drawn = drawnWraps(vanes, outerRadius);
  if (Math.abs(drawn[camber] - wrap) <= MOST_OFF) return [];
  const off = (kind: Vanes['camber']) => Math.abs(drawn[kind] - wrap);
  const better = off('arc') < off('linear') ? 'arc' : 'linear';
  const degrees = (angle: Rad) => `${toDegrees(angle).toFixed(0)} deg`;
  const advice =
    better === camber
      ? 'The other camber fits no better: measure the blade angles again.'
      : `Camber "${better}" draws ${degrees(drawn[better])} and fits better.`;
  return [
    {
      code: 'wrap-off',
      field: null,
      text: `${id}: the vanes wrap ${degrees(wrap)} as measured, but are drawn with ${degrees(drawn[camber])}. ${advice}`,
    },
  ];
}
