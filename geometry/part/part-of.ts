import type { WornPart } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { impeller } from './impeller.ts';
import type { Part } from './part.ts';
import { wearPlate } from './wear-plate.ts';

/**
 * The faces, corners and body of any part of a job.
 * @param cell  map cell size, mm; null chooses it from the size of each face
 */
export function partOf(worn: WornPart, cell: Mm | null): Part {
  return worn.kind === 'impeller' ? impeller(worn, cell) : wearPlate(worn, cell);
}
