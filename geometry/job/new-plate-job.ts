import { GENERIC_COAT, GENERIC_FILLER, USUAL_REPAIR } from './defaults.ts';
import { FORMAT, type JobFile } from './job-file.ts';

/** A job to start one's own from: a sound flat plate of a middling size, the generic materials and the usual repair, all there to be changed. */
export function newPlateJob(): JobFile {
  return {
    format: FORMAT,
    title: '',
    parts: [
      {
        id: 'plate',
        kind: 'wear-plate',
        // Grey cast iron (common practice).
        density: 7.2,
        outerDiameter: 300,
        boreDiameter: 120,
        thickness: 20,
        coneAngle: 0,
        boltHoles: [],
        wear: [],
      },
    ],
    filler: GENERIC_FILLER,
    coat: GENERIC_COAT,
    repair: USUAL_REPAIR,
  };
}
