/** A result's flow test against the formulas of flow.mjs: a checker that says in sentences what the job does not bear out. */
import { complaints } from './complaints.mjs';
import { acceptanceLimits, gaugeErrors, hydraulic, isPump, onCurve, ratedPoints, reading } from './flow.mjs';

const FIGURES = ['flow', 'head', 'power', 'efficiency'];
const CURVES = ['head', 'power', 'efficiency'];

export function breachesOfFlow(job, result) {
  const { list, say, that } = complaints();
  const [test, found] = [job.flowTest, result.flowTest];
  if (test === undefined) {
    that(found === null, 'a flow test without a job for it');
    return list;
  }
  if (found === null) {
    say('no flow test, though the job has one');
    return list;
  }
  const runs = test.runs.map((run) => ({ run, points: ratedPoints(test, run) }));
  return [
    ...list,
    ...runs.flatMap(({ run, points }, i) => ofRun(test, run, points, found.runs[i], `run ${i + 1}`)),
    ...ofComparison(test, runs, found),
    ...ofAcceptance(test, runs, found),
  ];
}

function ofRun(test, run, points, found, name) {
  const { list, near, that } = complaints();
  const same = (what, value, right) => {
    if (right === null) that(value === null, `${what} is ${value}, should be null`);
    else if (value === null || value === undefined) that(false, `${what} is null, should be ${right}`);
    else near(what, value, right);
  };
  points.forEach((point, i) => {
    for (const what of FIGURES) same(`${name} point ${i + 1} ${what}`, found.points[i][what], point[what]);
  });
  // Between the points: the published curve goes through them and never beyond them.
  for (const what of CURVES) {
    const flows = found.curves[what].map(({ flow }) => flow);
    const values = found.curves[what].map(({ value }) => value);
    for (let i = 1; i < flows.length; i += 1)
      for (const part of [0.13, 0.5, 0.87]) {
        const flow = flows[i - 1] + part * (flows[i] - flows[i - 1]);
        const [low, high] = [values[i - 1], values[i]].toSorted((a, b) => a - b);
        const drawn = alongPublished(found.curves[what], i, part);
        near(`${name} ${what} at ${flow}`, drawn, onCurve(flows, values, flow));
        that(drawn >= low - 1e-9 && drawn <= high + 1e-9, `${name} ${what} at ${flow} leaves its points`);
      }
  }
  const right = reading(points, 'head', test.duty);
  if (right === null) {
    that(found.atDuty === null, `${name} has a duty beyond its ends`);
    return list;
  }
  that(found.atDuty !== null, `${name} has no duty`);
  if (found.atDuty === null) return list;
  const errors = gaugeErrors(test, run);
  near(`${name} flow at duty`, found.atDuty.flow, test.duty);
  for (const what of CURVES)
    same(`${name} ${what} at duty`, found.atDuty[what], reading(points, what, test.duty));
  for (const what of FIGURES) {
    near(`${name} relative error of ${what}`, found.relativeError[what], errors[what]);
    const of = what === 'flow' ? test.duty : reading(points, what, test.duty);
    near(`${name} error of ${what} at duty`, found.atDuty.error[what], ((of ?? 0) * errors[what]) / 100);
  }
  return list;
}

function alongPublished(curve, i, t) {
  const [a, b] = [curve[i - 1], curve[i]];
  const h = b.flow - a.flow;
  const cubic = 2 * a.value - 2 * b.value + h * (a.slope + b.slope);
  const square = -3 * a.value + 3 * b.value - h * (2 * a.slope + b.slope);
  return a.value + t * (h * a.slope + t * (square + t * cubic));
}

/** The last run of each kind, its efficiency at duty. */
function chosen(test, runs, when) {
  const index = runs.findLastIndex(({ run }) => run.when === when);
  if (index < 0) return null;
  const { run, points } = runs[index];
  return {
    index,
    run,
    points,
    efficiency: reading(points, 'efficiency', test.duty),
    pump: isPump(test, run),
    relative: gaugeErrors(test, run).efficiency / 100,
  };
}

