import { useEffect, useState } from 'react';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import { type ContourLine, flatMap } from '../../geometry/sheet/flat-map.ts';
import type { Mm } from '../../geometry/units.ts';
import { type LiveFace, marksPressed, useWearRevision } from '../wear/live-faces.ts';
import { isBrushDown } from './marking.ts';

/** ms after the last change: contours take a tenth of a second, and no stroke waits for them. */
const PAUSE = 120;

interface Drawn {
  /** Marks the map held. */
  readonly marks: number;
  readonly most: Mm;
  readonly lines: readonly ContourLine[];
}

/** The last contours of each map; several pictures share them. */
const lastOf = new WeakMap<DepthMap, Drawn>();

/**
 * Contours of a face, worked out a moment after its marks have changed.
 * @param most  depth at the end of the scale, mm
 * @returns null before the first; older ones until the new ones are there, as long as the face is the same
 */
export function useContours(live: LiveFace, most: Mm): readonly ContourLine[] | null {
  const revision = useWearRevision();
  const [shown, setShown] = useState<{ readonly live: LiveFace; readonly lines: Drawn['lines'] } | null>(
    null,
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: the revision says when marks have come
  useEffect(() => {
    let timer: ReturnType<typeof setTimeout>;
    const wait = () => {
      timer = setTimeout(() => {
        // In mid-stroke the map holds what may yet be called off.
        if (isBrushDown()) wait();
        else setShown({ live, lines: drawnFor(live, most) });
      }, PAUSE);
    };
    wait();
    return () => clearTimeout(timer);
  }, [live, revision, most]);
  return shown !== null && shown.live.face === live.face ? shown.lines : null;
}

function drawnFor({ face, map }: LiveFace, most: Mm): Drawn['lines'] {
  const marks = marksPressed(map);
  const last = lastOf.get(map);
  if (last?.marks === marks && last.most === most) return last.lines;
  // Most faces of an impeller are as new.
  const lines = map.depth.some((depth) => depth > 0) ? flatMap(face, map, most).lines : [];
  lastOf.set(map, { marks, most, lines });
  return lines;
}
