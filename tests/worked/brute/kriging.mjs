/**
 * Ordinary kriging of one mark of gauge readings by plain dense linear algebra: [K + g2 1; 1' 0] worked out in full, the gauge error on
 * the diagonal only. Distances are straight lines: between the points in space on plates, in the two numbers of a vane's face.
 */

const SHAPES = {
  exponential: (h, l) => Math.exp(-h / l),
  gaussian: (h, l) => Math.exp((-h * h) / (2 * l * l)),
  'matern-3/2': (h, l) => (1 + (Math.sqrt(3) * h) / l) * Math.exp((-Math.sqrt(3) * h) / l),
  'matern-5/2': (h, l) =>
    (1 + (Math.sqrt(5) * h) / l + (5 * h * h) / (3 * l * l)) * Math.exp((-Math.sqrt(5) * h) / l),
};

/**
 * The readings of `mark` that lie on the face. `covers(p, q)` is the covariance of two places, `mean(u, v)` the surface, `error(functional)`
 * what the readings leave open of integrals of it.
 */
export function krigingOf(mark, face) {
  const { shape, length, sill } = mark.covariance;
  const gauge = mark.gaugeError ?? 0.1;
  const read = mark.points
    .map(([p, q, depth], number) => ({ at: face.from([p, q]), depth, number }))
    .filter(({ at }) => face.inside(...at));
  const spot = spotOn(face);
  const places = read.map(({ at }) => spot(...at));
  const like = SHAPES[shape];
  const covers = (a, b) => sill * like(Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]), length);
  const n = read.length;
  const system = places.map((a, i) => [
    ...places.map((b, j) => covers(a, b) + (i === j ? gauge ** 2 : 0)),
    1,
  ]);
  system.push([...places.map(() => 1), 0]);
  const inverse = inverted(system);
  const dual = times(inverse, [...read.map(({ depth }) => depth), 0]);
  return {
    read,
    gauge,
    spot,
    covers,
    mean: (u, v) => {
      const here = spot(u, v);
      let sum = dual[n];
      for (let i = 0; i < n; i += 1) sum += dual[i] * covers(here, places[i]);
      return sum;
    },
    /** What is left of the prior covariance `prior` of two integrals, each given by its covariances with the readings and its own weight. */
    left: (a, b, prior) => prior - dot(a, times(inverse, b)),
    to: (here) => [...places.map((b) => covers(here, b)), 1],
  };
}

/** Each reading left out in its turn and estimated from the others: how far off, and the standard error of a reading there; mm. */
export function leaveOneOut(mark, face) {
  const { read } = krigingOf(mark, face);
  const away = read.map(({ at, depth }, i) => {
    const rest = read.filter((_, j) => j !== i).map(({ number }) => mark.points[number]);
    const others = krigingOf({ ...mark, points: rest }, face);
    const here = others.spot(...at);
    const near = others.to(here);
    const variance = others.left(near, near, others.covers(here, here)) + others.gauge ** 2;
    return { off: others.mean(...at) - depth, error: Math.sqrt(variance) };
  });
  return {
    rms: Math.sqrt(away.reduce((sum, { off }) => sum + off * off, 0) / away.length),
    within: away.filter(({ off, error }) => Math.abs(off) <= 2 * error).length,
    of: away.length,
  };
}

/** A point of a face where distances are taken. */
function spotOn(face) {
  if (face.place === undefined) return (u, v) => [u, v, 0];
  return (u, v) => face.place(u, v, 0);
}

const dot = (a, b) => a.reduce((sum, x, i) => sum + x * b[i], 0);
const times = (matrix, x) => matrix.map((row) => dot(row, x));

/** By elimination with the largest pivot of the column. */
function inverted(matrix) {
  const n = matrix.length;
  const rows = matrix.map((row, i) => [...row, ...row.map((_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < n; k += 1) {
    let best = k;
    for (let i = k; i < n; i += 1) if (Math.abs(rows[i][k]) > Math.abs(rows[best][k])) best = i;
    [rows[k], rows[best]] = [rows[best], rows[k]];
    const pivot = rows[k][k];
    rows[k] = rows[k].map((x) => x / pivot);
    for (let i = 0; i < n; i += 1) {
      const factor = rows[i][k];
      if (i === k || factor === 0) continue;
      for (let j = k; j < 2 * n; j += 1) rows[i][j] -= factor * rows[k][j];
    }
  }
  return rows.map((row) => row.slice(n));
}
