/**
 * What lies under the pointer, found on the shapes themselves and never on what is drawn: the worn surface as it is shown, holes
 * missed, nothing seen through metal.
 */
import { toFacePoint } from '../../geometry/part/face.ts';
import { vaneFaceOf } from '../../geometry/part/vane-mesh.ts';
import type { FacePoint } from '../../geometry/units.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import type { Ray } from './camera.ts';
import { at, type Drawn, type Hit, hitOn, surfaceFor } from './face-hit.ts';
import { pickOnImpeller } from './pick-impeller.ts';
import { plateBlockAt } from './plate-walls.ts';
import { vaneBeyond } from './vane-beyond.ts';

/** The face point a ray meets first, or null when it meets none, or something else before. */
export function pick(live: LivePart, ray: Ray, drawn: Drawn): Hit | null {
  const { body } = live.part;
  if (body.kind === 'impeller') return pickOnImpeller(live, body, ray, drawn);
  let nearest = plateBlockAt(live, body, ray, drawn);
  let found: Hit | null = null;
  for (const face of live.faces) {
    const hit = hitOn(face, live.faces, ray, drawn);
    if (hit === null || hit.distance >= nearest) continue;
    nearest = hit.distance;
    found = hit;
  }
  return found;
}

/**
 * Where a ray meets the nominal surface of a face carried on past its edges and over its holes: how a stroke goes on when the
 * pointer leaves the face.
 */
export function pickBeyond({ part }: LivePart, { face }: LiveFace, ray: Ray): FacePoint | null {
  const on = vaneFaceOf(face.name);
  if (on !== null && part.body.kind === 'impeller') {
    return vaneBeyond(part.body.vanes[on.vane - 1], face, on.name, ray);
  }
  const surface = surfaceFor(face);
  const [t] = surface.meets(ray);
  if (t === undefined) return null;
  const { u, v } = surface.below(at(ray, t));
  return toFacePoint(face, u, v);
}
