/** Damage regions by flood fill over the samples of a face. */

export const DAMAGE = 0.05;

/** Region number of every sample, 0 where there is no damage; neighbours share a side of their squares. */
export function flood(grid, depth) {
  const label = new Int32Array(depth.length);
  const { columns, rows } = grid;
  let count = 0;
  const stack = [];
  for (let start = 0; start < depth.length; start += 1) {
    if (label[start] !== 0 || depth[start] <= DAMAGE) continue;
    count += 1;
    label[start] = count;
    stack.push(start);
    while (stack.length > 0) {
      const i = stack.pop();
      const [c, r] = [i % columns, Math.floor(i / columns)];
      for (const [dc, dr] of [
        [1, 0],
        [-1, 0],
        [0, 1],
        [0, -1],
      ]) {
        const cc = grid.wraps ? (c + dc + columns) % columns : c + dc;
        const rr = r + dr;
        if (cc < 0 || cc >= columns || rr < 0 || rr >= rows) continue;
        const j = rr * columns + cc;
        if (label[j] === 0 && depth[j] > DAMAGE) {
          label[j] = count;
          stack.push(j);
        }
      }
    }
  }
  return joinSpecks(grid, label, count);
}

/**
 * Where the edge of a region is shallow, sample points scattered about 0.05 mm leave a few squares standing alone beside it: anything of
 * fewer than ten squares belongs to what lies within two squares of it, if anything does.
 */
function joinSpecks(grid, label, count) {
  const members = Array.from({ length: count + 1 }, () => []);
  for (let i = 0; i < label.length; i += 1)
    if (label[i] > 0 && members[label[i]].length < 10) members[label[i]].push(i);
  let kept = 0;
  const number = new Int32Array(count + 1);
  for (let k = 1; k <= count; k += 1) if (members[k].length === 10) number[k] = ++kept;
  for (let k = 1; k <= count; k += 1)
    if (members[k].length < 10) {
      const beside = members[k].flatMap((i) => around(grid, i, 2)).find((j) => number[label[j]] > 0);
      number[k] = beside === undefined ? ++kept : number[label[beside]];
    }
  return { label: label.map((old) => number[old]), count: kept };
}

function around(grid, i, far) {
  const [c, r] = [i % grid.columns, Math.floor(i / grid.columns)];
  const found = [];
  for (let rr = Math.max(0, r - far); rr <= Math.min(grid.rows - 1, r + far); rr += 1)
    for (let k = c - far; k <= c + far; k += 1) {
      const cc = grid.wraps ? (k + grid.columns) % grid.columns : k;
      if (cc >= 0 && cc < grid.columns) found.push(rr * grid.columns + cc);
    }
  return found;
}

/** Square holding (u, v), or -1 off the grid. */
export function squareAt(grid, u, v) {
  const c = Math.floor((u - grid.u0) / grid.du);
  const r = Math.floor((v - grid.v0) / grid.dv);
  const cc = grid.wraps ? (c + grid.columns) % grid.columns : c;
  return cc < 0 || cc >= grid.columns || r < 0 || r >= grid.rows ? -1 : r * grid.columns + cc;
}

/** Region at a damaged point: that of its square, or of the nearest one where an edge of the face runs through the square. */
export function labelNear(grid, label, u, v) {
  for (const far of [0, 1, 2])
    for (let a = -far; a <= far; a += 1)
      for (let b = -far; b <= far; b += 1) {
        const square = squareAt(grid, u + a * grid.du, v + b * grid.dv);
        if (square >= 0 && label[square] > 0) return label[square];
      }
  return 0;
}
