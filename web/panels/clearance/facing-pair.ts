import type { ClearanceFile, JobFile } from '../../../geometry/job/job-file.ts';

/** The first wear plate and the first impeller of a job, which run against each other; null when it lacks one of them. */
export function facingPair(parts: JobFile['parts']): Pick<ClearanceFile, 'plate' | 'impeller'> | null {
  const plate = parts.find(({ kind }) => kind === 'wear-plate');
  const impeller = parts.find(({ kind }) => kind === 'impeller');
  return plate === undefined || impeller === undefined ? null : { plate: plate.id, impeller: impeller.id };
}
