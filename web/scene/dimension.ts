import type { PartFile } from '../../geometry/job/job-file.ts';
import type { Part } from '../../geometry/part/part.ts';
import type { Dimension } from './dimension-shape.ts';
import { impellerDimension } from './impeller-dimension.ts';
import { plateDimension } from './plate-dimension.ts';

/**
 * The dimension in hand, to be drawn on the part.
 * @param field  path in the job file of what is being typed, such as `parts[0].boltHoles[1].holeDiameter`
 * @returns null when the field is no dimension of this part
 */
export function dimensionOf(field: string, index: number, file: PartFile, { body }: Part): Dimension | null {
  const path = `parts[${index}].`;
  if (!field.startsWith(path)) return null;
  const name = field.slice(path.length);
  if (file.kind === 'wear-plate') return body.kind === 'plate' ? plateDimension(name, file, body) : null;
  return body.kind === 'impeller' ? impellerDimension(name, file, body) : null;
}