function ofComparison(test, runs, found) {
  const { list, near, that } = complaints();
  const [fresh, before, after] = ['new', 'before', 'after'].map((when) => chosen(test, runs, when));
  that(found.compared.before === (before?.index ?? null), 'the wrong run stands for as found');
  that(found.compared.after === (after?.index ?? null), 'the wrong run stands for after');
  const alike = (a, b) => a?.efficiency > 0 && b?.efficiency > 0 && a.pump === b.pump;
  const share = alike(fresh, after) ? after.efficiency / fresh.efficiency : null;
  if (share === null) that(found.recovered === null, `recovered is ${found.recovered}, should be null`);
  else near('recovered', found.recovered, share);
  if (!alike(before, after)) {
    that(found.comparison === null, 'runs that cannot be compared are');
    that(found.saving === null, 'a saving without two efficiencies');
    return list;
  }
  const gain = after.efficiency - before.efficiency;
  const known = test.sameGauges === true && test.repeatability !== undefined;
  // What repeats is a half of the square of a difference, in each run.
  const own = (one) => (known ? test.repeatability / 100 / Math.SQRT2 : one.relative);
  const error = Math.hypot(own(before) * before.efficiency, own(after) * after.efficiency);
  near('gain', found.comparison.gain, gain);
  near('gainError', found.comparison.gainError, error);
  const verdict = Math.abs(gain) <= error ? 'inside the error' : gain > 0 ? 'gain' : 'loss';
  that(
    found.comparison.verdict === verdict,
    `the gain is called ${found.comparison.verdict}, should be ${verdict}`,
  );
  that(found.comparison.isProven === (verdict === 'gain'), 'the gain is proven or not, wrongly');
  const motor = before.pump ? (test.motorEfficiency ?? 100) / 100 : 1;
  const liquid = hydraulic(test.density, test.duty, reading(after.points, 'head', test.duty));
  const takes = (one) => (100 * liquid) / one.efficiency / motor;
  const power = takes(before) - takes(after);
  const powerError = Math.hypot(own(before) * takes(before), own(after) * takes(after));
  const { saving } = found;
  near('saving.power', saving.power, power);
  near('saving.powerError', saving.powerError, powerError);
  const years = (value) => (test.hoursPerYear === undefined ? null : value * test.hoursPerYear);
  const worth = (value) =>
    test.energyPrice === undefined || years(value) === null ? null : years(value) * test.energyPrice;
  for (const [what, right] of [
    ['energy', years(power)],
    ['money', worth(power)],
    ['moneyError', worth(powerError)],
  ])
    if (right === null) that(saving[what] === null, `saving.${what} should be null`);
    else near(`saving.${what}`, saving[what] ?? NaN, right);
  return list;
}

function ofAcceptance(test, runs, found) {
  const { list, say, near, that } = complaints();
  const { guarantee } = test;
  const after = chosen(test, runs, 'after');
  if (guarantee === undefined || after === null) {
    that(found.acceptance === null, 'accepted without a guarantee or a run');
    return list;
  }
  if (found.acceptance === null) {
    say('no acceptance, though there is a guarantee');
    return list;
  }
  const { points } = after;
  const pump = isPump(test, after.run);
  const takes = guarantee.power ?? (pump ? Math.max(...points.map(({ power }) => power)) : null);
  const limits = acceptanceLimits(guarantee.grade, takes);
  near('the limit of power', found.acceptance.limits.power, limits.power / 100);
  near('the limit of efficiency', found.acceptance.limits.efficiency, limits.efficiency / 100);
  const span = (of, [down, up]) => [of * (1 + down / 100), of * (1 + up / 100)];
  const meets = meeting(points, (flow, head) => head - (guarantee.head / guarantee.flow) * flow);
  const at = (what) => (meets === null || !pump ? null : reading(points, what, meets));
  const judged = {
    head: [reading(points, 'head', guarantee.flow), ...span(guarantee.head, limits.head)],
    flow: [meeting(points, (_, head) => head - guarantee.head), ...span(guarantee.flow, limits.flow)],
    ...(guarantee.efficiency === undefined
      ? {}
      : { efficiency: [at('efficiency'), guarantee.efficiency * (1 + limits.efficiency / 100), null] }),
    ...(guarantee.power === undefined
      ? {}
      : { power: [at('power'), null, guarantee.power * (1 + limits.power / 100)] }),
  };
  const within = ([value, from, to]) =>
    value !== null && (from === null || value >= from) && (to === null || value <= to);
  // Head and flow are the two arms of one cross: the curve meets it by touching either, misses it when both lie inside the run.
  const [low, high] = [Math.min(...points.map((p) => p.flow)), Math.max(...points.map((p) => p.flow))];
  const cross =
    within(judged.head) || within(judged.flow)
      ? 'met'
      : judged.head[0] !== null && judged.flow[1] >= low && judged.flow[2] <= high
        ? 'not met'
        : 'not covered';
  that(
    found.acceptance.checks.length === Object.keys(judged).length,
    'a guaranteed figure is not judged, or one too many',
  );
  for (const { what, value, least, most, verdict } of found.acceptance.checks) {
    const one = judged[what] ?? [null, null, null];
    if (one[1] !== null) near(`least ${what}`, least ?? NaN, one[1]);
    if (one[2] !== null) near(`most ${what}`, most ?? NaN, one[2]);
    if (one[0] === null) that(value === null, `accepted ${what} is ${value}, beyond the run`);
    else near(`accepted ${what}`, value ?? NaN, one[0], 1e-5);
    const alone = one[0] === null ? 'not covered' : within(one) ? 'met' : 'not met';
    const right = what === 'head' || what === 'flow' ? cross : alone;
    that(verdict === right, `${what} ${one[0]} in ${one[1]} to ${one[2]} is ${verdict}, should be ${right}`);
  }
  return list;
}

/** Flow where the head's curve meets a line, from the largest flow down; null where it does not. */
function meeting(points, above) {
  const flows = points.map(({ flow }) => flow).toSorted((a, b) => a - b);
  const lots = 20_000;
  const [low, high] = [flows[0], flows.at(-1)];
  const off = (flow) => above(flow, reading(points, 'head', flow));
  const at = (i) => (i === lots ? high : low + ((high - low) * i) / lots);
  for (let i = lots; i > 0; i -= 100) {
    let [a, b] = [at(i - 100), at(i)];
    if (off(a) * off(b) > 0) continue;
    for (let k = 0; k < 50; k += 1) {
      const mid = (a + b) / 2;
      if (off(a) * off(mid) <= 0) b = mid;
      else a = mid;
    }
    return (a + b) / 2;
  }
  return null;
}
