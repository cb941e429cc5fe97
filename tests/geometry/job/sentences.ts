import { faultText } from '../../../geometry/job/fault.ts';
import { readJob, readJobValue } from '../../../geometry/job/read-job.ts';

/** The faults of a text, or of a value, as the sentences a person reads; none when it is a job. */
export function sentences(input: unknown): string[] {
  const read = typeof input === 'string' ? readJob(input) : readJobValue(input);
  return 'faults' in read ? read.faults.map(faultText) : [];
}
