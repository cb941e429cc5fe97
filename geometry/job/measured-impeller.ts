import { toRadians } from '../units.ts';
import type { Impeller, Mark } from './job.ts';
import type { ImpellerFile } from './job-file.ts';
import { measuredSections } from './measured-section.ts';

/** An impeller in our units: radii for diameters, radians, g/mm3; what was left out at its usual value. */
export function measuredImpeller(file: ImpellerFile, marks: readonly Mark[]): Impeller {
  const { vanes } = file;
  return {
    id: file.id,
    kind: 'impeller',
    density: file.density / 1000,
    rotation: file.rotation,
    outerRadius: file.outerDiameter / 2,
    hubRadius: file.hubDiameter / 2,
    hubHeight: file.hubHeight ?? vanes.heightInlet,
    boreRadius: (file.boreDiameter ?? file.hubDiameter / 2) / 2,
    shroudThickness: file.shroudThickness,
    vanes: {
      count: vanes.count,
      firstAngle: toRadians(vanes.firstAngle ?? 0),
      inletRadius: vanes.inletDiameter / 2,
      inletAngle: toRadians(vanes.inletAngle),
      outletAngle: toRadians(vanes.outletAngle),
      camber: vanes.camber ?? 'linear',
      wrap: vanes.wrap === undefined ? null : toRadians(vanes.wrap),
      thicknessInlet: vanes.thicknessInlet,
      thicknessOutlet: vanes.thicknessOutlet,
      heightInlet: vanes.heightInlet,
      heightOutlet: vanes.heightOutlet,
      nose: vanes.nose ?? 'square',
    },
    leastThickness: file.leastThickness ?? null,
    marks,
    sections: measuredSections(file),
  };
}
