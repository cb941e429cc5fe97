/** The shop's hours once more, as a list of the times it is shut: written without the scheduler's. */
import type { PlanChoices } from '../../../geometry/job/job.ts';
import type { Minute } from '../../../geometry/units.ts';

const DAY: Minute = 1440;
const DUST: Minute = 1e-5;

/** When the shop is shut, minutes from the start of the work, from day `first` to day `last`. */
function shutTimes(
  { start, shift, breaks }: PlanChoices,
  first: number,
  last: number,
): (readonly [from: Minute, to: Minute])[] {
  if (start === null) return [];
  const [hours, minutes] = start.slice(11).split(':').map(Number);
  const begins = hours * 60 + minutes;
  const shut: (readonly [Minute, Minute])[] = [];
  for (let day = first; day <= last; day++) {
    const midnight = day * DAY - begins;
    if (shift !== null) {
      // On the first day work begins when it begins, however early.
      if (day > 0) shut.push([midnight, midnight + shift.from]);
      shut.push([midnight + shift.to, midnight + DAY]);
    }
    for (const pause of breaks) shut.push([midnight + pause.at, midnight + pause.at + pause.minutes]);
  }
  return shut;
}

/** True when no part of a stretch of work lies where the shop is shut. */
export function isShopOpen(choices: PlanChoices, from: Minute, to: Minute): boolean {
  return shutTimes(choices, Math.floor(from / DAY) - 2, Math.floor(to / DAY) + 2).every(
    ([shuts, opens]) => to <= shuts + DUST || from >= opens - DUST,
  );
}
