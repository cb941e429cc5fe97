/** A result's wear history against history.mjs, in sentences. */
import { complaints } from './complaints.mjs';
import { halfOf, hoursLeft, intervalsOf, rateOf } from './history.mjs';

export function breachesOfHistory(job, result) {
  const { list, say, that, near } = complaints();
  const { history } = job;
  const asked = history !== undefined && (history.hours !== undefined || (history.repairs ?? []).length > 0);
  if (!asked) {
    that(result.history === null, 'a history without one in the job');
    return list;
  }
  if (result.history === null) {
    say('no history, though the job has one');
    return list;
  }
  const rates = new Map();
  for (const { id, faces } of result.parts) {
    const worn = faces.reduce((sum, one) => sum + one.wornArea, 0);
    const lost = result.parts.find((one) => one.id === id).lostVolume;
    const now = {
      deepest: Math.max(0, ...faces.map(({ deepest }) => deepest)),
      // cm3 over cm2
      mean: worn > 0 ? (10 * faces.reduce((sum, one) => sum + one.lostVolume, 0)) / worn : 0,
      volume: lost,
    };
    for (const of of ['deepest', 'mean', 'volume']) {
      const right = rateOf(intervalsOf(history, id, of, now[of]));
      rates.set(`${id} ${of}`, right);
      const found = result.history.rates.find((one) => one.part === id && one.of === of);
      if (right === null || found === undefined) {
        that((right === null) === (found === undefined), `rate of ${id} ${of} is there or not, wrongly`);
        continue;
      }
      // A mean over the worn area of several faces shares a corner between them.
      near(`rate of ${id} ${of}`, found.per1000, right.per1000, of === 'mean' ? 1e-2 : 1e-6);
      that(found.intervals === right.intervals, `intervals of ${id} ${of}: ${found.intervals}`);
      near(`hours of ${id} ${of}`, found.hours, right.hours);
      if (of === 'mean') continue;
      if (right.half === null || found.range === null) {
        that(right.half === null && found.range === null, `range of ${id} ${of} is there or not, wrongly`);
        continue;
      }
      near(`low of ${id} ${of}`, found.range.low, right.per1000 - right.half, 1e-5);
      near(`high of ${id} ${of}`, found.range.high, right.per1000 + right.half, 1e-5);
    }
  }
  return [...list, ...ofDue(job, result, rates)];
}

function ofDue(job, result, rates) {
  const { list, that, near } = complaints();
  for (const { what, part, margin, hours, from, to, why } of result.history.due) {
    const name = `${what} of ${part ?? 'both'}`;
    that((hours === null) === (why !== null), `${name} is due with a reason why not, or not due without one`);
    const parts = what === 'gap' ? [job.clearance.plate, job.clearance.impeller] : [part];
    const each = parts.map((id) => rates.get(`${id} deepest`));
    if (hours === null || each.includes(null) || each.includes(undefined)) {
      that(hours === null, `${name} is due at ${hours}, though nobody knows how fast it wears`);
      continue;
    }
    if (what === 'gap') near(`margin of ${name}`, margin, job.clearance.most - result.clearance.coated.most);
    const rate = each.reduce((sum, one) => sum + one.per1000, 0);
    near(`${name} due`, hours, hoursLeft(margin, rate) ?? NaN);
    const half = halfOf(each);
    for (const [end, found, fast] of [
      ['from', from, 1],
      ['to', to, -1],
    ]) {
      const right = half === null ? null : hoursLeft(margin, rate + fast * half);
      if (right === null) that(found === null, `${name} due ${end} is ${found}, should be null`);
      else near(`${name} due ${end}`, found ?? NaN, right, 1e-5);
    }
  }
  return list;
}
