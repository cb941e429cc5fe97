/**
 * The parts of the picture that never wear, as arrays to draw, and the lines of their edges. What meets a worn face rides on it, so
 * that the edge sinks with the wear.
 */
import { impellerBodyMeshes } from './impeller-body-mesh.ts';
import type { BodyMesh } from './mesh.ts';
import type { Part } from './part.ts';
import { plateBodyMesh } from './plate-body-mesh.ts';

/**
 * Everything of a part that is no worn face, in one piece for each face that it rides on.
 * @param segments  pieces a circle or an outline is divided into; for a circle one less than the columns of the faces' meshes makes
 *                  the two meet vertex on vertex
 */
export function bodyMeshes(
  part: Part,
  { segments = 255 }: { readonly segments?: number } = {},
): readonly BodyMesh[] {
  const { body, faces } = part;
  return body.kind === 'plate'
    ? [plateBodyMesh(body, faces[0], segments)]
    : impellerBodyMeshes(body, faces, segments);
}
