/**
 * Points on a face, one in every square of a fine grid, and the depth of wear at each. The point lies at a fixed pseudo-random place in
 * its square, so a straight edge that runs along the grid does not count squares wholly in or wholly out.
 */
import { readyMark } from './marks.mjs';

/** A repeatable number in [0, 1) for cell i. */
export function scatter(i) {
  let x = Math.imul(i ^ 0x9e3779b9, 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return ((x ^ (x >>> 16)) >>> 0) / 4294967296;
}

/** Squares of about `step` mm over `bounds` (the whole face unless told). `at(i)` gives the sample point of square i. */
export function squares(face, step, bounds = face.bounds) {
  const [u0, u1, v0, v1] = bounds;
  const columns = Math.max(1, Math.ceil((u1 - u0) / step));
  const rows = Math.max(1, Math.ceil((v1 - v0) / step));
  const [du, dv] = [(u1 - u0) / columns, (v1 - v0) / rows];
  const u = new Float64Array(columns * rows);
  const v = new Float64Array(columns * rows);
  const on = new Uint8Array(columns * rows);
  for (let i = 0; i < u.length; i += 1) {
    u[i] = u0 + ((i % columns) + scatter(2 * i)) * du;
    v[i] = v0 + (Math.floor(i / columns) + scatter(2 * i + 1)) * dv;
    on[i] = face.inside(u[i], v[i]) ? 1 : 0;
  }
  const wraps = face.round > 0 && bounds === face.bounds;
  return { face, u0, v0, du, dv, columns, rows, u, v, on, wraps, cell: du * dv * face.stretch };
}

/** Whether a name, with a star for any vane's number, stands for this one. */
export const namedBy = (pattern, name) => new RegExp(`^${pattern.replaceAll('*', '.*')}$`).test(name);

/** Wear marks of a part that lie on a face, in order. */
export const marksOn = (part, face) =>
  part.wear.filter((mark) => namedBy(mark.face, face.name)).map((mark) => readyMark(mark, face));

/** Depth at every sample, clamped to the wall. */
export function depths(grid, marks) {
  const depth = new Float64Array(grid.u.length);
  for (const mark of marks) {
    if (mark.mark.kind === 'smooth') smooth(grid, depth, mark);
    else
      eachNear(grid, mark.reach, (i) => {
        depth[i] = mark.after(grid.u[i], grid.v[i], depth[i]);
      });
  }
  for (let i = 0; i < depth.length; i += 1)
    depth[i] = grid.on[i] ? Math.min(depth[i], wallAt(grid.face, grid.u[i], grid.v[i])) : 0;
  return depth;
}

/** Depth at one point by the marks alone; no smoothing. */
export function depthAt(face, marks, u, v) {
  let d = 0;
  for (const mark of marks) d = mark.after(u, v, d);
  return Math.min(d, wallAt(face, u, v));
}

/** Metal behind a point: the same all over a plate's face, not so on a vane. */
const wallAt = (face, u, v) => face.wallAt?.(u, v) ?? face.wall;

function eachNear(grid, [ulo, uhi, vlo, vhi], visit) {
  const clip = (x, most) => Math.min(most, Math.max(0, x));
  const [c0, c1] = [
    clip(Math.floor((ulo - grid.u0) / grid.du), grid.columns),
    clip(Math.ceil((uhi - grid.u0) / grid.du), grid.columns),
  ];
  const [r0, r1] = [
    clip(Math.floor((vlo - grid.v0) / grid.dv), grid.rows),
    clip(Math.ceil((vhi - grid.v0) / grid.dv), grid.rows),
  ];
  for (let r = r0; r < r1; r += 1)
    for (let c = c0; c < c1; c += 1) if (grid.on[r * grid.columns + c]) visit(r * grid.columns + c);
}

/**
 * Each point moves towards the mean depth of the square of half width radius / 2 about it, as it was before the stroke, by the brush's share
 * there. On a round face the square lies along the radius and across it.
 */
function smooth(grid, depth, mark) {
  const before = Float64Array.from(depth);
  const half = mark.mark.radius / 2;
  const { face, columns, rows, u, v, on } = grid;
  const far = face.kind === 'polar' ? half * Math.SQRT2 : half;
  const [cu, cv] = [Math.ceil(far / grid.du) + 1, Math.ceil(far / grid.dv) + 1];
  eachNear(grid, mark.reach, (i) => {
    const share = mark.depthAt(u[i], v[i]);
    if (Number.isNaN(share)) return;
    const [c, r] = [i % columns, Math.floor(i / columns)];
    const out = Math.hypot(u[i], v[i]);
    const [ex, ey] = face.kind === 'polar' ? [u[i] / out, v[i] / out] : [1, 0];
    const slack = face.kind === 'polar' ? face.stretch : 1;
    let [sum, count] = [0, 0];
    for (let rr = Math.max(0, r - cv); rr <= Math.min(rows - 1, r + cv); rr += 1)
      for (let k = c - cu; k <= c + cu; k += 1) {
        const cc = grid.wraps ? (k + columns) % columns : k;
        const j = rr * columns + cc;
        if (cc < 0 || cc >= columns || !on[j]) continue;
        let du = u[j] - u[i];
        if (grid.wraps) du -= face.round * Math.round(du / face.round);
        const dv = v[j] - v[i];
        if (Math.abs(du * ex + dv * ey) * slack > half || Math.abs(dv * ex - du * ey) > half) continue;
        sum += before[j];
        count += 1;
      }
    if (count > 0) depth[i] = before[i] + share * (sum / count - before[i]);
  });
}
