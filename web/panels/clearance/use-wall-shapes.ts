import { useEffect, useState } from 'react';
import { type WallMap, wallMap } from '../../../geometry/clearance/wall-map.ts';
import { type WallShapes, wallShapes } from '../../../geometry/sheet/wall-shapes.ts';
import type { Mm } from '../../../geometry/units.ts';
import { type LivePart, livePart, useWearRevision } from '../../wear/live-faces.ts';

/** A wall as it is drawn. */
export interface DrawnWall {
  readonly part: string;
  /** The face it was asked for by. */
  readonly face: string;
  readonly wall: WallMap;
  readonly shapes: WallShapes;
}

/** ms after the last change: the contours take a tenth of a second, and no press waits for them. */
const PAUSE = 80;

/**
 * What is left of the wall behind a face, from the live maps, a moment after they have changed.
 * @param limit  least thickness allowed, mm; null when it is not known
 * @returns null before the first, and for a face that is no wall; an older one until the new one is there
 */
export function useWallShapes(part: string, face: string, limit: Mm | null): DrawnWall | null {
  const revision = useWearRevision();
  const [drawn, setDrawn] = useState<DrawnWall | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the revision says when marks have come
  useEffect(() => {
    const timer = setTimeout(() => setDrawn(drawnOf(livePart(part), face, limit)), PAUSE);
    return () => clearTimeout(timer);
  }, [part, face, limit, revision]);
  return drawn !== null && drawn.part === part && drawn.face === face ? drawn : null;
}

function drawnOf(live: LivePart | undefined, face: string, limit: Mm | null): DrawnWall | null {
  if (live === undefined) return null;
  const wall = wallMap(live.part, face, (known) => {
    const found = live.faces.find((each) => each.face === known);
    if (!found) throw new Error(`useWallShapes: needs a live face, got ${known.name}`);
    return found.map;
  });
  return wall === null ? null : { part: live.part.id, face, wall, shapes: wallShapes(wall, limit) };
}
