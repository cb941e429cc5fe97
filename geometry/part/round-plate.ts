/**
 * A round wear plate, flat or dished. Running face z(r) = (r - R) tan a, bore wall r = Rb from the face to `thickness` below it.
 * Source: geometry definitions, "Wear plate"; tests/geometry/part/round-plate.test.ts.
 */
import type { Hole, RoundPlate } from '../job/job.ts';
import { type Mm, TURN, wrapTurn } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import { eachRow, type Face, type Grid, NO_TERMS, type Polynomial, type RowMetal } from './face.ts';
import { faceGrid } from './face-grid.ts';
import { holesNear } from './holes-near.ts';
import type { Part } from './part.ts';
import { columnMean } from './turned.ts';

/** Corners of the polygon that stands for a bolt hole in the grid: its area is 1e-5 short of the circle's. */
const HOLE_CORNERS = 720;

export function roundPlate(id: string, shape: RoundPlate, thickness: Mm, cell: Mm | null): Part {
  const face = runningFace(shape, thickness, cell);
  const bore = boreWall(shape, thickness, cell);
  const sin = Math.sin(shape.coneAngle);
  const cos = Math.cos(shape.coneAngle);
  const tan = Math.tan(shape.coneAngle);
  return {
    id,
    faces: [face, bore],
    corners: [
      {
        over: face,
        sides: [
          {
            face: bore,
            seenFrom: (u, v, depth) => {
              const r = u + depth * sin;
              return { u: depth * cos - (u - shape.boreRadius) * tan, v, depth: r - shape.boreRadius };
            },
          },
        ],
        besides: [],
      },
    ],
    rim: null,
    body: {
      kind: 'plate',
      thickness,
      height: (x, y) => (Math.hypot(x, y) - shape.outerRadius) * tan,
      loops: [
        { kind: 'circle', centre: [0, 0], radius: shape.outerRadius, role: 'edge' },
        { kind: 'circle', centre: [0, 0], radius: shape.boreRadius, role: 'bore' },
        ...shape.holes.map((hole) => ({
          kind: 'circle' as const,
          centre: [hole.x, hole.y] as const,
          radius: hole.radius,
          role: 'hole' as const,
        })),
      ],
    },
  };
}

function runningFace(shape: RoundPlate, thickness: Mm, cell: Mm | null): Face {
  const { outerRadius: R, boreRadius: Rb, coneAngle, holes } = shape;
  const grid = faceGrid({ u0: Rb, u1: R, v0: 0, v1: TURN, vScale: R, wraps: true }, cell);
  const sin = Math.sin(coneAngle);
  const cos = Math.cos(coneAngle);
  const tan = Math.tan(coneAngle);
  const holeArea = holes.reduce((sum, hole) => sum + Math.PI * hole.radius ** 2, 0);
  const cover = holes.length > 0 ? coverAround(grid, holes) : null;
  const inHole = inAnyOf(holes);
  return {
    name: 'face',
    coordinates: [
      { label: 'radius', isAngle: false, from: Rb, to: R },
      { label: 'angle', isAngle: true, from: 0, to: TURN },
    ],
    columnsAre: 'second',
    worked: 'by-column',
    grid,
    picture: { kind: 'polar', slant: cos },
    area: (Math.PI * (R * R - Rb * Rb) - holeArea) / cos,
    cover,
    cutCells: cutCellsOf(cover),
    wall: () => thickness,
    opposite: null,
    isWall: () => true,
    holds: (u, v) => u >= Rb && u <= R && !inHole(u * Math.cos(v), u * Math.sin(v)),
    position: (u, v, depth) => {
      const r = u + depth * sin;
      return [r * Math.cos(v), r * Math.sin(v), (u - R) * tan - depth * cos];
    },
    normal: (_u, v) => [-sin * Math.cos(v), -sin * Math.sin(v), cos],
    below: ([x, y, z]) => {
      const r = Math.hypot(x, y);
      const depth = ((r - R) * tan - z) * cos;
      return { depth, u: r - depth * sin, v: wrapTurn(Math.atan2(y, x)) };
    },
    metal: eachRow((row) =>
      coneMetal(grid.u0 + row * grid.du, grid.u0 + (row + 1) * grid.du, R, coneAngle, grid.dv),
    ),
    metalAt: noPlace,
    cellArea: (row) => (grid.dv * grid.du * (grid.u0 + (row + 0.5) * grid.du)) / cos,
    columnFirst: columnMean(grid, Math.cos),
    columnSecond: columnMean(grid, Math.sin),
  };
}

/**
 * Metal below the ring r1..r2 of a cone, an angle `turn` wide. At depth d the radius is r + d sin a and an area element of the
 * face has grown by (r + d sin a) / r; integrating powers of r and d gives the coefficients. Exact.
 */
