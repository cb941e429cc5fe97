import type { ReadingsEstimate, SurveyedMark } from '../estimate-readings.ts';
import type { Covariance, Job } from '../job/job.ts';
import { placeInFile } from '../job/mark-field.ts';
import type { ReadingEnough } from '../material/reading-enough.ts';
import type { FacePoint } from '../units.ts';

/** What one mark of gauge readings is worth. File's units: mm, cm3. */
export interface ReadingsResult {
  /** Place in the part's list of wear, from 0. */
  readonly mark: number;
  /** As the job names it; `vane-*` for every vane. */
  readonly face: string;
  /** Readings in the job, and places that were used. */
  readonly count: number;
  readonly used: number;
  /** One standard deviation of a reading, mm. */
  readonly gaugeError: number;
  /** The one used, mm and mm2. */
  readonly covariance: Covariance;
  /** Which of it the person gave. */
  readonly given: readonly (keyof Covariance)[];
  /** One standard deviation of the volume lost and filled, cm3. */
  readonly lostError: number;
  readonly fillError: number;
  /** Each reading left out and estimated from the others; null when there are too few or too many. */
  readonly leaveOneOut: {
    /** Root mean square of how far off the estimate was, mm. */
    readonly rms: number;
    /** How many lay within two of their standard errors. */
    readonly within: number;
    readonly of: number;
  } | null;
  readonly next: NextResult | null;
}

export interface NextResult {
  readonly face: string;
  readonly at: FacePoint;
  /** One standard deviation of the depth there, mm. */
  readonly error: number;
  /** Of the volume, before and after, and how far the volume is to be expected to move, cm3. */
  readonly from: number;
  readonly to: number;
  readonly moves: number;
}

export interface EnoughResult {
  /** cm3 of putty to order. */
  readonly moves: number;
  readonly limit: number | null;
  readonly isEnough: boolean;
}

const MM3_PER_CM3 = 1000;

/** @param pointOn  a point of a face into the file's units */
export function readingsResult(
  job: Job,
  part: number,
  { each }: ReadingsEstimate,
  pointOn: (face: string, at: FacePoint) => FacePoint,
): readonly ReadingsResult[] {
  return each.map(({ mark, survey, error }) => {
    const { covariance } = survey.kriging;
    const { next } = error;
    return {
      mark: placeInFile(job, part, job.parts[part].marks.indexOf(mark)),
      face: mark.face,
      count: mark.points.length,
      used: survey.placed.at.length,
      gaugeError: mark.gaugeError,
      covariance,
      given: (['shape', 'length', 'sill'] as const).filter((name) => mark.covariance[name] !== undefined),
      lostError: error.lost / MM3_PER_CM3,
      fillError: error.filled / MM3_PER_CM3,
      leaveOneOut: leaveOneOut(survey.leftOut),
      next: next && {
        face: next.face,
        at: pointOn(next.face, next.at),
        error: next.error,
        from: next.from / MM3_PER_CM3,
        to: next.to / MM3_PER_CM3,
        moves: next.moves / MM3_PER_CM3,
      },
    };
  });
}

function leaveOneOut(leftOut: SurveyedMark['survey']['leftOut']): ReadingsResult['leaveOneOut'] {
  if (leftOut === null) return null;
  const squares = leftOut.reduce((sum, { off }) => sum + off * off, 0);
  return {
    rms: Math.sqrt(squares / leftOut.length),
    within: leftOut.filter(({ off, error }) => Math.abs(off) <= 2 * error).length,
    of: leftOut.length,
  };
}

export function enoughResult(enough: ReadingEnough): EnoughResult {
  return {
    moves: enough.moves / MM3_PER_CM3,
    limit: enough.limit === null ? null : enough.limit / MM3_PER_CM3,
    isEnough: enough.isEnough,
  };
}
