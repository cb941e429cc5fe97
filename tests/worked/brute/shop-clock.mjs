/** The hours of the shop, from the job's plan: min from zero on the plan's side, min after midnight of the first day on the clock's. */

const DAY = 1440;
/** A minute that two sums end on differently. */
export const MOMENT = 1e-6;

/** Whether all of a step fits: inside one shift and clear of every break. No clock is kept where nobody says when work begins. */
export function isOpen({ start, shiftStart, shiftEnd, breaks = [] } = {}, from, to) {
  if (start === undefined) return true;
  const begins = afterMidnight(start.slice(11));
  const [a, b] = [begins + from, begins + to];
  const day = Math.floor((a + MOMENT) / DAY);
  const opens = day === 0 ? begins : day * DAY + afterMidnight(shiftStart ?? start.slice(11));
  const inShift =
    shiftEnd === undefined || (a >= opens - MOMENT && b <= day * DAY + afterMidnight(shiftEnd) + MOMENT);
  return inShift && !overlapsBreak(breaks, a, b);
}

/** A break may run past midnight, so yesterday's counts too. */
function overlapsBreak(breaks, a, b) {
  for (let day = Math.floor(a / DAY) - 7; day <= Math.floor(b / DAY); day += 1)
    for (const { at, minutes } of breaks) {
      const opens = day * DAY + afterMidnight(at);
      if (day >= 0 && opens < b - MOMENT && opens + minutes > a + MOMENT) return true;
    }
  return false;
}

function afterMidnight(clock) {
  const [hours, minutes] = clock.split(':').map(Number);
  return 60 * hours + minutes;
}
