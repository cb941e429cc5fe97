import { GENERIC_COAT, GENERIC_FILLER } from '../../../geometry/job/defaults.ts';
import type { JobFile } from '../../../geometry/job/job-file.ts';
import { durationText, spanText } from '../../../geometry/sheet/duration.ts';
import type { Result } from '../../../geometry/sheet/result.ts';
import type { Celsius, Minute } from '../../../geometry/units.ts';

/** A time of a material: as its data sheet has it, and at the temperature of the part. */
export interface MaterialTime {
  readonly what: string;
  readonly quoted: string;
  /** The temperature it is quoted for; null when it is not. */
  readonly at: Celsius | null;
  readonly here: string;
}

interface Quoted {
  readonly minutes?: number;
  readonly from?: number;
  readonly to?: number;
  readonly at: number;
}

export function puttyTimes(job: JobFile, { filler }: Result): MaterialTime[] {
  const sheet = job.filler ?? GENERIC_FILLER;
  return [
    row(WORKING_TIME, sheet.workingTime, filler.workingTime),
    row('Firms up', sheet.firmsUp, filler.firmsUp),
    row('Hard', sheet.hard, filler.hard),
  ];
}

export function coatTimes(job: JobFile, { coat }: Result): MaterialTime[] {
  const sheet = job.coat ?? GENERIC_COAT;
  return [
    row(WORKING_TIME, sheet.workingTime, coat.workingTime),
    row('Next coat', sheet.overcoat, coat.overcoat),
    row('Hard', sheet.hard, coat.hard),
  ];
}

function row(
  what: string,
  quoted: Quoted | undefined,
  here: number | { readonly from: number; readonly to: number } | null,
): MaterialTime {
  if (quoted === undefined || here === null)
    return { what, quoted: 'not on the sheet', at: null, here: 'not known' };
  const { minutes, from = 0, to = 0, at } = quoted;
  return {
    what,
    quoted: minutes === undefined ? spanText({ from, to }) : durationText(minutes),
    at,
    here: typeof here === 'number' ? durationText(safely(what, here)) : spanText(here),
  };
}

/** To whole minutes on the safe side: a time not to be passed down, a time to be waited for up. */
function safely(what: string, minutes: Minute): Minute {
  if (minutes < 1) return minutes;
  return what === WORKING_TIME ? Math.floor(minutes + 1e-6) : Math.ceil(minutes - 1e-6);
}

const WORKING_TIME = 'Working time';
