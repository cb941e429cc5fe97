import type { Survey } from './depth/survey.ts';
import type { FaceEstimate, PartEstimate } from './estimate-part.ts';
import type { Readings } from './job/job.ts';
import type { Densities } from './moments/read-weights.ts';
import { type ReadingError, readingError } from './moments/reading-error.ts';
import type { GramMm, Mm3 } from './units.ts';

/** What one part's gauge readings leave open. */
export interface ReadingsEstimate {
  readonly part: string;
  readonly each: readonly SurveyedMark[];
  /** One standard deviation, of the volume filled and the volume lost. Marks are independent of one another. */
  readonly filled: Mm3;
  readonly lost: Mm3;
  /** Of the net unbalance, in the direction in which it is known least, g.mm. */
  readonly net: GramMm;
}

export interface SurveyedMark {
  readonly mark: Readings;
  readonly survey: Survey;
  readonly error: ReadingError;
}

/** How far off a part's figures may be for what was read on it. */
export function estimateReadings(
  { id, faces, surveys }: PartEstimate,
  densities: Densities,
): ReadingsEstimate {
  const each = [...surveys].flatMap(([mark, survey]): SurveyedMark[] => {
    if (survey === null) return [];
    return [{ mark, survey, error: readingError(mark, survey, facesOf(faces, mark), densities) }];
  });
  const sum = (amount: (error: ReadingError) => number) =>
    each.reduce((total, { error }) => total + amount(error), 0);
  return {
    part: id,
    each,
    filled: Math.sqrt(sum(({ filled }) => filled * filled)),
    lost: Math.sqrt(sum(({ lost }) => lost * lost)),
    net: greatestSpread(
      sum(({ net }) => net.xx),
      sum(({ net }) => net.xy),
      sum(({ net }) => net.yy),
    ),
  };
}

function facesOf(faces: readonly FaceEstimate[], mark: Readings) {
  return faces.flatMap(({ face, map, fill, coated, traces }) =>
    traces.flatMap((trace) =>
      trace.mark === mark ? [{ face, map, fill, coated, decides: trace.decides }] : [],
    ),
  );
}

/** Square root of the greater eigenvalue of a symmetric matrix of two rows. */
function greatestSpread(xx: number, xy: number, yy: number): number {
  const middle = (xx + yy) / 2;
  return Math.sqrt(Math.max(0, middle + Math.hypot((xx - yy) / 2, xy)));
}
