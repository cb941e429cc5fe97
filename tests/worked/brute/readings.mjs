/**
 * What the gauge readings of a part leave open: the samples of its faces are gathered into tiles, and the covariance of the integrals over
 * them is a plain double sum over the tiles. mm3, and g.mm for the net unbalance.
 */
import { krigingOf, leaveOneOut } from './kriging.mjs';
import { mixDensity } from './materials.mjs';
import { namedBy } from './samples.mjs';

/** The integrals: filled and lost volume, and the two components of the net unbalance. */
const [FILL, LOST, X, Y] = [0, 1, 2, 3];

/** @param faces  worn faces, each { face, turn, grid, depth, label, regions, marks, allowance, coated } */
export function readingErrors(part, job, faces, tiles = 6000) {
  const densities = {
    metal: part.density / 1000,
    filler: mixDensity(job.filler) / 1000,
    coat: mixDensity(job.coat) / 1000,
  };
  const each = part.wear
    .map((mark, index) => ({ mark, index }))
    .filter(({ mark }) => mark.kind === 'readings')
    .map(({ mark, index }) => {
      const on = faces.filter(({ face }) => namedBy(mark.face, face.name));
      const surface = krigingOf(mark, on[0].face);
      const pieces = gathered(on, mark, densities, tiles);
      const cut = cutAtNothing(on, mark, surface, densities);
      return {
        mark: index,
        face: mark.face,
        ...withCut(judged(surface, pieces, on[0]), cut),
        leaveOneOut: leaveOneOut(mark, on[0].face),
      };
    });
  const [xx, yy, xy] = [0, 1, 2].map((i) => each.reduce((sum, one) => sum + one.net[i], 0));
  const rms = (key) => Math.hypot(...each.map((one) => one[key]));
  return {
    each,
    fill: rms('fillError'),
    lost: rms('lostError'),
    /** In the worst direction. */
    net: Math.sqrt((xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy)),
  };
}

/** Tiles of samples that the mark decides: place, and how much each integral grows with a mm of depth there. Alike faces share tiles. */
function gathered(faces, mark, { metal, filler, coat }, tiles) {
  const all = new Map();
  for (const { face, turn, grid, depth, label, regions, marks, allowance, coated } of faces) {
    const side = Math.max(1, Math.round(Math.sqrt(depth.length / tiles)));
    const across = Math.ceil(grid.columns / side);
    const [cos, sin] = [Math.cos(turn ?? 0), Math.sin(turn ?? 0)];
    for (let i = 0; i < depth.length; i += 1) {
      if (depth[i] <= 0) continue;
      const [u, v] = [grid.u[i], grid.v[i]];
      if (decides(marks, u, v) !== mark) continue;
      const [size, [x, y]] = skin(face, u, v, depth[i]);
      const weight = size * grid.cell;
      const key =
        Math.floor(Math.floor(i / grid.columns) / side) * across + Math.floor((i % grid.columns) / side);
      if (!all.has(key)) all.set(key, { count: 0, u: 0, v: 0, weights: [0, 0, 0, 0] });
      const tile = all.get(key);
      tile.count += 1;
      tile.u += u;
      tile.v += v;
      const action = label[i] > 0 ? regions[label[i] - 1].action : '';
      const filled = action === 'fill' && depth[i] > allowance;
      const heavy = (filled ? filler : 0) + (action === 'leave' && coated ? coat : 0) - metal;
      if (filled) tile.weights[FILL] += weight;
      tile.weights[LOST] += weight;
      tile.weights[X] += weight * heavy * (cos * x - sin * y);
      tile.weights[Y] += weight * heavy * (sin * x + cos * y);
    }
  }
  return [...all.values()].map(({ count, u, v, weights }) => ({ u: u / count, v: v / count, weights }));
}

/** What the surface stands proud of the new face, where nothing is worn: metal it would need there, and the pull of making it up. */
function cutAtNothing(faces, mark, surface, { metal, filler }) {
  const cut = { volume: 0, x: 0, y: 0 };
  for (const { face, turn, grid, depth, marks } of faces) {
    const own = marks.find((one) => one.mark === mark);
    const [cos, sin] = [Math.cos(turn ?? 0), Math.sin(turn ?? 0)];
    for (let i = 0; i < depth.length; i += 1) {
      const [u, v] = [grid.u[i], grid.v[i]];
      if (depth[i] > 0 || !grid.on[i] || Number.isNaN(own.depthAt(u, v))) continue;
      const below = -surface.mean(u, v);
      if (below <= 0) continue;
      const [size, [x, y]] = skin(face, u, v, 0);
      const volume = below * size * grid.cell;
      cut.volume += volume;
      cut.x += volume * (filler - metal) * (cos * x - sin * y);
      cut.y += volume * (filler - metal) * (sin * x + cos * y);
    }
  }
  return cut;
}

