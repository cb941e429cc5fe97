import type { Pit } from '../job/job.ts';
import { type Face, isCutCell, toGridPoint } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { blended } from './blend.ts';
import { blockNear, type CellBlock, chartAt, halfDiagonal, stepAlong } from './chart.ts';
import type { DepthMap } from './depth-map.ts';
import { type Press, pressCut, pressPeak } from './press.ts';

/** Pits of a radius under this many cells are sampled inside every cell. */
const COARSE_PIT = 16;
/** Rounding of a distance worked out in two ways, as a share of it. */
const DUST = 1e-9;

/**
 * A pit: at distance x from its centre, R = diameter / 2, a cone d(1 - x/R), a bowl d(1 - (x/R)^2) or flat d. Writes into `map`.
 * @returns  false when it touches no cell of the face
 * Accuracy: the deepest point is exact, the volume holds to 0.05 % for diameters over two cells.
 * Source: job format, "Mark"; tests/geometry/depth/pit.test.ts
 */
export function applyPit(map: DepthMap, face: Face, pit: Pit): boolean {
  const { grid } = map;
  const { cover } = face;
  const { blend, radius } = pit;
  const [u0, v0] = toGridPoint(face, pit.at);
  const reach = halfDiagonal(face, grid.rows - 1);
  const block = blockNear(face, u0, v0, u0, v0, radius + reach);
  if (block === null) return false;
  const chart = chartAt(face, v0);
  const [x0, y0] = chart.place(u0, v0);
  const mark: Press = {
    blend,
    depthAt: (u, v) => {
      const [x, y] = chart.place(u, v);
      return pitDepth(pit, Math.hypot(x - x0, y - y0));
    },
  };
  const coarse = radius < COARSE_PIT * grid.du;
  const beyond = (radius + reach) ** 2 * (1 + DUST);
  const { across, up, along, side } = centresOf(face, block, v0);
  let touches = false;
  for (let row = block.row0; row <= block.row1; row++) {
    const wall = face.wall(grid.u0 + (row + 0.5) * grid.du);
    const [a, b] = [across[row - block.row0], up[row - block.row0]];
    for (let k = 0; k < block.columns; k++) {
      const x = a * along[k] - x0;
      const y = b * side[k] - y0;
      if (x * x + y * y > beyond) continue;
      const distance = Math.hypot(x, y);
      if (distance >= radius + reach) continue;
      const column: number = (block.column0 + k) % grid.columns;
      const cell = row * grid.columns + column;
      if (cover !== null && cover[cell] === 0) continue;
      touches = true;
      // Near the rim the surface breaks, near the middle a cone does, and there the deepest point must be met.
      const isCut = coarse || Math.abs(distance - radius) < reach || distance < 2 * reach;
      if (isCut || map.slot[cell] >= 0 || isCutCell(face, cell)) {
        pressCut(map, face, { row, column, count: 1 }, mark, wall);
      } else {
        map.depth[cell] = blended(map.depth[cell], pitDepth(pit, distance), blend, wall);
      }
    }
  }
  pressPeak(map, face, mark, { u: u0, v: v0, depth: pit.depth });
  return touches;
}

/** Depth of a pit at distance x from its centre, mm; -1 outside its rim. */
function pitDepth(pit: Pick<Pit, 'form' | 'radius' | 'depth'>, x: Mm): Mm {
  if (x > pit.radius) return -1;
  const share = x / pit.radius;
  if (pit.form === 'flat') return pit.depth;
  return pit.form === 'cone' ? pit.depth * (1 - share) : pit.depth * (1 - share * share);
}

/** Places of a block's cell centres in the chart along v0: x = across[row] along[column], y = up[row] side[column]. */
interface Centres {
  readonly across: Float64Array;
  readonly up: Float64Array;
  readonly along: Float64Array;
  readonly side: Float64Array;
}

function centresOf(face: Face, block: CellBlock, v0: number): Centres {
  const { grid, picture } = face;
  const isPolar = picture.kind === 'polar';
  const rows = block.row1 - block.row0 + 1;
  const us = Float64Array.from({ length: rows }, (_, i) => grid.u0 + (block.row0 + i + 0.5) * grid.du);
  const steps = Float64Array.from({ length: block.columns }, (_, k) => {
    const column = (block.column0 + k) % grid.columns;
    const step = stepAlong(face, v0, grid.v0 + (column + 0.5) * grid.dv);
    return step * (isPolar ? picture.slant : picture.columnScale);
  });
  if (!isPolar) {
    const ones = (count: number) => new Float64Array(count).fill(1);
    return { across: ones(rows), up: us, along: steps, side: ones(block.columns) };
  }
  const lengths = us.map((u) => u / picture.slant);
  return { across: lengths, up: lengths, along: steps.map(Math.cos), side: steps.map(Math.sin) };
}
