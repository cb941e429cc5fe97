import type { MarkFile } from '../../geometry/job/job-file.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { FacePoint } from '../../geometry/units.ts';
import type { BrushSettings } from './brush.ts';
import { filePoint } from './file-point.ts';

/** The pit that one tap drops, in the file's units: as wide as the brush, a bowl where the brush is soft and flat where it is hard. */
export function pitMark(face: Face, brush: BrushSettings, at: FacePoint): MarkFile {
  const [first, second] = filePoint(face, at);
  const form = brush.edge === 'hard' ? 'flat' : 'bowl';
  return {
    kind: 'pit',
    face: face.name,
    at: [first, second],
    diameter: 2 * brush.radius,
    form,
    depth: brush.depth,
    blend: 'deepest',
  };
}
