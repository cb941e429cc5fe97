/**
 * How fast parts wear, from what was measured at each repair and what is gone today: mm and cm3 a 1000 h. Loss over hours, all intervals
 * together (a ratio of sums), its standard error by the scatter of the intervals about it, and Student's t for 95 of 100.
 */

const SURE = 0.95;

/** [{ hours, loss }] of a part, oldest first; `now` is what stands open today, null where nobody knows for how long it ran. */
export function intervalsOf(history, part, what, now) {
  const before = (history.repairs ?? [])
    .filter((one) => one.part === part && one[what] !== undefined)
    .map((one) => ({ hours: one.hours, loss: one[what] }));
  const last = history.hours === undefined || now === null ? [] : [{ hours: history.hours, loss: now }];
  return [...before, ...last].filter(({ hours }) => hours > 0);
}

/** A 1000 h; `half` and `error` are null where one interval says nothing of scatter, and the whole is null where nothing ran. */
export function rateOf(intervals) {
  const n = intervals.length;
  const hours = intervals.reduce((sum, one) => sum + one.hours, 0);
  if (n === 0 || hours === 0) return null;
  const rate = intervals.reduce((sum, one) => sum + one.loss, 0) / hours;
  if (n === 1) return { per1000: 1000 * rate, half: null, error: null, intervals: n, hours };
  const scatter = intervals.reduce((sum, one) => sum + (one.loss - rate * one.hours) ** 2, 0);
  const error = Math.sqrt((scatter * n) / (n - 1)) / hours;
  return {
    per1000: 1000 * rate,
    half: 1000 * error * studentT(n - 1),
    error: 1000 * error,
    intervals: n,
    hours,
  };
}

/** What leaves (1 - 0.95) / 2 above it, by adding up the density and halving an interval about the answer. */
function studentT(freedom) {
  let [low, high] = [0, 20];
  while (above(high, freedom) > (1 - SURE) / 2) high *= 2;
  for (let i = 0; i < 60; i += 1) {
    const mid = (low + high) / 2;
    if (above(mid, freedom) > (1 - SURE) / 2) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
}

/** Chance above t: t = sqrt(freedom) tan(a) makes of the density cos(a)^(freedom - 1), whose integral over a quarter turn scales it. */
function above(t, freedom) {
  const from = Math.atan(t / Math.sqrt(freedom));
  return area(from, Math.PI / 2, freedom) / (2 * area(0, Math.PI / 2, freedom));
}

function area(from, to, freedom) {
  const lots = 2000;
  const h = (to - from) / lots;
  let sum = 0;
  for (let i = 0; i <= lots; i += 1) {
    const weight = i === 0 || i === lots ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * Math.max(0, Math.cos(from + i * h)) ** (freedom - 1);
  }
  return (sum * h) / 3;
}

/** Hours until a margin of so many mm is gone; null where nothing wears or there is no margin. */
export function hoursLeft(margin, per1000) {
  return margin > 0 && per1000 > 0 ? (1000 * margin) / per1000 : null;
}

/** Half of what several rates together may be out by: by the freedom of the one that is known least, which errs on the wide side. */
export function halfOf(rates) {
  if (rates.some(({ half }) => half === null)) return null;
  const freedom = Math.min(...rates.map(({ intervals }) => intervals - 1));
  return studentT(freedom) * Math.hypot(...rates.map(({ error }) => error));
}
