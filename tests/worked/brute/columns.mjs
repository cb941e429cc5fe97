/**
 * Metal under the samples of an impeller face, added up in the part frame: volume, first moments, and the products with z that the
 * couple needs. A set of sums is [V, x, y, z, xz, yz]: mm3, mm4, mm5.
 */

export const none = () => new Float64Array(6);

/** Adds `size` mm3 at a place to a set of sums. Writes into `sums`. */
export function put(sums, size, [x, y, z]) {
  sums[0] += size;
  sums[1] += size * x;
  sums[2] += size * y;
  sums[3] += size * z;
  sums[4] += size * x * z;
  sums[5] += size * y * z;
}

/** Several sets as one. */
export const together = (list) => list.reduce((a, b) => a.map((x, i) => x + b[i]), none());

/** The same metal turned about the shaft. */
export function turned([volume, x, y, z, xz, yz], angle) {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return Float64Array.of(volume, c * x - s * y, s * x + c * y, z, c * xz - s * yz, s * xz + c * yz);
}

/** Sums over the samples by region number, the outermost `allowance` mm left for the coat; [0] is what lies outside every region. */
export function columnSums(grid, depth, allowance, label, count) {
  const all = Array.from({ length: count + 1 }, () => ({
    area: 0,
    lost: none(),
    fill: none(),
    deepest: 0,
    peak: [0, 0],
    box: [Infinity, -Infinity, Infinity, -Infinity],
  }));
  for (let i = 0; i < depth.length; i += 1)
    if (depth[i] > 0) include(all[label[i]], grid, i, depth[i], allowance);
  if (allowance === 0) for (const one of all) one.fill = one.lost;
  return all;
}

function include(sum, grid, i, d, allowance) {
  const { face, cell, v0, dv, columns } = grid;
  const [u, v] = [grid.u[i], grid.v[i]];
  const low = v0 + Math.floor(i / columns) * dv;
  sum.area += cell * face.skin(u, v, low, low + dv);
  if (d > sum.deepest) {
    sum.deepest = d;
    sum.peak = [u, v];
  }
  const { box } = sum;
  box[0] = Math.min(box[0], u);
  box[1] = Math.max(box[1], u);
  box[2] = Math.min(box[2], v);
  box[3] = Math.max(box[3], v);
  column(sum.lost, face, u, v, cell, 0, d);
  // With no allowance `columnSums` takes the lost metal for the fill.
  if (allowance > 0 && d > allowance) column(sum.fill, face, u, v, cell, allowance, d);
}

/**
 * The metal between two depths. Two Gauss points do where it swells in proportion to the depth (exact up to the product with z); the
 * column under an edge runs along the bent camber and may leave the metal, one beside a round nose begins in the air: they are cut into
 * layers.
 */
function column(sums, face, u, v, cell, from, to) {
  const layers = face.layers(u);
  const deep = to - from;
  for (let k = 0; k < (layers || 2); k += 1) {
    const share = layers > 0 ? (k + 0.5) / layers : 0.5 + (k - 0.5) / Math.sqrt(3);
    const { at, swell } = face.layer(u, v, from + share * deep);
    if (swell !== 0) put(sums, (cell * deep * swell) / (layers || 2), at);
  }
}
