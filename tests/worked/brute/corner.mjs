/**
 * What face and bore both claim where they meet, by sampling the solid there in r, angle and z. Gives corrections to the plain sums of the
 * two faces: `lost`, `fill` and `left` in mm3 and the first moments of the fill in mm4, each (union - sum).
 */
import { DAMAGE } from './flood.mjs';
import { scatter } from './samples.mjs';

/** `worn` = { face, grid, depthOf(u, v), actionOf(u, v), allowance } for each of the two faces. */
export function cornerCorrection(running, bore, arcStep, fine) {
  const out = { lost: 0, fill: 0, left: 0, moment: [0, 0, 0] };
  const { bore: radius, outer, slope, thickness } = running.face;
  const [sin, cos, tan] = [Math.sin(slope), Math.cos(slope), Math.tan(slope)];
  const turns = Math.ceil((2 * Math.PI * radius) / arcStep);
  const spread = 8;
  for (let i = 0; i < turns; i += 1) {
    const theta = ((i + scatter(i)) * 2 * Math.PI) / turns;
    const aside = column(bore, Math.min(thickness, running.most / cos + 0.1), (h) => [theta * radius, h]);
    if (aside.most === 0) continue;
    const wide = aside.most;
    const inward = column(running, wide + 0.1, (x) => [
      (radius + x) * Math.cos(theta),
      (radius + x) * Math.sin(theta),
    ]);
    if (inward.most === 0) continue;
    const top = wide * tan;
    const deep = inward.most / cos + wide * Math.abs(tan) + top + 0.05;
    for (let a = 0; a < fine; a += 1) {
      const r = radius + ((a + scatter(i * fine + a)) * wide) / fine;
      const faceZ = (r - outer) * tan;
      for (let b = 0; b < fine; b += 1) {
        const z = faceZ - ((b + scatter((i * fine + a) * fine + b)) * deep) / fine;
        const t = (faceZ - z) * cos;
        const under = (radius - outer) * tan - z;
        const one = claim(running, inward, r - t * sin - radius, t);
        const two = claim(bore, aside, under, r - radius);
        if (one === null || two === null) continue;
        const size = ((r * 2 * Math.PI) / turns) * (wide / fine) * (deep / fine);
        out.lost -= size;
        const fills = (one === 'fill' ? 1 : 0) + (two === 'fill' ? 1 : 0);
        const lefts = (one === 'left' ? 1 : 0) + (two === 'left' ? 1 : 0);
        const fill = (fills > 0 ? 1 : 0) - fills;
        out.fill += size * fill;
        out.left += size * ((lefts > 0 && fills === 0 ? 1 : 0) - lefts);
        out.moment[0] += size * fill * r * Math.cos(theta);
        out.moment[1] += size * fill * r * Math.sin(theta);
        out.moment[2] += size * fill * z;
      }
    }
  }
  return out;

  /** Depth and action along a line over one face, `far` mm from the corner. */
  function column(worn, far, place) {
    const count = fine * spread;
    const depth = new Float64Array(count);
    const action = new Array(count);
    let most = 0;
    for (let k = 0; k < count; k += 1) {
      const [u, v] = place(((k + 0.5) * far) / count);
      depth[k] = worn.face.inside(u, v) ? worn.depthOf(u, v) : 0;
      action[k] = depth[k] > DAMAGE ? worn.actionOf(u, v) : '';
      most = Math.max(most, depth[k]);
    }
    return { depth, action, most, far };
  }
}

/** What a face says of a point `t` under it and `x` from the corner: null when it has not lost it. */
function claim(worn, line, x, t) {
  if (x < 0 || x >= line.far) return null;
  const k = Math.floor((x / line.far) * line.depth.length);
  if (t >= line.depth[k]) return null;
  const action = line.action[k];
  if (action === 'fill') return t > worn.allowance ? 'fill' : 'skin';
  return action === 'leave' ? 'left' : 'skin';
}
