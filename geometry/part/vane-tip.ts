import type { Mm } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import { eachRow, type Face, type Grid, type RowMetal, type Terms } from './face.ts';
import { faceGrid } from './face-grid.ts';
import { footprint } from './footprint.ts';
import { columnMiddles, overRow, type VaneFace } from './vane-face.ts';
import type { VaneShape } from './vane-shape.ts';

/**
 * The tip of a vane, which runs against the wear plate: u is the distance along, v the distance across; depth runs down from the
 * height. Across a row (C + n Np)(1 - k n) is of the second power in n, so n and n^2 are the two numbers of a column.
 * Source: geometry definitions, "Impeller"; tests/geometry/part/impeller.test.ts.
 */
export function vaneTip(shape: VaneShape, cell: Mm | null): VaneFace {
  const { length } = shape;
  const half = Math.max(shape.thickness(0), shape.thickness(length)) / 2;
  const grid = faceGrid({ u0: 0, u1: length, v0: -half, v1: half, vScale: 1, wraps: false }, cell);
  const cover = new Float32Array(grid.rows * grid.columns);
  addLoop(cover, grid, footprint(shape), 1);
  settleCover(cover);
  const middles = columnMiddles({ grid });
  const inVane: VaneFace['inVane'] = (u, v, depth) => ({ s: u, n: v, z: shape.height(u) - depth });
  const under: VaneFace['under'] = ({ s, n, z }) => ({ u: s, v: n, depth: shape.height(s) - z });
  let area = 0;
  // What bends out on one side bends in on the other.
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      area += cover[row * grid.columns + column] * grid.du * grid.dv;
    }
  }
  const metal = eachRow((row) => tipMetal(shape, grid, row));
  const face: Face = {
    name: `vane-${shape.number}/tip`,
    coordinates: [
      { label: 'along', isAngle: false, from: 0, to: length },
      { label: 'across', isAngle: false, from: -half, to: half },
    ],
    columnsAre: 'second',
    worked: 'by-row',
    grid,
    picture: { kind: 'plane', columnScale: 1 },
    area,
    cover,
    cutCells: cutCellsOf(cover),
    wall: shape.height,
    opposite: null,
    isWall: () => false,
    holds: (u, v) => u >= 0 && u <= length && Math.abs(v) <= shape.halfThickness(u),
    position: (u, v, depth) => shape.position(u, v, shape.height(u) - depth),
    normal: () => [0, 0, 1],
    below: (point) => under(shape.locate(point)),
    metal,
    metalAt: () => {
      throw new Error('vaneTip: every row has a law; ask metal(row)');
    },
    cellArea: (row, column) => {
      const law = metal(row)?.volume;
      return (law?.plain?.[0] ?? 0) + middles[column] * (law?.first?.[0] ?? 0);
    },
    columnFirst: middles,
    columnSecond: middles.map((n) => n * n + grid.dv ** 2 / 12),
  };
  return { face, inVane, under };
}

/** Metal under a row: powers of n, each a polynomial in the depth, of the volume, of x and of y, plain and times z. */
function tipMetal(shape: VaneShape, grid: Grid, row: number): RowMetal {
  const flat = [noTerms(), noTerms(), noTerms()];
  const high = [noTerms(), noTerms(), noTerms()];
  overRow(row * grid.du, (row + 1) * grid.du, (s, weight) => {
    const { x, y, nx, ny, k } = shape.camber(s);
    const height = shape.height(s);
    const share = weight * grid.dv;
    const inN = [
      [1, -k, 0],
      [x, nx - k * x, -k * nx],
      [y, ny - k * y, -k * ny],
    ];
    for (let q = 0; q < 3; q++) {
      for (let power = 0; power < 3; power++) {
        const amount = share * inN[q][power];
        flat[q][power][0] += amount;
        high[q][power][0] += amount * height;
        high[q][power][1] -= amount / 2;
      }
    }
  });
  const terms = ([plain, first, second]: InPowers): Terms => ({ plain, first, second });
  return {
    volume: terms(flat[0]),
    x: terms(flat[1]),
    y: terms(flat[2]),
    z: terms(high[0]),
    xz: terms(high[1]),
    yz: terms(high[2]),
  };
}

/** Times 1, n and n^2; each four powers of the depth. */
type InPowers = readonly [Four, Four, Four];
type Four = [number, number, number, number];

const noTerms = (): InPowers => [
  [0, 0, 0, 0],
  [0, 0, 0, 0],
  [0, 0, 0, 0],
];
