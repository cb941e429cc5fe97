import type { Job } from './job.ts';

/** Where a mark stands in its part in the job file, from 0. Marks that are not worked out are left out of the job, but count there. */
export function placeInFile(job: Pick<Job, 'unsupported'>, part: number, mark: number): number {
  const leftOut = new Set(job.unsupported.map(({ field }) => field));
  let place = -1;
  for (let kept = -1; kept < mark; ) {
    place += 1;
    if (!leftOut.has(markField(part, place))) kept += 1;
  }
  return place;
}

/** Path of a mark in the job file. */
export function markField(part: number, place: number): string {
  return `parts[${part}].wear[${place}]`;
}
