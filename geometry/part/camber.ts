/**
 * The camber line of a backward-swept vane: a curve in the plane z = 0 from the inlet radius to the outer one, its blade angle beta
 * measured from the tangential direction. Source: geometry definitions, "Impeller"; tests/geometry/part/camber.test.ts.
 */
import type { Vanes } from '../job/job.ts';
import type { Mm, Rad } from '../units.ts';

/** The camber as it sweeps towards greater angles from the direction 0; a vane mirrors and turns it. */
export interface Camber {
  /** From the leading edge to the outer radius. */
  readonly length: Mm;
  /** Angle about the shaft from the leading edge to the outer end. */
  readonly wrap: Rad;
  at(s: Mm): CamberPoint;
  radius(s: Mm): Mm;
  /** Distance along at which the camber passes a radius; nearest end outside. */
  lengthAt(radius: Mm): Mm;
}

export interface CamberPoint {
  readonly x: Mm;
  readonly y: Mm;
  /** Unit vector along s. */
  readonly tx: number;
  readonly ty: number;
  /** How fast the direction turns, 1/mm; positive. */
  readonly turning: number;
}

/** Pieces the camber is integrated and kept in; what lies between is met to 1e-9 mm. */
const PIECES = 2048;

/**
 * Blade angle against radius. `linear`: beta runs linearly. `arc`: one circular arc through both end angles, from the cosine rule
 * cos beta = (r^2 + rho^2 - d^2) / (2 r rho), written so that a straight vane (rho without bound) is nothing special.
 */
interface BladeLaw {
  cosine(r: Mm): number;
  sine(r: Mm): number;
  turning(r: Mm): number;
}

/**
 * The camber through two radii at two blade angles. It runs outward all the way: cos beta is a r + b / r on an arc, between its end
 * values or, where it dips, not below 0.
 * Accuracy: 1e-9 of length and wrap (fourth-order steps of a 2048th).
 */
export function camberLine(vanes: Vanes, outerRadius: Mm): Camber {
  const { inletRadius } = vanes;
  const law = vanes.camber === 'arc' ? arcLaw(vanes, outerRadius) : linearLaw(vanes, outerRadius);
  const length = lengthOf(law, inletRadius, outerRadius);
  const step = length / PIECES;
  const radii = new Float64Array(PIECES + 1);
  const angles = new Float64Array(PIECES + 1);
  radii[0] = inletRadius;
  for (let i = 0; i < PIECES; i++) {
    const r = radii[i];
    const r1 = r + (step / 2) * law.sine(r);
    const r2 = r + (step / 2) * law.sine(r1);
    const r3 = r + step * law.sine(r2);
    const turn = (radius: Mm) => law.cosine(radius) / radius;
    radii[i + 1] = r + (step / 6) * (law.sine(r) + 2 * law.sine(r1) + 2 * law.sine(r2) + law.sine(r3));
    angles[i + 1] = angles[i] + (step / 6) * (turn(r) + 2 * turn(r1) + 2 * turn(r2) + turn(r3));
  }
  const outward = radii.map((r) => step * law.sine(r));
  const round = radii.map((r) => (step * law.cosine(r)) / r);
  /** Cubic between two places, true in value and slope at both. */
  const between = (values: Float64Array, slopes: Float64Array, s: Mm): number => {
    const i = Math.min(PIECES - 1, Math.floor(s / step));
    const t = s / step - i;
    const a = slopes[i];
    const b = slopes[i + 1];
    const rise = values[i + 1] - values[i];
    return values[i] + t * (a + t * (3 * rise - 2 * a - b + t * (a + b - 2 * rise)));
  };
  const radius = (s: Mm): Mm => between(radii, outward, Math.min(Math.max(s, 0), length));
  return {
    length,
    wrap: angles[PIECES],
    radius,
    lengthAt: (r) => lengthAtRadius(radii, step, r),
    at: (s) => {
      const on = Math.min(Math.max(s, 0), length);
      const past = s - on;
      const r = radius(on);
      const angle = between(angles, round, on);
      const cos = Math.cos(angle);
      const sin = Math.sin(angle);
      const away = law.sine(r);
      const along = law.cosine(r);
      const tx = away * cos - along * sin;
      const ty = away * sin + along * cos;
      // Past its ends the camber runs on straight.
      return {
        x: r * cos + past * tx,
        y: r * sin + past * ty,
        tx,
        ty,
        turning: past === 0 ? law.turning(r) : 0,
      };
    },
  };
}

function linearLaw({ inletRadius, inletAngle, outletAngle }: Vanes, outerRadius: Mm): BladeLaw {
  const slope = (outletAngle - inletAngle) / (outerRadius - inletRadius);
  const beta = (r: Mm): Rad => inletAngle + slope * (r - inletRadius);
  return {
    cosine: (r) => Math.cos(beta(r)),
    sine: (r) => Math.sin(beta(r)),
    turning: (r) => Math.cos(beta(r)) / r - slope * Math.sin(beta(r)),
  };
}

function arcLaw({ inletRadius: r1, inletAngle, outletAngle }: Vanes, outerRadius: Mm): BladeLaw {
  const bend =
    (2 * (outerRadius * Math.cos(outletAngle) - r1 * Math.cos(inletAngle))) / (outerRadius ** 2 - r1 ** 2);
  const cosine = (r: Mm): number => (((r * r - r1 * r1) * bend) / 2 + r1 * Math.cos(inletAngle)) / r;
  return { cosine, sine: (r) => Math.sqrt(1 - cosine(r) ** 2), turning: () => bend };
}

/** Integral of dr / sin beta by Gauss-Legendre, three points a piece. */
function lengthOf({ sine }: BladeLaw, from: Mm, to: Mm): Mm {
  const piece = (to - from) / PIECES;
  const off = Math.sqrt(0.6) / 2;
  let sum = 0;
  for (let i = 0; i < PIECES; i++) {
    const middle = from + (i + 0.5) * piece;
    sum += 5 / sine(middle - off * piece) + 8 / sine(middle) + 5 / sine(middle + off * piece);
  }
  return (sum * piece) / 18;
}

function lengthAtRadius(radii: Float64Array, step: Mm, radius: Mm): Mm {
  let low = 0;
  let high = radii.length - 1;
  if (radius <= radii[low]) return 0;
  if (radius >= radii[high]) return high * step;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (radii[middle] <= radius) low = middle;
    else high = middle;
  }
  return (low + (radius - radii[low]) / (radii[high] - radii[low])) * step;
}
