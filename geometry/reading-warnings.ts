import type { PartEstimate } from './estimate-part.ts';
import type { ReadingsEstimate, SurveyedMark } from './estimate-readings.ts';
import type { Job } from './job/job.ts';
import { markField, placeInFile } from './job/mark-field.ts';
import type { Warning } from './job/warning.ts';

/** Fewer than these say little of what lies between them. Our judgement. */
const FEW = 5;
/** A reading further off what its neighbours say, in standard deviations, is rather a slip than wear. */
const FAR_OFF = 4;
/** Nearer than this a reading is no slip, whatever the covariance says, mm. Our judgement. */
const NO_SLIP = 0.3;
/** Where more than this share of them do not fit, it is the covariance that does not. */
const MISFIT = 0.2;
/** More than these are named in one sentence only by their number. */
const MOST_NAMED = 4;

/** What should worry someone about the gauge readings of a part. */
export function readingWarnings(
  job: Job,
  part: number,
  { surveys }: PartEstimate,
  { each }: ReadingsEstimate,
): Warning[] {
  const { id, marks } = job.parts[part];
  return [...surveys].flatMap(([mark, survey]): Warning[] => {
    const place = placeInFile(job, part, marks.indexOf(mark));
    const field = `${markField(part, place)}.points`;
    const name = `${id}: readings on ${mark.face}`;
    if (survey === null) return [];
    const say = (code: string, text: string): Warning => ({ code, field, text: `${name}: ${text}` });
    const { off, contradicting, at } = survey.placed;
    const known = each.find((one) => one.mark === mark);
    const slips = known === undefined ? [] : slipsOf(known);
    const isMisfit = slips.length > MISFIT * at.length;
    return [
      ...(at.length < FEW
        ? [
            say(
              'readings-few',
              `${at.length === 1 ? 'one place says' : `${at.length} places say`} little of what lies between. Take at least ${FEW}, the deepest and some sound metal among them.`,
            ),
          ]
        : []),
      ...(off.length > 0
        ? [say('readings-off-face', `${named(off)} off the face or in a hole, and not used.`)]
        : []),
      ...contradicting.map((those) =>
        say(
          'readings-contradict',
          `${named(those)} at one place but further apart than the gauge error allows: their mean is used, and trusted less. Read there again.`,
        ),
      ),
      ...(isMisfit
        ? [
            say(
              'readings-misfit',
              `${slips.length} of them do not fit the others. The covariance that is given, or the gauge error, does not hold for them: the plus-or-minus is worth nothing until it does.`,
            ),
          ]
        : []),
      ...(isMisfit ? [] : slips).map(({ of, off: deeper }) =>
        say(
          'reading-far-off',
          `${named(of)} ${Math.abs(deeper).toFixed(1)} mm ${deeper > 0 ? 'deeper' : 'shallower'} than the readings about it say. Read there again, or check what was typed.`,
        ),
      ),
    ];
  });
}

/** Readings that do not fit the others. */
function slipsOf({ survey }: SurveyedMark): { of: readonly number[]; off: number }[] {
  if (survey.leftOut === null || survey.placed.at.length < FEW) return [];
  return survey.leftOut.flatMap(({ off, error }, i) =>
    Math.abs(off) > Math.max(NO_SLIP, FAR_OFF * error) ? [{ of: survey.placed.of[i], off }] : [],
  );
}

/** `reading 3 is`, `readings 3, 7 and 9 are`; as they are counted in the list. */
function named(those: readonly number[]): string {
  const shown = those.slice(0, MOST_NAMED).map((i) => String(i + 1));
  const rest = those.length - shown.length;
  if (those.length === 1) return `reading ${shown[0]} is`;
  if (rest > 0) return `readings ${shown.join(', ')} and ${rest} more are`;
  return `readings ${shown.slice(0, -1).join(', ')} and ${shown[shown.length - 1]} are`;
}
