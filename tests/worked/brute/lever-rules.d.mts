import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';

/** Everything in a result that its job does not bear out, in sentences. */
export function breachesOfLevers(
  job: JobFile,
  result: Result,
  steps?: { readonly plateStep?: number; readonly tipStep?: number },
): string[];
