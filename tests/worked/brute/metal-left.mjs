/** The least metal left behind each face of an impeller, mm: by trying points all over it and going on from the thinnest. */
import { uphill } from './regions.mjs';

const ACROSS = [0.05, 0.2, 0.35, 0.5, 0.65, 0.8, 0.95];

/**
 * Writes `remaining` into each worn face: what is left between both faces of a vane or of the shroud, under the tip, and along the vane
 * behind its two edges. `remainingAlone` takes the face by itself. A wall that tip and edges have eaten all the way across is no wall.
 */
export function metalLeft(vane, onVanes, onShroud, part) {
  for (const [pressure, suction, tip, leading, trailing] of onVanes) {
    const both = (s, z) => vane.thickness(s) - pressure.depthOf(s, z) - suction.depthOf(s, z);
    const ends = [tip, leading, trailing].filter((one) => one.most > 0);
    const eaten = (s, n, z) =>
      ends.some((one) => {
        const [u, v, t] = one.face.under(s, n, z);
        return t < one.depthOf(u, v);
      });
    const stands = (s, z) => {
      const half = vane.thickness(s) / 2;
      const [low, high] = [suction.depthOf(s, z) - half, half - pressure.depthOf(s, z)];
      // Worn through, it stands as long as the whole thickness is not gone from the end as well.
      const [from, to] = low < high ? [low, high] : [-half, half];
      return ACROSS.some((share) => !eaten(s, from + share * (to - from), z));
    };
    for (const one of [pressure, suction]) {
      const place = (s, z) => s >= vane.sideStart && one.face.inside(s, z) && stands(s, z);
      one.remaining = least(one, both, place);
      one.remainingAlone = least(one, (s, z) => vane.thickness(s) - one.depthOf(s, z), place);
    }
    const alone = [
      [tip, (s, n) => vane.height(s) - tip.depthOf(s, n)],
      [leading, (z, n) => vane.length - vane.nose(n) - leading.depthOf(z, n)],
      [trailing, (z, n) => vane.length - vane.nose(n) - trailing.depthOf(z, n)],
    ];
    for (const [one, left] of alone) one.remaining = one.remainingAlone = least(one, left);
  }
  if (onShroud.length === 0) return;
  const [front, back] = onShroud;
  const both = (x, y) => part.shroudThickness - front.depthOf(x, y) - back.depthOf(x, y);
  for (const one of onShroud) {
    one.remaining = least(one, both);
    one.remainingAlone = least(one, (x, y) => part.shroudThickness - one.depthOf(x, y));
  }
}

function least({ face, regions }, left, inside = face.inside) {
  const [u0, u1, v0, v1] = face.bounds;
  const tries = 300;
  let start = [u0, v0];
  let best = Infinity;
  for (let i = 0; i <= tries; i += 1)
    for (let j = 0; j <= tries; j += 1) {
      const [u, v] = [u0 + ((u1 - u0) * i) / tries, v0 + ((v1 - v0) * j) / tries];
      if (!inside(u, v)) continue;
      const here = left(u, v);
      if (here < best) {
        best = here;
        start = [u, v];
      }
    }
  const starts = [start, ...regions.map((r) => r.at)];
  return Math.max(0, -uphill({ inside }, (u, v) => -left(u, v), starts, 1)[2]);
}
