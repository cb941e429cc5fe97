import type { JobFile } from '../../../geometry/job/job-file.ts';
import type { Result } from '../../../geometry/sheet/result.ts';

/** Everything in a result that its job does not bear out, in sentences. */
export function breachesOfGap(
  job: JobFile,
  result: Result,
  cell: number,
  steps?: { readonly plateStep?: number; readonly tipStep?: number },
): string[];
