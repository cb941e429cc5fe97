import { useEffect, useState } from 'react';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import { type FlatMap, flatMap } from '../../geometry/sheet/flat-map.ts';
import type { Mm } from '../../geometry/units.ts';
import { type LiveFace, marksPressed, useWearRevision } from '../wear/live-faces.ts';
import { isBrushDown } from './marking.ts';

/** ms after the last change: contours take a tenth of a second, and no stroke waits for them. */
const PAUSE = 120;

/** The contour lines of a face, and how far apart they lie where. */
export type Contours = Pick<FlatMap, 'lines' | 'spacingAt'>;

interface Drawn {
  /** Marks the map held. */
  readonly marks: number;
  readonly most: Mm;
  readonly contours: Contours;
}

const NONE: Contours = { lines: [], spacingAt: () => Number.POSITIVE_INFINITY };

/** The last contours of each map; several pictures share them. */
const lastOf = new WeakMap<DepthMap, Drawn>();

/**
 * Contours of a face, worked out a moment after its marks have changed.
 * @param most  depth at the end of the scale, mm
 * @returns null before the first; older ones until the new ones are there, as long as the face is the same
 */
export function useContours(live: LiveFace, most: Mm): Contours | null {
  const revision = useWearRevision();
  const [shown, setShown] = useState<{ readonly live: LiveFace; readonly contours: Contours } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the revision says when marks have come
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    const wait = () => {
      timer = setTimeout(() => {
        // In mid-stroke the map holds what may yet be called off.
        if (isBrushDown()) wait();
        else setShown({ live, contours: drawnFor(live, most) });
      }, PAUSE);
    };
    wait();
    return () => clearTimeout(timer);
  }, [live, revision, most]);
  return shown !== null && shown.live.face === live.face ? shown.contours : null;
}

function drawnFor({ face, map }: LiveFace, most: Mm): Contours {
  const marks = marksPressed(map);
  const last = lastOf.get(map);
  if (last?.marks === marks && last.most === most) return last.contours;
  // Most faces of an impeller are as new.
  const contours = map.depth.some((depth) => depth > 0) ? flatMap(face, map, most) : NONE;
  lastOf.set(map, { marks, most, contours });
  return contours;
}
