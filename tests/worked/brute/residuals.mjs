/**
 * What stands open of a running face, by radius: the face sampled, its marks pressed in, its regions judged, and every sample put into a
 * thin ring by how far from the shaft it lies. mm, mm2.
 */

import { vaneOf } from './camber.mjs';
import { facesOf, radians } from './faces.mjs';
import { DAMAGE, flood, squareAt } from './flood.mjs';
import { depthAt, depths, marksOn, squares } from './samples.mjs';
import { vaneFaces } from './vane-faces.mjs';
import { matches } from './worn-plate.mjs';

/** Width of a thin ring, mm: rings of any radii are put together from these. */
const THIN = 0.05;
export const STATES = ['asFound', 'filled'];

/** @param step  width of a square, mm */
export function plateResidual(plate, job, step) {
  const face = facesOf(plate)[0];
  const at = `${plate.id}:${face.name}`;
  return {
    ...residual(face, marksOn(plate, face), judging(job, at), step, (x, y) => Math.hypot(x, y)),
    span: face.outer === undefined ? outlineSpan(plate.outline) : [face.bore, face.outer],
    coated: matches(job.repair?.coatedFaces ?? ['*'], at),
  };
}

/** One for every tip, in their order; alike tips share their samples. */
export function tipResiduals(impeller, job, step) {
  const dressed = job.clearance?.dressTips ?? 0;
  const vane = vaneOf(impeller);
  const shape = vaneFaces(vane, false).find(({ name }) => name === 'tip');
  const radius = (s, n) => {
    const [x, y] = vane.place(s, n, 0);
    return Math.hypot(x, y);
  };
  const span = tipSpan(vane, radius);
  const known = new Map();
  const tips = Array.from({ length: impeller.vanes.count }, (_, i) => {
    const face = { ...shape, name: `vane-${i + 1}/tip` };
    const at = `${impeller.id}:${face.name}`;
    const marks = marksOn(impeller, face);
    const judged = judging(job, at);
    const key = JSON.stringify([marks.map(({ mark }) => mark), judged]);
    if (!known.has(key)) known.set(key, residual(face, marks, judged, step, radius, dressed));
    return {
      ...known.get(key),
      name: face.name,
      span,
      coated: matches(job.repair?.coatedFaces ?? ['*'], at),
    };
  });
  return { vane, tips, span };
}

function judging({ repair = {} }, at) {
  return {
    allowance: matches(repair.allowanceFaces ?? ['*:face', '*:vane-*/tip'], at)
      ? (repair.coatAllowance ?? 0)
      : 0,
    leaveBelow: repair.leaveBelow ?? 1,
    overrule: (repair.overrule ?? []).filter((one) => one.at === at),
  };
}

/** @param dressed  to a plane so far under the surface, mm: what lies higher comes off, what lies deeper stays */
function residual(face, marks, { allowance, leaveBelow, overrule }, step, radius, dressed = 0) {
  const grid = squares(face, step);
  const depth = depths(grid, marks);
  const { label, count } = flood(grid, depth);
  const most = new Float64Array(count + 1);
  for (let i = 0; i < depth.length; i += 1) most[label[i]] = Math.max(most[label[i]], depth[i]);
  const smoothed = marks.some(({ mark }) => mark.kind === 'smooth');
  for (const [u, v] of smoothed ? [] : marks.flatMap(({ corners }) => corners)) {
    const number = label[Math.max(0, squareAt(grid, u, v))];
    if (number > 0 && face.inside(u, v)) most[number] = Math.max(most[number], depthAt(face, marks, u, v));
  }
  const fills = most.map((deepest, i) => (i > 0 && deepest >= leaveBelow - 1e-9 ? 1 : 0));
  for (const { point, action } of overrule) {
    const [u, v] = face.from(point);
    const number = label[Math.max(0, squareAt(grid, u, v))];
    // A square at the edge of a region may hold a point beside it.
    const beside = !smoothed && depthAt(face, marks, u, v) <= DAMAGE;
    if (number > 0 && !beside) fills[number] = action === 'fill' ? 1 : 0;
  }
  const rings = STATES.map(() => new Map());
  for (let i = 0; i < depth.length; i += 1) {
    if (!grid.on[i]) continue;
    const [u, v] = [grid.u[i], grid.v[i]];
    const weight = face.skin?.(u, v) ?? 1;
    const ring = Math.floor(radius(u, v) / THIN);
    put(rings[0], ring, depth[i], weight);
    const left = fills[label[i]] ? Math.min(depth[i], allowance) : depth[i];
    put(rings[1], ring, Math.max(left, dressed), weight);
  }
  const left = Math.max(0, ...most.filter((_, i) => i > 0 && !fills[i]));
  return { face, rings, left, deepest: Math.max(0, ...most), depthOf: (u, v) => depthAt(face, marks, u, v) };
}