/** The cut is an error by itself, whatever the readings say of the rest; a further reading takes nothing off it in the share it helps by. */
function withCut(known, { volume, x, y }) {
  const fillError = Math.hypot(known.fillError, volume);
  const more = fillError / known.fillError;
  const [xx, yy, xy] = known.net;
  return {
    ...known,
    fillError,
    lostError: Math.hypot(known.lostError, volume),
    net: [xx + x * x, yy + y * y, xy + x * y],
    next: { ...known.next, to: known.next.to * more, moves: known.next.moves * more },
  };
}

/** The mark whose readings say how deep it is at a point; null when something else does. */
function decides(marks, u, v) {
  let who = null;
  let d = 0;
  for (const one of marks) {
    const now = one.after(u, v, d);
    const { mark } = one;
    if (mark.kind === 'readings') {
      const own = one.depthAt(u, v);
      if (!Number.isNaN(own) && (own > d || mark.blend === 'replace')) who = mark;
    } else if (mark.blend === 'replace' ? !Number.isNaN(one.depthAt(u, v)) : now !== d) who = null;
    d = now;
  }
  return who;
}

/** Metal that a mm more of depth takes at depth d, as a share of the sample's area, and where. */
function skin(face, u, v, d) {
  if (face.layer === undefined) return [1 + face.growth(u, v) * d, face.place(u, v, d)];
  const { at, swell } = face.layer(u, v, d);
  return [swell, at];
}

function judged(surface, pieces, { grid }) {
  const kinds = [FILL, LOST, X, Y];
  const spots = pieces.map(({ u, v }) => surface.spot(u, v));
  const to = spots.map((spot) => surface.to(spot));
  // With the readings, and last the integral of 1: what the unknown mean is known by.
  const held = kinds.map((k) =>
    to[0].map((_, j) => pieces.reduce((sum, { weights }, i) => sum + weights[k] * to[i][j], 0)),
  );
  const prior = kinds.map(() => kinds.map(() => 0));
  for (let i = 0; i < spots.length; i += 1) {
    const sums = [0, 0, 0, 0];
    for (let j = 0; j < spots.length; j += 1) {
      const k = surface.covers(spots[i], spots[j]);
      for (const kind of kinds) sums[kind] += pieces[j].weights[kind] * k;
    }
    for (const a of kinds) for (const b of kinds) prior[a][b] += pieces[i].weights[a] * sums[b];
  }
  const left = (a, b) => surface.left(held[a], held[b], prior[a][b]);
  const variance = left(FILL, FILL);
  return {
    used: surface.read.length,
    fillError: Math.sqrt(variance),
    lostError: Math.sqrt(left(LOST, LOST)),
    net: [left(X, X), left(Y, Y), left(X, Y)],
    next: bestNext(surface, { spots, pieces, held: held[FILL], variance }, grid),
  };
}

/** The volume's error after one more reading where it helps most: places all over the face tried, tile by tile. */
function bestNext(surface, { spots, pieces, held, variance }, grid) {
  const tries = 40;
  const [up, across] = [grid.rows, grid.columns].map((squares) => Math.max(1, Math.round(squares / tries)));
  let best = { off: 0, at: null };
  for (let r = Math.floor(up / 2); r < grid.rows; r += up)
    for (let c = Math.floor(across / 2); c < grid.columns; c += across) {
      const i = r * grid.columns + c;
      if (!grid.on[i]) continue;
      const here = surface.spot(grid.u[i], grid.v[i]);
      const near = surface.to(here);
      let prior = 0;
      for (let j = 0; j < spots.length; j += 1)
        prior += pieces[j].weights[FILL] * surface.covers(here, spots[j]);
      const both = surface.left(near, held, prior);
      const alone = surface.left(near, near, surface.covers(here, here));
      const off = both ** 2 / (alone + surface.gauge ** 2);
      if (off > best.off)
        best = { off, at: grid.face.numbers(grid.u[i], grid.v[i]), error: Math.sqrt(alone) };
    }
  return { at: best.at, error: best.error, to: Math.sqrt(variance - best.off), moves: Math.sqrt(best.off) };
}
