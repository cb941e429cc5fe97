import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';

/** Everything in a result that its job does not bear out, in sentences. `others`: results of the job with the part at other temperatures. */
export function breaches(
  job: JobFile,
  result: Result,
  others?: readonly { readonly surface: number; readonly result: Result }[],
): string[];

/** The job with the part at another temperature, degC. */
export function jobAt(job: JobFile, surface: number): JobFile;
