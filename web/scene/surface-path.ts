import { depthAt } from '../../geometry/depth/depth-at.ts';
import type { Part } from '../../geometry/part/part.ts';
import type { Vec3 } from '../../geometry/units.ts';
import type { LiveFace } from '../wear/live-faces.ts';
import type { Sight } from './camera.ts';
import type { GridPlace } from './face-ring.ts';
import { isHiddenBehind } from './hidden-behind.ts';

/** Where a place of a face is seen, px, and whether its side faces the eye. */
export interface SeenPlace {
  readonly x: number;
  readonly y: number;
  readonly faces: boolean;
}

/** @param times  how many times its true depth the wear is drawn */
export function seenAt(sight: Sight, { face, map }: LiveFace, times: number, [u, v]: GridPlace): SeenPlace {
  const place = face.position(u, v, times * depthAt(map, face, u, v));
  const [x, y] = sight.project(place);
  const out = face.normal(u, v);
  const { eye } = sight;
  const toEye: Vec3 = [eye[0] - place[0], eye[1] - place[1], eye[2] - place[2]];
  return { x, y, faces: out[0] * toEye[0] + out[1] * toEye[1] + out[2] * toEye[2] > 0 };
}

/** SVG path data of lines along the worn surface of a face; what faces away from the eye or is hidden is left out. */
export function surfacePath(
  sight: Sight,
  part: Part,
  live: LiveFace,
  times: number,
  lines: readonly (readonly GridPlace[])[],
  isClosed: boolean,
): string {
  const { face, map } = live;
  const seen = (place: GridPlace): SeenPlace => {
    const { faces, ...at } = seenAt(sight, live, times, place);
    const [u, v] = place;
    const point = () => face.position(u, v, times * depthAt(map, face, u, v));
    return { ...at, faces: faces && !isHiddenBehind(part, face, sight.eye, point()) };
  };
  return lines.map((line) => linePath(line.map(seen), isClosed)).join('');
}

/** Path data of places in order, broken where they are not seen. */
export function linePath(places: readonly SeenPlace[], isClosed: boolean): string {
  let path = '';
  let isDrawing = false;
  for (const { x, y, faces } of places) {
    if (faces) path += `${isDrawing ? 'L' : 'M'}${x.toFixed(1)} ${y.toFixed(1)}`;
    isDrawing = faces;
  }
  const isWhole = places.length > 2 && places.every(({ faces }) => faces);
  if (isClosed && isWhole) return `${path}Z`;
  const [first] = places;
  return isClosed && isDrawing && first.faces ? `${path}L${first.x.toFixed(1)} ${first.y.toFixed(1)}` : path;
}
