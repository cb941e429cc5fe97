/** What each damage region of a face adds up to, and its deepest point. mm, mm2, mm3. */
import { flood, labelNear } from './flood.mjs';
import { depthAt, depths, squares } from './samples.mjs';

const nothing = () => ({
  area: 0,
  lost: 0,
  fill: 0,
  moment: [0, 0, 0],
  deepest: 0,
  peak: [0, 0],
  box: [Infinity, -Infinity, Infinity, -Infinity],
});

/**
 * Sums over the samples by region number, the outermost `allowance` mm left for the coat; [0] is what lies outside every region.
 * mm2, mm3; `moment` mm4 of the fill about the part's origin.
 */
export function sums(grid, depth, allowance, label, count) {
  const all = Array.from({ length: count + 1 }, nothing);
  for (let i = 0; i < depth.length; i += 1)
    if (depth[i] > 0) include(all[label[i]], grid, i, depth[i], allowance);
  return all;
}

function include(sum, grid, i, d, allowance) {
  const [u, v] = [grid.u[i], grid.v[i]];
  const k = grid.face.growth(u, v);
  sum.area += grid.cell;
  sum.lost += grid.cell * (d + (k * d * d) / 2);
  if (d > sum.deepest) {
    sum.deepest = d;
    sum.peak = [u, v];
  }
  const { box } = sum;
  if (u < box[0]) box[0] = u;
  if (u > box[1]) box[1] = u;
  if (v < box[2]) box[2] = v;
  if (v > box[3]) box[3] = v;
  if (d <= allowance) return;
  sum.fill += grid.cell * (d - allowance + (k * (d * d - allowance * allowance)) / 2);
  // Two Gauss points along the depth: exact for the polynomial that the cone and the bore make of it.
  for (const side of [-1, 1]) {
    const t = (d + allowance) / 2 + (side * (d - allowance)) / (2 * Math.sqrt(3));
    const weight = (grid.cell * (1 + k * t) * (d - allowance)) / 2;
    grid.face.place(u, v, t).forEach((p, axis) => {
      sum.moment[axis] += weight * p;
    });
  }
}

/** Whether the marks alone give the depth everywhere in a box: no smoothing brush comes near it. */
export const byMarksAlone = (marks, box) => marksNear(marks, box).every(({ mark }) => mark.kind !== 'smooth');

const marksNear = (marks, [u0, u1, v0, v1], pad = 3) =>
  marks.filter(({ reach: r }) => r[0] < u1 + pad && r[1] > u0 - pad && r[2] < v1 + pad && r[3] > v0 - pad);

/**
 * A region sampled again on a finer grid of its own, at most a million and a half squares. Null where that is hardly finer, or where a
 * smoothing brush had a part in it. `add` adds up the samples.
 */
export function refined({ face, du, dv }, marks, allowance, coarse, add = sums) {
  const pad = 0.6 + 2 * Math.max(du, dv);
  const [u0, u1, v0, v1] = coarse.box.map((edge, i) => edge + (i % 2 === 0 ? -pad : pad));
  const [wide, high] = [u1 - u0, v1 - v0];
  const step = Math.max(Math.min(du / 4, Math.max(wide, high) / 400), Math.sqrt((wide * high) / 1.5e6));
  const acrossSeam = face.round > 0 && wide > face.round - 1;
  if (step > du / 1.5 || acrossSeam || !byMarksAlone(marks, coarse.box)) return null;
  const grid = squares(face, step, [u0, u1, v0, v1]);
  const depth = depths(grid, marksNear(marks, coarse.box));
  const { label, count } = flood(grid, depth);
  const number = labelNear(grid, label, ...coarse.peak);
  return number > 0 ? add(grid, depth, allowance, label, count)[number] : null;
}

const WAYS = Array.from({ length: 24 }, (_, i) => [
  Math.cos((i * Math.PI) / 12),
  Math.sin((i * Math.PI) / 12),
]);

/** The deepest point: from the deepest sample, and from the corners of marks inside the region. */
export const peak = (face, marks, starts, step) =>
  uphill(face, (u, v) => depthAt(face, marks, u, v), starts, step);

/** Where on a face `height(u, v)` is greatest, [u, v, height], from the best of the starts by ever smaller steps. */
export function uphill(face, height, starts, step) {
  let best = [0, 0, -Infinity];
  for (const [su, sv] of starts) {
    let [u, v] = [su, sv];
    let d = face.inside(u, v) ? height(u, v) : -Infinity;
    for (let s = step; s > 1e-5; s /= 2)
      for (let moved = true; moved; ) {
        moved = false;
        for (const [a, b] of WAYS.map(([x, y]) => [x * s, y * s]))
          if (face.inside(u + a, v + b)) {
            const here = height(u + a, v + b);
            if (here > d + 1e-12) {
              [u, v, d, moved] = [u + a, v + b, here, true];
              break;
            }
          }
      }
    if (d > best[2]) best = [u, v, d];
  }
  return best;
}
