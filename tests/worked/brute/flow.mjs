/**
 * A pump's flow test by the formulas: what each point comes to at rated speed, the curves between, the run at the duty, what was recovered,
 * what it saves and whether the pump is accepted. m3/h, m, kW, %, h. Sources: checks.md F1 to F3.
 */

/** m/s2 */
const G = 9.80665;
/** Measurement uncertainty of ISO 9906 by grade, % (from memory): flow, head, torque, speed, and power at the motor. */
const GAUGES = {
  1: { flow: 2, head: 1.5, torque: 1.4, speed: 0.5, motor: 1.5 },
  2: { flow: 3.5, head: 3.5, torque: 3, speed: 2, motor: 4 },
  3: { flow: 3.5, head: 3.5, torque: 3, speed: 2, motor: 4 },
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

/** The points of a run at rated speed, by rising flow. `efficiency` is null where no power was taken. */
export function ratedPoints(test, run) {
  const k = test.ratedSpeed / run.speed;
  const density = run.density ?? test.density;
  // The power of one run in another liquid than the test's stands for the test's: efficiency does not ask which.
  return run.points
    .map(({ flow, head, power }) => ({
      flow: flow * k,
      head: head * k ** 2,
      power: power * k ** 3,
      efficiency: power > 0 ? (100 * hydraulic(density, flow, head)) / power : null,
    }))
    .toSorted((a, b) => a.flow - b.flow);
}

/** Slopes of a monotone piecewise cubic (Fritsch and Butland): weighted harmonic means inside, a parabola kept in bounds at the ends. */
export function slopes(xs, ys) {
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
  return onCurve(
    points.map((p) => p.flow),
    points.map((p) => p[what]),
    flow,
  );
}

/** What one run's figures are uncertain by, % of each. */
export function gaugeErrors(test, run) {
  const { flow, head, torque, speed, motor } = GAUGES[test.gauges ?? 2];
  const power = run.powerAt === 'motor' ? motor : Math.hypot(torque, speed);
  return { flow, head, power, efficiency: Math.hypot(flow, head, power) };
}

/** Shares of the guarantee, from and to. `power` is what the guarantee says the pump takes, kW. */
export function acceptanceLimits(grade, power) {
  const { flow, head, efficiency, power: most } = GRADES[grade];
  if (power > SMALL) return { flow, head, efficiency, power: most };
  const down = 10 * (1 - power / SMALL) + 7;
  return { flow: [-10, 10], head: [-8, 8], efficiency: -down, power: Math.hypot(7, down) };
}