function put(rings, ring, d, weight) {
  const one = rings.get(ring);
  if (one === undefined) {
    rings.set(ring, { least: d, most: d, sum: d * weight, weight });
    return;
  }
  if (d < one.least) one.least = d;
  if (d > one.most) one.most = d;
  one.sum += d * weight;
  one.weight += weight;
}

/** Least, mean and most of thin rings from one radius to another, of one face or of several; null where none of them has any area. */
export function ringOf(list, state, from, to) {
  let [least, most, sum, weight] = [Infinity, -Infinity, 0, 0];
  for (const { rings } of list)
    for (let k = Math.round(from / THIN); k < Math.round(to / THIN); k += 1) {
      const one = rings[state].get(k);
      if (one === undefined) continue;
      least = Math.min(least, one.least);
      most = Math.max(most, one.most);
      sum += one.sum;
      weight += one.weight;
    }
  return weight === 0 ? null : { least, mean: sum / weight, most };
}

function tipSpan(vane, radius) {
  let [low, high] = [Infinity, 0];
  const lots = 4000;
  for (let i = 0; i <= lots; i += 1) {
    const n = (vane.t1 / 2) * ((2 * i) / lots - 1);
    const s = (vane.length * i) / lots;
    const half = vane.thickness(s) / 2;
    const points = [
      [vane.nose(n), n],
      [vane.length, (vane.t2 / 2) * ((2 * i) / lots - 1)],
      ...[half, -half].filter((m) => s >= vane.nose(m)).map((m) => [s, m]),
    ];
    for (const [a, b] of points) {
      low = Math.min(low, radius(a, b));
      high = Math.max(high, radius(a, b));
    }
  }
  return [low, high];
}

/** Least and largest distance from the shaft: a window about it sets the least, else the nearest point of any line, or the shaft itself. */
function outlineSpan({ edge, holes = [] }) {
  const loops = [edge, ...holes];
  const near = Math.min(...loops.flatMap((loop) => loop.map((a, i) => nearest(a, loop.at(i - 1)))));
  const inside = loops.filter((loop) => holds(loop)).length === 1 && holds(edge);
  return [inside ? 0 : near, Math.max(...edge.map(([x, y]) => Math.hypot(x, y)))];
}

function nearest([ax, ay], [bx, by]) {
  const [dx, dy] = [bx - ax, by - ay];
  const t = Math.min(1, Math.max(0, -(ax * dx + ay * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(ax + t * dx, ay + t * dy);
}

/** Whether the shaft lies inside a loop: the angles its corners turn through add up to a whole turn. */
function holds(loop) {
  const turn = loop.reduce((sum, [x, y], i) => {
    const [a, b] = loop.at(i - 1);
    return sum + Math.atan2(a * y - b * x, a * x + b * y);
  }, 0);
  return Math.abs(turn) > Math.PI;
}

/** Rise of a dished face and of the vanes' height for one mm of radius: what is left between the two opens the gap. */
export function openingSlope(plate, impeller) {
  const { heightInlet, heightOutlet, inletDiameter } = impeller.vanes;
  const vanes = (heightOutlet - heightInlet) / ((impeller.outerDiameter - inletDiameter) / 2);
  return -Math.tan(radians(plate.coneAngle ?? 0)) - vanes;
}
