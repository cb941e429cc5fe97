import type { Mm, Mm2 } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import type { Face, Grid } from './face.ts';
import { faceGrid } from './face-grid.ts';
import { addMetal, type Metal, NO_METAL } from './metal.ts';
import { columnMiddles, type VaneFace } from './vane-face.ts';
import { tapered, type VaneShape } from './vane-shape.ts';

/** Places each way in a cell that the taper of the vane runs through. */
const PLACES = 6;
/** Points along the top of a rounded leading edge. */
const TOP_POINTS = 48;

/**
 * An edge of a vane: u is the height, v the distance across. Depth runs along the camber, from the nose on (leading edge) or back
 * from the outer end (trailing edge), as far as there is metal at that height and distance across: vanes taper.
 * Source: geometry definitions, "Impeller"; tests/geometry/part/impeller.test.ts.
 */
export function vaneEdge(shape: VaneShape, edge: 'leading' | 'trailing', cell: Mm | null): VaneFace {
  const { length } = shape;
  const leads = edge === 'leading';
  const half = leads ? shape.noseThickness / 2 : shape.thickness(length) / 2;
  const isRound = leads && shape.nose === 'round';
  /** Where the edge stands. */
  const start = (n: Mm): Mm => (leads ? shape.noseAt(Math.max(-half, Math.min(half, n))) : length);
  const top = Math.max(shape.height(start(0)), shape.height(start(half)));
  const grid = faceGrid({ u0: 0, u1: top, v0: -half, v1: half, vScale: 1, wraps: false }, cell);
  const cover = isRound && shape.height(0) !== shape.height(half) ? coverUnder(shape, grid, half) : null;
  const middles = columnMiddles({ grid });
  // Along the round of a nose a column is as wide as its arc.
  const arc = (n: Mm): Mm => (isRound ? half * Math.asin(Math.max(-1, Math.min(1, n / half))) : n);
  const widths = middles.map((n) => (arc(n + grid.dv / 2) - arc(n - grid.dv / 2)) * bent(shape, start(n), n));
  const cellArea = (_row: number, column: number): Mm2 => grid.du * widths[column];
  let area = 0;
  for (let cell = 0; cell < grid.rows * grid.columns; cell++) {
    area += (cover === null ? 1 : cover[cell]) * cellArea(0, cell % grid.columns);
  }
  const line = camberSums(shape);
  const inVane: VaneFace['inVane'] = (u, v, depth) => ({
    s: leads ? start(v) + depth : length - depth,
    n: v,
    z: u,
  });
  const under: VaneFace['under'] = ({ s, n, z }) => ({
    u: z,
    v: n,
    depth: leads ? s - start(n) : length - s,
  });
  const face: Face = {
    name: `vane-${shape.number}/${edge}-edge`,
    coordinates: [
      { label: 'height', isAngle: false, from: 0, to: top },
      { label: 'across', isAngle: false, from: -half, to: half },
    ],
    columnsAre: 'second',
    worked: 'by-row',
    grid,
    picture: { kind: 'plane', columnScale: 1 },
    area,
    cover,
    cutCells: cutCellsOf(cover),
    wall: () => length,
    opposite: null,
    isWall: () => false,
    holds: (u, v) => Math.abs(v) <= half && u >= 0 && u <= shape.height(start(v)),
    position: (u, v, depth) => {
      const { s, n, z } = inVane(u, v, depth);
      return shape.position(s, n, z);
    },
    normal: (_u, v) => {
      const { tx, ty, nx, ny } = shape.camber(start(v));
      if (!leads) return [tx, ty, 0];
      const across = isRound ? Math.max(-1, Math.min(1, v / half)) : 0;
      const back = -Math.sqrt(1 - across * across);
      return [back * tx + across * nx, back * ty + across * ny, 0];
    },
    below: (point) => under(shape.locate(point)),
    metal: () => null,
    metalAt: (u, v, from, to) => {
      const at = (z: Mm, n: Mm, size: Mm2): Metal => {
        const [low, high] = metalAlong(shape, z, n);
        const [a, b] = leads ? [start(n) + from, start(n) + to] : [length - to, length - from];
        return line.between(Math.max(a, low), Math.min(b, high), n, z, size);
      };
      const inner = leads ? start(half) + to : length - to;
      const isWhole =
        Math.abs(v) + grid.dv / 2 <= Math.min(shape.thickness(inner), shape.thickness(start(0))) / 2 &&
        u + grid.du / 2 <= Math.min(shape.height(inner), shape.height(start(0)));
      if (isWhole) return at(u, v, grid.du * grid.dv);
      // The taper runs through the cell: place by place.
      const sum = { ...NO_METAL };
      for (let i = 0; i < PLACES; i++) {
        const z = u + ((i + 0.5) / PLACES - 0.5) * grid.du;
        for (let j = 0; j < PLACES; j++) {
          const n = v + ((j + 0.5) / PLACES - 0.5) * grid.dv;
          addMetal(sum, at(z, n, (grid.du * grid.dv) / PLACES ** 2), 1);
        }
      }
      return sum;
    },
    cellArea,
    columnFirst: middles,
    columnSecond: new Float64Array(grid.columns),
  };
  return { face, inVane, under };
}

