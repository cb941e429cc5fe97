import type { ImpellerFile } from '../../../geometry/job/job-file.ts';

/** A usual semi-open impeller of a middling size, to be typed over; its sizes make a sound part whatever is changed first. */
export function newImpeller(): ImpellerFile {
  return {
    id: 'impeller',
    kind: 'impeller',
    // Grey cast iron (common practice).
    density: 7.2,
    rotation: 'clockwise',
    outerDiameter: 280,
    hubDiameter: 70,
    boreDiameter: 35,
    hubHeight: 30,
    shroudThickness: 10,
    vanes: {
      count: 5,
      firstAngle: 0,
      inletDiameter: 120,
      inletAngle: 22,
      outletAngle: 28,
      camber: 'linear',
      thicknessInlet: 8,
      thicknessOutlet: 8,
      heightInlet: 36,
      heightOutlet: 24,
      nose: 'round',
    },
    wear: [],
  };
}
