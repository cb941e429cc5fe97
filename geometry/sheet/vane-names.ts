import type { Face } from '../part/face.ts';
import type { Body } from '../part/part.ts';
import { type Mm, toDegrees } from '../units.ts';
import { upright } from './contour-label.ts';
import type { FlatFrame } from './flat-frame.ts';
import type { TurnedMark } from './flat-marks.ts';

/** The name of a vane on its footprint, along its camber, and how long that is. */
export interface VaneName extends TurnedMark {
  readonly number: number;
  readonly length: Mm;
}

/** The footprints that vanes leave on a face, by name; none on a face that no vane stands on. */
export function vaneNamesOf(body: Body, face: Face, frame: FlatFrame): readonly VaneName[] {
  if (body.kind !== 'impeller' || face.picture.kind !== 'polar') return [];
  return body.vanes.flatMap((vane) => {
    const { x, y, tx, ty } = vane.camber(vane.length / 2);
    const [radius, angle] = [Math.hypot(x, y), Math.atan2(y, x)];
    // The face has a hole where a vane stands.
    if (face.holds(radius, angle)) return [];
    return [
      {
        at: frame.toFlat(radius, angle),
        angle: upright(toDegrees(Math.atan2(-ty, tx))),
        text: `vane ${vane.number}`,
        number: vane.number,
        length: vane.length,
      },
    ];
  });
}
