/** What two worn faces of an impeller both claim, by sampling the solid: corrections (union - sum of the faces) as sums of columns.mjs. */
import { none, put } from './columns.mjs';
import { scatter } from './samples.mjs';
import { total } from './worn-plate.mjs';

/**
 * One vane, points about `step` mm apart. `worn` = its worn faces, each { face, most, depthOf(u, v), actionOf(u, v), allowance, coated }.
 * Every column across the vane has its own place in its square and its own start along n.
 */
export function vaneOverlap(vane, worn, step) {
  const out = { lost: none(), fill: none(), left: none() };
  if (worn.length < 2) return out;
  const along = Math.ceil(vane.length / step);
  const up = Math.ceil(Math.max(vane.b1, vane.b2) / step);
  const across = Math.ceil(Math.max(vane.t1, vane.t2) / step);
  const [ds, nose] = [vane.length / along, vane.round ? vane.t1 / 2 : 0];
  const reaches = {
    pressure: (one, s, z) => one.depthOf(s, z) > 0,
    suction: (one, s, z) => one.depthOf(s, z) > 0,
    tip: (one, s, z) => vane.height(s) - z < one.most,
    'leading-edge': (one, s) => s < nose + one.most,
    'trailing-edge': (one, s) => vane.length - s < one.most,
  };
  for (let i = 0; i < along; i += 1)
    for (let j = 0; j < up; j += 1) {
      const at = i * up + j;
      const s = (i + scatter(3 * at)) * ds;
      const height = vane.height(s);
      const z = ((j + scatter(3 * at + 1)) * height) / up;
      const near = worn.filter((one) => reaches[one.face.name](one, s, z));
      if (near.length < 2) continue;
      const thick = vane.thickness(s);
      const sides = near.filter((one) => one.face.name === 'pressure' || one.face.name === 'suction');
      if (near.length === 2 && sides.length === 2 && total(sides, (one) => one.depthOf(s, z)) <= thick)
        continue;
      const size = (ds * height * thick) / (up * across);
      const k = vane.curvature(s);
      const start = scatter(3 * at + 2);
      for (let c = 0; c < across; c += 1) {
        const n = thick * ((c + start) / across - 0.5);
        if (s < vane.nose(n)) continue;
        const claims = near.map((one) => claim(one, one.face.under(s, n, z))).filter((one) => one !== null);
        if (claims.length > 1) settle(out, claims, size * (1 - k * n), vane.place(s, n, z));
      }
    }
  return out;
}

/** Front and back of the shroud where together they are deeper than it is thick; `layers` points to a column. */
export function shroudOverlap(front, back, thickness, layers) {
  const out = { lost: none(), fill: none(), left: none() };
  if (front.most + back.most <= thickness) return out;
  const { grid, depth } = front;
  for (let i = 0; i < depth.length; i += 1) {
    if (depth[i] === 0) continue;
    const [x, y] = [grid.u[i], grid.v[i]];
    const both = depth[i] + back.depthOf(x, y) - thickness;
    for (let k = 0; both > 0 && k < layers; k += 1) {
      const z = -depth[i] + ((k + 0.5) / layers) * both;
      const claims = [claim(front, [x, y, -z]), claim(back, [x, y, z + thickness])];
      settle(
        out,
        claims.filter((one) => one !== null),
        (grid.cell * both) / layers,
        [x, y, z],
      );
    }
  }
  return out;
}

/** What a face says of a point `t` under it: null when it has not lost it. */
function claim(one, [u, v, t]) {
  if (t < 0 || t >= one.depthOf(u, v)) return null;
  const action = one.actionOf(u, v);
  if (action === 'fill') return { says: t > one.allowance ? 'fill' : 'skin' };
  return { says: action === 'leave' ? 'left' : 'skin', coated: one.coated };
}

/**
 * A point that several faces claim is lost once; it is filled when one of them fills it, else left to the coat when one of them leaves it
 * and has a coat to come.
 */
function settle(out, claims, size, at) {
  const fills = claims.filter((one) => one.says === 'fill').length;
  const lefts = claims.filter((one) => one.says === 'left' && one.coated).length;
  put(out.lost, size * (1 - claims.length), at);
  if (fills > 1) put(out.fill, size * (1 - fills), at);
  if (lefts > 0) put(out.left, size * ((fills === 0 ? 1 : 0) - lefts), at);
}