/** (1 - k n): how much wider the vane is at n than at its camber. */
function bent(shape: VaneShape, s: Mm, n: Mm): number {
  return 1 - shape.camber(s).k * n;
}

/** From where to where along s there is metal at a height and a distance across; height and thickness taper one way each. */
function metalAlong(shape: VaneShape, z: Mm, n: Mm): readonly [from: Mm, to: Mm] {
  const higher = shape.reaches(z);
  const thicker = tapered(2 * Math.abs(n), shape.thickness(0), shape.thickness(shape.length), shape.length);
  const nose = Math.abs(n) <= shape.noseThickness / 2 ? shape.noseAt(n) : 0;
  return [Math.max(nose, higher[0], thicker[0]), Math.min(higher[1], thicker[1])];
}

/** What is added up along the camber, ready to be taken between any two places. */
interface CamberSums {
  between(from: Mm, to: Mm, n: Mm, z: Mm, size: Mm2): Metal;
}

const PIECES = 2048;
const sumsByShape = new WeakMap<VaneShape, CamberSums>();

/** Running sums of 1 - k n and of (C + n Np)(1 - k n) along s, kept as powers of n; linear between 2048 places. */
function camberSums(shape: VaneShape): CamberSums {
  const known = sumsByShape.get(shape);
  if (known) return known;
  const step = shape.length / PIECES;
  const WAYS = 8;
  let table: Float64Array | null = null;
  const made = (): Float64Array => {
    const sums = new Float64Array((PIECES + 1) * WAYS);
    for (let i = 0; i < PIECES; i++) {
      const { x, y, nx, ny, k } = shape.camber((i + 0.5) * step);
      const slopes = [1, -k, x, nx - k * x, -k * nx, y, ny - k * y, -k * ny];
      for (let w = 0; w < WAYS; w++) sums[(i + 1) * WAYS + w] = sums[i * WAYS + w] + step * slopes[w];
    }
    return sums;
  };
  const sums: CamberSums = {
    between(from, to, n, z, size) {
      if (to <= from) return NO_METAL;
      table ??= made();
      const sum = table;
      const i = Math.max(0, Math.min(PIECES - 1, Math.floor(from / step)));
      const j = Math.max(0, Math.min(PIECES - 1, Math.floor(to / step)));
      const [a, b] = [i * WAYS, j * WAYS];
      const [p, q] = [from / step - i, to / step - j];
      const way = (w: number): number =>
        sum[b + w] + q * (sum[b + WAYS + w] - sum[b + w]) - sum[a + w] - p * (sum[a + WAYS + w] - sum[a + w]);
      const volume = size * (way(0) + n * way(1));
      const x = size * (way(2) + n * (way(3) + n * way(4)));
      const y = size * (way(5) + n * (way(6) + n * way(7)));
      return { volume, x, y, z: volume * z, xz: x * z, yz: y * z };
    },
  };
  sumsByShape.set(shape, sums);
  return sums;
}

/** Shares of the cells under the top of a rounded leading edge, which slopes with the vane. */
function coverUnder(shape: VaneShape, grid: Grid, half: Mm): Float32Array {
  const cover = new Float32Array(grid.rows * grid.columns);
  const top = Array.from({ length: TOP_POINTS + 1 }, (_, i) => {
    const n = -half + (2 * half * i) / TOP_POINTS;
    return [shape.height(shape.noseAt(n)), n] as const;
  });
  addLoop(cover, grid, [[0, half], [0, -half], ...top], 1);
  return settleCover(cover);
}
