import { useEffect, useState } from 'react';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import { type FlatMap, flatMap } from '../../geometry/sheet/flat-map.ts';
import type { Mm } from '../../geometry/units.ts';
import { type LiveFace, useWearRevision } from '../wear/live-faces.ts';

/** ms after the last change: contours take a tenth of a second, and no stroke waits for them. */
const PAUSE = 120;

interface Drawn {
  readonly revision: number;
  readonly most: Mm;
  readonly flat: FlatMap;
}

/** The last contours of each map; several pictures share them. */
const lastOf = new WeakMap<DepthMap, Drawn>();

/**
 * Contours and outline of a face, worked out a moment after its marks have changed.
 * @param most  depth at the end of the scale, mm
 * @returns null before the first; older ones until the new ones are there, as long as the face is the same
 */
export function useFlatMap(live: LiveFace, most: Mm): FlatMap | null {
  const revision = useWearRevision();
  const [shown, setShown] = useState<{ readonly live: LiveFace; readonly flat: FlatMap } | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setShown({ live, flat: drawnFor(live, revision, most) }), PAUSE);
    return () => clearTimeout(timer);
  }, [live, revision, most]);
  return shown !== null && shown.live.face === live.face ? shown.flat : null;
}

function drawnFor({ face, map }: LiveFace, revision: number, most: Mm): FlatMap {
  const last = lastOf.get(map);
  if (last?.revision === revision && last.most === most) return last.flat;
  const flat = flatMap(face, map, most);
  lastOf.set(map, { revision, most, flat });
  return flat;
}