function coneMetal(r1: Mm, r2: Mm, R: Mm, coneAngle: number, turn: number): RowMetal {
  const s = Math.sin(coneAngle);
  const c = Math.cos(coneAngle);
  const t = Math.tan(coneAngle);
  const k = turn / c;
  const i0 = k * (r2 - r1);
  const i1 = (k * (r2 ** 2 - r1 ** 2)) / 2;
  const i2 = (k * (r2 ** 3 - r1 ** 3)) / 3;
  const i3 = (k * (r2 ** 4 - r1 ** 4)) / 4;
  const radial: Polynomial = [i2, s * i1, (s * s * i0) / 3, 0];
  const radialZ: Polynomial = [
    t * (i3 - R * i2),
    s * t * (i2 - R * i1) - (c * i2) / 2,
    (s * s * t * (i1 - R * i0) - 2 * s * c * i1) / 3,
    (-s * s * c * i0) / 4,
  ];
  return {
    volume: { ...NO_TERMS, plain: [i1, (s * i0) / 2, 0, 0] },
    x: { ...NO_TERMS, first: radial },
    y: { ...NO_TERMS, second: radial },
    z: {
      ...NO_TERMS,
      plain: [t * (i2 - R * i1), (s * t * (i1 - R * i0) - c * i1) / 2, (-c * s * i0) / 3, 0],
    },
    xz: { ...NO_TERMS, first: radialZ },
    yz: { ...NO_TERMS, second: radialZ },
  };
}

function boreWall(shape: RoundPlate, thickness: Mm, cell: Mm | null): Face {
  const { outerRadius: R, boreRadius: Rb, coneAngle } = shape;
  const grid = faceGrid({ u0: 0, u1: thickness, v0: 0, v1: TURN, vScale: Rb, wraps: true }, cell);
  const top = (Rb - R) * Math.tan(coneAngle);
  const strip = grid.dv * grid.du;
  const volume: Polynomial = [strip * Rb, strip / 2, 0, 0];
  const radial: Polynomial = [strip * Rb * Rb, strip * Rb, strip / 3, 0];
  const scaled = (p: Polynomial, z: Mm): Polynomial => [p[0] * z, p[1] * z, p[2] * z, p[3] * z];
  return {
    name: 'bore',
    coordinates: [
      { label: 'angle', isAngle: true, from: 0, to: TURN },
      { label: 'below', isAngle: false, from: 0, to: thickness },
    ],
    columnsAre: 'first',
    worked: 'by-column',
    grid,
    picture: { kind: 'plane', columnScale: Rb },
    area: TURN * Rb * thickness,
    cover: null,
    cutCells: cutCellsOf(null),
    wall: () => R - Rb,
    opposite: null,
    isWall: () => true,
    holds: (u) => u >= 0 && u <= thickness,
    position: (u, v, depth) => [(Rb + depth) * Math.cos(v), (Rb + depth) * Math.sin(v), top - u],
    normal: (_u, v) => [-Math.cos(v), -Math.sin(v), 0],
    below: ([x, y, z]) => ({ depth: Math.hypot(x, y) - Rb, u: top - z, v: wrapTurn(Math.atan2(y, x)) }),
    metal: eachRow((row) => {
      const z = top - (row + 0.5) * grid.du;
      return {
        volume: { ...NO_TERMS, plain: volume },
        x: { ...NO_TERMS, first: radial },
        y: { ...NO_TERMS, second: radial },
        z: { ...NO_TERMS, plain: scaled(volume, z) },
        xz: { ...NO_TERMS, first: scaled(radial, z) },
        yz: { ...NO_TERMS, second: scaled(radial, z) },
      };
    }),
    metalAt: noPlace,
    cellArea: () => strip * Rb,
    columnFirst: columnMean(grid, Math.cos),
    columnSecond: columnMean(grid, Math.sin),
  };
}

function coverAround(grid: Grid, holes: readonly Hole[]): Float32Array {
  const cover = new Float32Array(grid.rows * grid.columns).fill(1);
  for (const hole of holes) {
    const centre = Math.atan2(hole.y, hole.x);
    const loop: [number, number][] = [];
    for (let i = 0; i < HOLE_CORNERS; i++) {
      const angle = (TURN * i) / HOLE_CORNERS;
      const x = hole.x + hole.radius * Math.cos(angle);
      const y = hole.y + hole.radius * Math.sin(angle);
      // Unrolled about the hole's own direction, so that a hole on the 0/360 line stays in one piece.
      const off = Math.atan2(
        y * Math.cos(centre) - x * Math.sin(centre),
        x * Math.cos(centre) + y * Math.sin(centre),
      );
      loop.push([Math.hypot(x, y), centre + off]);
    }
    addLoop(cover, grid, loop, -1);
  }
  return settleCover(cover);
}

function inAnyOf(holes: readonly Hole[]): (x: Mm, y: Mm) => boolean {
  const near = holesNear(
    holes.map(({ x, y, radius }) => ({ x0: x - radius, x1: x + radius, y0: y - radius, y1: y + radius })),
  );
  return (x, y) =>
    near(x, y).some((i) => (x - holes[i].x) ** 2 + (y - holes[i].y) ** 2 < holes[i].radius ** 2);
}

function noPlace(): never {
  throw new Error('roundPlate: every row has a law; ask metal(row)');
}
