import { GENERIC_COAT, GENERIC_FILLER } from '../../../geometry/job/defaults.ts';
import type { CoatFile, FillerFile } from '../../../geometry/job/job-file.ts';

/** True while the material is left out of the job or still goes by the name of the generic one. */
export function isGeneric(material: FillerFile | CoatFile | undefined): boolean {
  return (
    material === undefined || material.name === GENERIC_FILLER.name || material.name === GENERIC_COAT.name
  );
}
