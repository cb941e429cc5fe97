/**
 * A wear plate given by its outline: a closed polygon and any number of hole polygons, flat.
 * Source: geometry definitions, "Wear plate"; tests/geometry/part/outline.test.ts.
 */
import type { OutlinePlate } from '../job/job.ts';
import type { FacePoint, Mm } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import { eachRow, type Face, NO_MOMENT } from './face.ts';
import { faceGrid } from './face-grid.ts';
import type { Part } from './part.ts';
import { polygonArea, polygonHolds } from './polygon.ts';

export function outlinePlate(id: string, shape: OutlinePlate, thickness: Mm, cell: Mm | null): Part {
  return {
    id,
    faces: [outlineFace(shape, thickness, cell)],
    corners: [],
    body: {
      thickness,
      height: () => 0,
      loops: [
        { kind: 'polygon', corners: shape.edge, role: 'edge' },
        ...shape.holes.map((corners) => ({ kind: 'polygon' as const, corners, role: 'hole' as const })),
      ],
    },
  };
}

function outlineFace(shape: OutlinePlate, thickness: Mm, cell: Mm | null): Face {
  const xs = shape.edge.map(([x]) => x);
  const ys = shape.edge.map(([, y]) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const grid = faceGrid({ u0: y0, u1: y1, v0: x0, v1: x1, vScale: 1, wraps: false }, cell);
  const cover = new Float32Array(grid.rows * grid.columns);
  const inGrid = (loop: readonly FacePoint[]) => loop.map(([x, y]) => [y, x] as const);
  addLoop(cover, grid, inGrid(shape.edge), 1);
  for (const hole of shape.holes) addLoop(cover, grid, inGrid(hole), -1);
  settleCover(cover);
  const size = grid.du * grid.dv;
  return {
    name: 'face',
    coordinates: [
      { label: 'x', isAngle: false, from: x0, to: x1 },
      { label: 'y', isAngle: false, from: y0, to: y1 },
    ],
    columnsAre: 'first',
    grid,
    picture: { kind: 'plane', columnScale: 1 },
    area:
      Math.abs(polygonArea(shape.edge)) -
      shape.holes.reduce((sum, hole) => sum + Math.abs(polygonArea(hole)), 0),
    cover,
    cutCells: cutCellsOf(cover),
    wall: () => thickness,
    holds: (u, v) => polygonHolds(shape.edge, v, u) && !shape.holes.some((hole) => polygonHolds(hole, v, u)),
    position: (u, v, depth) => [v, u, -depth],
    normal: () => [0, 0, 1],
    metal: eachRow((row) => {
      const y = grid.u0 + (row + 0.5) * grid.du;
      return {
        volume: [size, 0, 0, 0],
        x: { ...NO_MOMENT, first: [size, 0, 0, 0] },
        y: { ...NO_MOMENT, plain: [y * size, 0, 0, 0] },
        z: { ...NO_MOMENT, plain: [0, -size / 2, 0, 0] },
        xz: { ...NO_MOMENT, first: [0, -size / 2, 0, 0] },
        yz: { ...NO_MOMENT, plain: [0, (-y * size) / 2, 0, 0] },
      };
    }),
    columnFirst: Float64Array.from({ length: grid.columns }, (_, j) => grid.v0 + (j + 0.5) * grid.dv),
    columnSecond: new Float64Array(grid.columns),
  };
}
