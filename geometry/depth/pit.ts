import type { Pit } from '../job/job.ts';
import { type Face, toGridPoint } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { blockNear, chartAt, halfDiagonal } from './chart.ts';
import type { DepthMap } from './depth-map.ts';
import { pressImprint } from './press.ts';

/** Pits of a radius under this many cells are sampled inside every cell. */
const COARSE_PIT = 16;

/**
 * A pit: at distance x from its centre, R = diameter / 2, a cone d(1 - x/R), a bowl d(1 - (x/R)^2) or flat d. Writes into `map`.
 * Accuracy: the deepest point is exact, the volume holds to 0.05 % for diameters over two cells.
 * Source: job format, "Mark"; tests/geometry/depth/pit.test.ts
 */
export function applyPit(map: DepthMap, face: Face, pit: Pit): void {
  const { grid } = map;
  const [u0, v0] = toGridPoint(face, pit.at);
  const reach = halfDiagonal(face, grid.rows - 1);
  const block = blockNear(face, u0, v0, u0, v0, pit.radius + reach);
  if (block === null) return;
  const chart = chartAt(face, v0);
  const [x0, y0] = chart.place(u0, v0);
  const distance = (u: number, v: number): Mm => {
    const [x, y] = chart.place(u, v);
    return Math.hypot(x - x0, y - y0);
  };
  const coarse = pit.radius < COARSE_PIT * grid.du;
  pressImprint(map, face, {
    block,
    blend: pit.blend,
    peak: { u: u0, v: v0, depth: pit.depth },
    reaches: (row, column) => {
      const x = distance(grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv);
      if (x >= pit.radius + reach) return 'none';
      // Near the rim the surface breaks, near the middle a cone does, and there the deepest point must be met.
      return coarse || Math.abs(x - pit.radius) < reach || x < 2 * reach ? 'cut' : 'all';
    },
    depthAt: (u, v) => pitDepth(pit, distance(u, v)),
  });
}

/** Depth of a pit at distance x from its centre, mm; -1 outside its rim. */
function pitDepth(pit: Pick<Pit, 'form' | 'radius' | 'depth'>, x: Mm): Mm {
  if (x > pit.radius) return -1;
  const share = x / pit.radius;
  if (pit.form === 'flat') return pit.depth;
  return pit.form === 'cone' ? pit.depth * (1 - share) : pit.depth * (1 - share * share);
}
