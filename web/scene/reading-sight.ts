import { depthAt } from '../../geometry/depth/depth-at.ts';
import type { Part } from '../../geometry/part/part.ts';
import type { Vec3 } from '../../geometry/units.ts';
import { isHiddenBehind } from './hidden-behind.ts';
import type { PlacedReading } from './reading-places.ts';
import type { Viewport } from './viewport.ts';

/** A place that is looked at again and again: what is known of it is kept as long as the object lives. */
export type SightedPlace = Pick<PlacedReading, 'live' | 'place'>;

/** Where readings, and the edges of what mixes cover, are seen on a part in three dimensions. */
export interface ReadingSight {
  /** px from the top left; null where it faces away, or was hidden behind another vane or the hub when last looked. */
  pointOf(reading: SightedPlace): readonly [x: number, y: number] | null;
  /** Looks anew which are hidden, a few ms at a time: thousands take longer than a frame. @returns calls it off */
  look(readings: readonly SightedPlace[], onDone: () => void): () => void;
}

interface Known {
  readonly at: Vec3;
  readonly out: Vec3;
  isHidden: boolean;
}

/** ms of work before the screen gets its turn. */
const SLICE = 6;

/** @param times  how many times its true depth the wear is drawn */
export function readingSight(part: Part, viewport: Viewport, times: number): ReadingSight {
  const known = new WeakMap<SightedPlace, Known>();
  // Nothing stands before the faces of a plate.
  const mayHide = part.body.kind === 'impeller';
  const knownOf = (reading: SightedPlace): Known => {
    const before = known.get(reading);
    if (before !== undefined) return before;
    const { live, place } = reading;
    const [u, v] = place;
    const at = live.face.position(u, v, times * depthAt(live.map, live.face, u, v));
    const made = { at, out: live.face.normal(u, v), isHidden: mayHide };
    known.set(reading, made);
    return made;
  };
  const faces = ({ at, out }: Known, eye: Vec3) =>
    out[0] * (eye[0] - at[0]) + out[1] * (eye[1] - at[1]) + out[2] * (eye[2] - at[2]) > 0;
  return {
    pointOf(reading) {
      const seen = knownOf(reading);
      const { eye, project } = viewport.sight();
      if (seen.isHidden || !faces(seen, eye)) return null;
      const [x, y] = project(seen.at);
      return [x, y];
    },
    look(readings, onDone) {
      if (!mayHide || readings.length === 0) return () => {};
      const { eye } = viewport.sight();
      let next = 0;
      let timer: ReturnType<typeof setTimeout>;
      const work = () => {
        const until = performance.now() + SLICE;
        for (; next < readings.length && performance.now() < until; next++) {
          const reading = readings[next];
          const seen = knownOf(reading);
          seen.isHidden = faces(seen, eye) && isHiddenBehind(part, reading.live.face, eye, seen.at);
        }
        if (next < readings.length) timer = setTimeout(work);
        else onDone();
      };
      timer = setTimeout(work);
      return () => clearTimeout(timer);
    },
  };
}
