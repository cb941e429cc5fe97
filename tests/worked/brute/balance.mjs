/** Unbalance of a rotor from what its part has lost and taken, by the formulas of the job format. g.mm, deg. */
import { simpson } from './camber.mjs';
import { mixDensity } from './materials.mjs';

/** Share of the mixed density that one standard deviation of it is. */
const DENSITY_ERROR = 0.02;
/** What the chance is tried with: net unbalance this much off, the error a map of half-millimetre cells may have. */
const MAP_ERROR = 0.002;

/** `worn` from wornImpeller; null when the job has no rotor. */
export function balanceOf(job, worn) {
  const { rotor } = job;
  if (rotor === undefined) return null;
  const densities = {
    lost: -worn.plate.density / 1000,
    fill: mixDensity(job.filler) / 1000,
    left: mixDensity(job.coat) / 1000,
  };
  const weighed = ([a, b], density) => [a * density, b * density];
  const plus = (...list) => list.reduce(([a, b], [c, d]) => [a + c, b + d]);
  const first = (what) => weighed(worn.sums[what].slice(1, 3), densities[what]);
  const middle = rotor.planeSpacing / 2;
  const off = (what) => {
    const [, x, y, , xz, yz] = worn.sums[what];
    return weighed([xz - middle * x, yz - middle * y], densities[what]);
  };
  const found = rotor.asFound ?? { amount: 0, angle: 0 };
  const turn = (found.angle * Math.PI) / 180;
  const asFound = [found.amount * Math.cos(turn), found.amount * Math.sin(turn)];
  const added = first('fill');
  const net = plus(first('fill'), first('lost'), first('left'), asFound);
  const couple = plus(off('fill'), off('lost'), off('left'));
  const w = (2 * Math.PI * rotor.speed) / 60;
  const permissible = (1000 * rotor.grade * rotor.mass) / w;
  const scale = worn.scale.fill * densities.fill - worn.scale.lost * densities.lost;
  const { amount } = vector(net, scale);
  const spread = Math.hypot(DENSITY_ERROR * vector(added, scale).amount, worn.read.net);
  const chanceOver = chance(amount, spread, permissible);
  const slack = MAP_ERROR * scale;
  const inPlane = (sign) =>
    vector(
      net.map((x, i) => x / 2 + (sign * couple[i]) / rotor.planeSpacing),
      scale,
    );
  return {
    part: rotor.part,
    added: vector(added, scale),
    net: vector(net, scale),
    couple: vector(couple, scale * middle),
    permissible,
    permissibleEccentricity: permissible / rotor.mass,
    force: amount * w * w * 1e-6,
    ratio: amount / permissible,
    chanceOver,
    verdict: amount > permissible ? 'over' : chanceOver < 0.05 ? 'within' : 'check',
    standardError: spread,
    planes: rotor.planes === 2 ? [inPlane(-1), inPlane(1)] : [],
    scale,
    coupleScale: scale * middle,
    chanceRange: [-slack, slack].map((more) => chance(Math.max(0, amount + more), spread, permissible)),
  };
}

/** What is nothing but rounding against `scale` is nothing. */
function vector([x, y], scale) {
  if (Math.hypot(x, y) < 1e-9 * scale) return { amount: 0, angle: 0 };
  return { amount: Math.hypot(x, y), angle: ((Math.atan2(y, x) * 180) / Math.PI + 360) % 360 };
}

/**
 * Chance that a vector of length `a` with a normal error `s` in each of its two directions is longer than `limit`: the area under the Rice
 * density beyond the limit, or one less that before it, whichever is the smaller.
 */
function chance(a, s, limit) {
  if (s < 1e-9) return a > limit ? 1 : 0;
  const density = (x) =>
    (x / (s * s)) * Math.exp(-((x - a) ** 2) / (2 * s * s)) * scaledBessel((x * a) / (s * s));
  if (limit >= a) return limit > a + 12 * s ? 0 : simpson(density, limit, limit + 14 * s, 600);
  return limit < a - 12 * s ? 1 : 1 - simpson(density, Math.max(0, a - 14 * s), limit, 600);
}

/** exp(-y) I0(y), the mean of exp(y (cos p - 1)) over half a turn. */
function scaledBessel(y) {
  // Where the exponent has fallen below -40 nothing is left to add.
  const far = y > 20 ? Math.acos(1 - 40 / y) : Math.PI;
  return simpson((p) => Math.exp(y * (Math.cos(p) - 1)), 0, far, 200) / Math.PI;
}
