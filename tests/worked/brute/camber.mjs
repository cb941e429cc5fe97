/**
 * One vane of an impeller with its leading edge at angle 0: the camber walked in small steps of arc length. Lengths mm, angles radians.
 * s along the camber from the leading edge, n across it, + towards the pressure side, z from the shroud.
 */
import { radians } from './faces.mjs';

const STEPS = 20000;

export function vaneOf({ vanes, rotation, outerDiameter }) {
  const [r1, r2] = [vanes.inletDiameter / 2, outerDiameter / 2];
  const beta = bladeAngle(vanes, r1, r2);
  // Swept back against the rotation; the pressure side looks along the rotation.
  const sweep = rotation === 'clockwise' ? 1 : -1;
  const length = simpson((r) => 1 / Math.sin(beta(r)), r1, r2);
  const line = walk(beta, sweep, r1, length);
  const h = length / STEPS;
  const { thicknessInlet: t1, thicknessOutlet: t2, heightInlet: b1, heightOutlet: b2 } = vanes;
  const round = vanes.nose === 'round';
  /** Value of a table at s, straight between its entries. */
  const read = (table, s) => {
    const x = Math.min(STEPS - 1e-9, Math.max(0, s / h));
    const i = Math.floor(x);
    return table[i] + (table[i + 1] - table[i]) * (x - i);
  };
  return {
    length,
    sweep,
    round,
    /** Sine of the least blade angle. */
    flattest: Math.sin(Math.min(beta(r1), beta(r2))),
    inlet: r1,
    outer: r2,
    t1,
    t2,
    b1,
    b2,
    /** Where the flat of the sides begins. */
    sideStart: round ? t1 / 2 : 0,
    wrap: line.theta[STEPS],
    turning: line.psi[STEPS] - line.psi[0],
    thickness: (s) => t1 + (t2 - t1) * (s / length),
    height: (s) => b1 + ((b2 - b1) * (read(line.r, s) - r1)) / (r2 - r1),
    nose: (n) => (round ? (t1 / 2) * (1 - Math.sqrt(Math.max(0, 1 - ((2 * n) / t1) ** 2))) : 0),
    radius: (s) => read(line.r, s),
    angle: (s) => read(line.theta, s),
    /** Direction of the camber, counter-clockwise from x. */
    heading: (s) => read(line.psi, s),
    /** (dT/ds) . Np */
    curvature: (s) => read(line.k, s),
    /** Arc length where the camber meets radius r. */
    along: (r) => {
      let [low, high] = [0, STEPS];
      while (high - low > 1) {
        const mid = (low + high) >> 1;
        if (line.r[mid] <= r) low = mid;
        else high = mid;
      }
      return h * (low + (r - line.r[low]) / (line.r[high] - line.r[low]));
    },
    place: (s, n, z) => {
      const [r, theta, psi] = [read(line.r, s), read(line.theta, s), read(line.psi, s)];
      return [
        r * Math.cos(theta) + n * sweep * Math.sin(psi),
        r * Math.sin(theta) - n * sweep * Math.cos(psi),
        z,
      ];
    },
  };
}

function bladeAngle({ inletAngle, outletAngle, camber }, r1, r2) {
  const [b1, b2] = [radians(inletAngle), radians(outletAngle)];
  if (camber !== 'arc') return (r) => b1 + ((b2 - b1) * (r - r1)) / (r2 - r1);
  const rho = (r2 ** 2 - r1 ** 2) / (2 * (r2 * Math.cos(b2) - r1 * Math.cos(b1)));
  const d2 = r1 ** 2 + rho ** 2 - 2 * r1 * rho * Math.cos(b1);
  return (r) => Math.acos((r * r + rho * rho - d2) / (2 * r * rho));
}

/** Fourth-order steps of dr = sin(beta) ds, dtheta = sweep cos(beta) / r ds; the curvature from differences of the heading. */
function walk(beta, sweep, r1, length) {
  const [r, theta, psi, k] = Array.from({ length: 4 }, () => new Float64Array(STEPS + 1));
  const h = length / STEPS;
  const slope = (at) => [Math.sin(beta(at)), (sweep * Math.cos(beta(at))) / at];
  r[0] = r1;
  for (let i = 0; i < STEPS; i += 1) {
    const a = slope(r[i]);
    const b = slope(r[i] + (h / 2) * a[0]);
    const c = slope(r[i] + (h / 2) * b[0]);
    const d = slope(r[i] + h * c[0]);
    r[i + 1] = r[i] + (h / 6) * (a[0] + 2 * b[0] + 2 * c[0] + d[0]);
    theta[i + 1] = theta[i] + (h / 6) * (a[1] + 2 * b[1] + 2 * c[1] + d[1]);
  }
  for (let i = 0; i <= STEPS; i += 1) psi[i] = theta[i] + sweep * (Math.PI / 2 - beta(r[i]));
  for (let i = 0; i <= STEPS; i += 1) {
    const [low, high] = [Math.max(0, i - 1), Math.min(STEPS, i + 1)];
    k[i] = (-sweep * (psi[high] - psi[low])) / ((high - low) * h);
  }
  return { r, theta, psi, k };
}

export function simpson(f, from, to, panels = 4000) {
  const h = (to - from) / (2 * panels);
  let sum = f(from) + f(to);
  for (let i = 1; i < 2 * panels; i += 1) sum += (i % 2 === 1 ? 4 : 2) * f(from + i * h);
  return (sum * h) / 3;
}

/** s and n of a point in the plane of the shroud (vane with its leading edge at angle 0), NaN where it lies off the ends. */
export function vaneCoordinates(vane, x, y) {
  let s = vane.along(Math.min(vane.outer, Math.max(vane.inlet, Math.hypot(x, y))));
  for (let round = 0; round < 12; round += 1) {
    const [cx, cy] = vane.place(s, 0, 0);
    const psi = vane.heading(s);
    const ahead = (x - cx) * Math.cos(psi) + (y - cy) * Math.sin(psi);
    const n = ((x - cx) * Math.sin(psi) - (y - cy) * Math.cos(psi)) * vane.sweep;
    if (Math.abs(ahead) < 1e-9) return [s, n];
    if ((s <= 0 && ahead < 0) || (s >= vane.length && ahead > 0)) break;
    s = Math.min(vane.length, Math.max(0, s + ahead / (1 - vane.curvature(s) * n)));
  }
  return [Number.NaN, Number.NaN];
}
