import { toRadians } from '../units.ts';
import { holePolygon, holesOfCircle } from './bolt-circle.ts';
import { distinctCorners } from './corners.ts';
import type { Mark, OutlinePlate, RoundPlate, WearPlate } from './job.ts';
import type { OutlineFile, WearPlateFile } from './job-file.ts';
import { measuredSections } from './measured-section.ts';

/** A wear plate in our units: radii for diameters, radians, g/mm3, every bolt hole by itself. */
export function measuredPlate(plate: WearPlateFile, marks: readonly Mark[]): WearPlate {
  return {
    id: plate.id,
    kind: 'wear-plate',
    density: plate.density / 1000,
    shape: plate.outline === undefined ? roundPlate(plate) : outlinePlate(plate, plate.outline),
    thickness: plate.thickness,
    leastThickness: plate.leastThickness ?? null,
    marks,
    sections: measuredSections(plate),
  };
}

function roundPlate(plate: WearPlateFile): RoundPlate {
  const { outerDiameter, boreDiameter } = plate;
  if (outerDiameter === undefined || boreDiameter === undefined) {
    throw new Error(
      `measuredPlate: needs a job that readJob or checkJob found no fault in, got "${plate.id}" without its diameters`,
    );
  }
  return {
    kind: 'round',
    outerRadius: outerDiameter / 2,
    boreRadius: boreDiameter / 2,
    coneAngle: toRadians(plate.coneAngle ?? 0),
    holes: (plate.boltHoles ?? []).flatMap(holesOfCircle),
  };
}

/** Bolt holes in an outline become polygons of the same area and centre. */
function outlinePlate(plate: WearPlateFile, outline: OutlineFile): OutlinePlate {
  const drilled = (plate.boltHoles ?? []).flatMap(holesOfCircle).map(holePolygon);
  return {
    kind: 'outline',
    edge: distinctCorners(outline.edge),
    holes: [...(outline.holes ?? []).map(distinctCorners), ...drilled],
  };
}
