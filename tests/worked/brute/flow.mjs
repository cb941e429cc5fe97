/**
 * A pump's flow test by the formulas: what each point comes to at rated speed, the curves between, the run at the duty, what was recovered,
 * what it saves and whether the pump is accepted. m3/h, m, kW, %, h. Sources: checks.md F1 to F3.
 */

/** m/s2 */
const G = 9.80665;
/** Measurement uncertainty of ISO 9906 by grade, % (from memory): flow, head, torque, speed, power at the motor, and of the pump through it. */
const GAUGES = {
  1: { flow: 2, head: 1.5, torque: 1.4, speed: 0.5, motor: 1.5, throughMotor: 2 },
  2: { flow: 3.5, head: 3.5, torque: 3, speed: 2, motor: 3.5, throughMotor: 4 },
  3: { flow: 3.5, head: 3.5, torque: 3, speed: 2, motor: 3.5, throughMotor: 4 },
};
/** Tolerances of ISO 9906:2012 Table 8, % (from memory): [down, up] of flow, head; down of efficiency; up of power. */
const GRADES = {
  '1B': { flow: [-5, 5], head: [-3, 3], efficiency: -3, power: 4 },
  '1E': { flow: [-5, 5], head: [-3, 3], efficiency: 0, power: 4 },
  '1U': { flow: [0, 10], head: [0, 6], efficiency: 0, power: 10 },
  '2B': { flow: [-8, 8], head: [-5, 5], efficiency: -5, power: 8 },
  '2U': { flow: [0, 16], head: [0, 10], efficiency: -5, power: 16 },
  '3B': { flow: [-9, 9], head: [-7, 7], efficiency: -7, power: 9 },
};
/** kW: up to here clause 4.4.2 has tolerances of its own. */
const SMALL = 10;

/** kW in the liquid. */
export const hydraulic = (density, flow, head) => (density * G * flow * head) / 3.6e6;

/**
 * The points of a run at rated speed, in the liquid of the test and as they stand in the job. Power taken at the motor is brought to the
 * shaft where the motor's efficiency is known. `efficiency` is null where no power was taken.
 */
export function ratedPoints(test, run) {
  const k = test.ratedSpeed / run.speed;
  const liquid = run.density ?? test.density;
  const motor = run.powerAt === 'motor' ? (test.motorEfficiency ?? 100) / 100 : 1;
  return run.points.map(({ flow, head, power }) => ({
    flow: flow * k,
    head: head * k ** 2,
    power: (power * motor * k ** 3 * test.density) / liquid,
    efficiency: power > 0 ? (100 * hydraulic(liquid, flow, head)) / (power * motor) : null,
  }));
}

/** By rising flow, what was measured twice at one flow as its mean; without the points that lack the figure. */
function knots(points, what) {
  const flows = [...new Set(points.filter((p) => p[what] !== null).map((p) => p.flow))].toSorted(
    (a, b) => a - b,
  );
  return flows.map((flow) => {
    const alike = points.filter((p) => p.flow === flow && p[what] !== null);
    return [flow, alike.reduce((sum, p) => sum + p[what], 0) / alike.length];
  });
}

/** Slopes of a monotone piecewise cubic (Fritsch and Butland): weighted harmonic means inside, a parabola kept in bounds at the ends. */
function slopes(xs, ys) {
  const n = xs.length;
  if (n < 2) return [0];
  const h = xs.slice(1).map((x, i) => x - xs[i]);
  const d = ys.slice(1).map((y, i) => (y - ys[i]) / h[i]);
  if (n === 2) return [d[0], d[0]];
  const end = (h0, h1, d0, d1) => {
    const m = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if (m * d0 <= 0) return 0;
    return d0 * d1 <= 0 && Math.abs(m) > 3 * Math.abs(d0) ? 3 * d0 : m;
  };
  const inner = d.slice(1).map((next, i) => {
    const before = d[i];
    if (before * next <= 0) return 0;
    const [a, b] = [2 * h[i + 1] + h[i], h[i + 1] + 2 * h[i]];
    return (a + b) / (a / before + b / next);
  });
  return [end(h[0], h[1], d[0], d[1]), ...inner, end(h[n - 2], h[n - 3], d[n - 2], d[n - 3])];
}

/** A curve through the points at one flow, null beyond its ends. */
export function onCurve(xs, ys, x) {
  const n = xs.length;
  if (n === 0 || x < xs[0] || x > xs[n - 1]) return null;
  if (n === 1) return ys[0];
  const m = slopes(xs, ys);
  let i = 0;
  while (i < n - 2 && x > xs[i + 1]) i += 1;
  const h = xs[i + 1] - xs[i];
  const t = (x - xs[i]) / h;
  return (
    ys[i] * (1 + 2 * t) * (1 - t) ** 2 +
    h * m[i] * t * (1 - t) ** 2 +
    ys[i + 1] * t * t * (3 - 2 * t) +
    h * m[i + 1] * t * t * (t - 1)
  );
}

export function reading(points, what, flow) {
  const at = knots(points, what);
  return onCurve(
    at.map(([x]) => x),
    at.map(([, y]) => y),
    flow,
  );
}

/** Whether a run's figures are those of the pump, or of pump and motor together. */
export const isPump = (test, run) => run.powerAt !== 'motor' || test.motorEfficiency !== undefined;

/** What one run's figures are uncertain by, % of each. */
export function gaugeErrors(test, run) {
  const { flow, head, torque, speed, motor, throughMotor } = GAUGES[test.gauges ?? 2];
  const atMotor = isPump(test, run) ? throughMotor : motor;
  const power = run.powerAt === 'motor' ? atMotor : Math.hypot(torque, speed);
  return { flow, head, power, efficiency: Math.hypot(flow, head, power) };
}

/**
 * % of the guarantee, down and up. `power` is what the pump takes, kW, null where that is not known. A small pump gets the wider of its own
 * and the grade's; a side on which the grade allows nothing stays closed (the clause is silent, so the grade's name keeps its meaning).
 */
export function acceptanceLimits(grade, power) {
  const own = GRADES[grade];
  if (power === null || power > SMALL) return own;
  const down = -(10 * (1 - power / SMALL) + 7);
  const wider = (mine, small) =>
    mine === 0 ? 0 : Math.sign(mine) * Math.max(Math.abs(mine), Math.abs(small));
  return {
    flow: own.flow.map((side) => wider(side, 10)),
    head: own.head.map((side) => wider(side, 8)),
    efficiency: wider(own.efficiency, down),
    power: wider(own.power, Math.hypot(7, down)),
  };
}
