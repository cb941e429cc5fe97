/**
 * A wear plate given by its outline: a closed polygon and any number of hole polygons, flat.
 * Source: geometry definitions, "Wear plate"; tests/geometry/part/outline.test.ts.
 */
import type { OutlinePlate } from '../job/job.ts';
import type { FacePoint, Mm } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import { eachRow, type Face, NO_TERMS } from './face.ts';
import { faceGrid } from './face-grid.ts';
import { boxOf, holesNear } from './holes-near.ts';
import type { Part } from './part.ts';
import { polygonArea } from './polygon.ts';
import { type PolygonIndex, polygonIndex } from './polygon-index.ts';

export function outlinePlate(id: string, shape: OutlinePlate, thickness: Mm, cell: Mm | null): Part {
  return {
    id,
    faces: [outlineFace(shape, thickness, cell)],
    corners: [],
    rim: null,
    body: {
      kind: 'plate',
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
    worked: 'by-column',
    grid,
    picture: { kind: 'plane', columnScale: 1 },
    area:
      Math.abs(polygonArea(shape.edge)) -
      shape.holes.reduce((sum, hole) => sum + Math.abs(polygonArea(hole)), 0),
    cover,
    cutCells: cutCellsOf(cover),
    wall: () => thickness,
    opposite: null,
    isWall: () => true,
    holds: heldBy(shape),
    position: (u, v, depth) => [v, u, -depth],
    normal: () => [0, 0, 1],
    below: ([x, y, z]) => ({ depth: -z, u: y, v: x }),
    metal: eachRow((row) => {
      const y = grid.u0 + (row + 0.5) * grid.du;
      return {
        volume: { ...NO_TERMS, plain: [size, 0, 0, 0] },
        x: { ...NO_TERMS, first: [size, 0, 0, 0] },
        y: { ...NO_TERMS, plain: [y * size, 0, 0, 0] },
        z: { ...NO_TERMS, plain: [0, -size / 2, 0, 0] },
        xz: { ...NO_TERMS, first: [0, -size / 2, 0, 0] },
        yz: { ...NO_TERMS, plain: [0, (-y * size) / 2, 0, 0] },
      };
    }),
    metalAt: () => {
      throw new Error('outlinePlate: every row has a law; ask metal(row)');
    },
    cellArea: () => size,
    columnFirst: Float64Array.from({ length: grid.columns }, (_, j) => grid.v0 + (j + 0.5) * grid.dv),
    columnSecond: new Float64Array(grid.columns),
  };
}

/** Whether a place lies inside the edge and in no hole. Each polygon is made ready when it is first asked. */
function heldBy({ edge, holes }: OutlinePlate): Face['holds'] {
  const near = holesNear(holes.map(boxOf));
  const made: PolygonIndex[] = [];
  const hole = (i: number): PolygonIndex => {
    made[i] ??= polygonIndex(holes[i]);
    return made[i];
  };
  let outer: PolygonIndex | null = null;
  return (u, v) => {
    outer ??= polygonIndex(edge);
    return outer.holds(v, u) && !near(v, u).some((i) => hole(i).holds(v, u));
  };
}
