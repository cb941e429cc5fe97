import type { WearPlate } from '../job/job.ts';
import type { Mm } from '../units.ts';
import { outlinePlate } from './outline.ts';
import type { Part } from './part.ts';
import { roundPlate } from './round-plate.ts';

/**
 * The faces of a wear plate. A round plate has a running face and a bore, an outline plate the face alone.
 * @param cell  map cell size, mm; null chooses it from the size of each face
 */
export function wearPlate(plate: WearPlate, cell: Mm | null): Part {
  return plate.shape.kind === 'round'
    ? roundPlate(plate.id, plate.shape, plate.thickness, cell)
    : outlinePlate(plate.id, plate.shape, plate.thickness, cell);
}
