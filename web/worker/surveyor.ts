/** Judges the gauge readings of a job, and remembers what it found: a job changes far more often than its readings. */
import { type Survey, survey } from '../../geometry/depth/survey.ts';
import type { SurveyOf } from '../../geometry/estimate-part.ts';
import type { Job, Readings } from '../../geometry/job/job.ts';
import type { JobFile } from '../../geometry/job/job-file.ts';
import { placeInFile } from '../../geometry/job/mark-field.ts';
import { shapeOf } from '../wear/read-surfaces.ts';
import type { EstimateNews } from './estimate-job.ts';

/** By everything they rest on; the ones used longest ago first. */
export type KnownSurveys = Map<string, Survey | null>;

const MOST_KNOWN = 30;
/** Work shorter than this shows no progress, ms; and how often it is told then. */
const SOON = 300;
const PACE = 100;

/**
 * @param file   the job as the file has it, `job` as measured from it
 * @param known  written into
 */
export function surveyor(
  file: JobFile,
  job: Job,
  known: KnownSurveys,
  report: (news: EstimateNews) => void,
): SurveyOf {
  return (face, mark) => {
    const at = placeOf(job, mark);
    const key = JSON.stringify([shapeOf(file.parts[at.part]), mark]);
    let found = known.get(key);
    if (found === undefined) {
      found = survey(face, mark, progressReport(report));
      known.set(key, found);
      const [oldest] = known.keys();
      if (known.size > MOST_KNOWN) known.delete(oldest);
    }
    if (found !== null) report({ surface: { ...at, surface: found.surface } });
    return found;
  };
}

function placeOf(job: Job, mark: Readings): { part: number; mark: number } {
  const part = job.parts.findIndex(({ marks }) => marks.includes(mark));
  return { part, mark: placeInFile(job, part, job.parts[part].marks.indexOf(mark)) };
}

function progressReport(report: (news: EstimateNews) => void): (share: number) => void {
  const start = performance.now();
  let next = start + SOON;
  return (share) => {
    const now = performance.now();
    if (now < next) return;
    next = now + PACE;
    report({ progress: share });
  };
}
