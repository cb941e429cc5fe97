import { depthAt } from '../../geometry/depth/depth-at.ts';
import { toFacePoint } from '../../geometry/part/face.ts';
import type { Part } from '../../geometry/part/part.ts';
import { flatDistance } from '../tools/flat-distance.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import type { GridPlace } from './face-ring.ts';
import { isHiddenBehind } from './hidden-behind.ts';
import { seenAt } from './surface-path.ts';
import type { Picture } from './use-hand.ts';
import type { Viewport } from './viewport.ts';

type Point = readonly [x: number, y: number];

/** Where a place is seen when its side faces the eye. */
export function facingPoint(
  viewport: Viewport,
  live: LiveFace,
  times: number,
  place: GridPlace,
): Point | null {
  const { x, y, faces } = seenAt(viewport.sight(), live, times, place);
  return faces ? [x, y] : null;
}

/** mm; a number stands where the pointer would find this face, this near to its place. */
const SAME_PLACE = 4;

/** The same where nothing stands before it. */
export function openPoint(
  viewport: Viewport,
  picture: Picture,
  live: LiveFace,
  times: number,
  place: GridPlace,
): Point | null {
  const point = facingPoint(viewport, live, times, place);
  const seen = point && picture.placeAt(...point);
  if (seen === null || seen.live.face !== live.face) return null;
  const apart = flatDistance(
    live.face,
    toFacePoint(live.face, ...place),
    toFacePoint(live.face, ...seen.place),
  );
  return apart < SAME_PLACE ? point : null;
}

/** The same where no other vane nor the hub stands before it. */
export function clearPoint(
  viewport: Viewport,
  part: Part,
  live: LiveFace,
  times: number,
  place: GridPlace,
): Point | null {
  const point = facingPoint(viewport, live, times, place);
  const [u, v] = place;
  const { face, map } = live;
  const at = face.position(u, v, times * depthAt(map, face, u, v));
  return isHiddenBehind(part, face, viewport.sight().eye, at) ? null : point;
}
