/**
 * The disc behind the vanes: vane side at z = 0, back at z = -thickness, and its rim. The vanes' footprints are no part of the front.
 * Source: geometry definitions, "Impeller"; tests/geometry/part/impeller.test.ts.
 */
import type { Impeller } from '../job/job.ts';
import { type Mm, TURN, wrapTurn } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import { eachRow, type Face, type Grid, NO_TERMS, type Polynomial, type RowMetal } from './face.ts';
import { faceGrid } from './face-grid.ts';
import { footprint } from './footprint.ts';
import { columnMean } from './turned.ts';
import { underVanes } from './under-vanes.ts';
import type { VaneShape } from './vane-shape.ts';

/** The vane side of the shroud between hub and rim, outside the vanes; depth runs along -z. */
export function shroudFront(shape: Impeller, vanes: readonly VaneShape[], cell: Mm | null): Face {
  const grid = annulus(shape, cell);
  const cover = new Float32Array(grid.rows * grid.columns).fill(1);
  for (const vane of vanes) addLoop(cover, grid, unrolled(vane), -1);
  settleCover(cover);
  const isUnder = underVanes(vanes);
  let area = 0;
  for (let cellAt = 0; cellAt < cover.length; cellAt++) {
    area += cover[cellAt] * ringArea(grid, Math.floor(cellAt / grid.columns));
  }
  return {
    ...flatRing('shroud/front', shape, grid, 0, -1),
    area,
    cover,
    cutCells: cutCellsOf(cover),
    holds: (u, v) =>
      u >= shape.hubRadius && u <= shape.outerRadius && !isUnder(u * Math.cos(v), u * Math.sin(v)),
  };
}

/** The whole back of the shroud; depth runs along +z. */
export function shroudBack(shape: Impeller, cell: Mm | null): Face {
  return flatRing('shroud/back', shape, annulus(shape, cell), -shape.shroudThickness, 1);
}

/** The rim of the shroud: first the angle, second the distance below the vane side; depth runs inward. Nothing of it wears or is coated. */
export function shroudRim(shape: Impeller, cell: Mm | null): Face {
  const { outerRadius: R, shroudThickness } = shape;
  const grid = faceGrid({ u0: 0, u1: shroudThickness, v0: 0, v1: TURN, vScale: R, wraps: true }, cell);
  const strip = grid.dv * grid.du;
  const volume: Polynomial = [strip * R, -strip / 2, 0, 0];
  const radial: Polynomial = [strip * R * R, -strip * R, strip / 3, 0];
  return {
    name: 'shroud/rim',
    coordinates: [
      { label: 'angle', isAngle: true, from: 0, to: TURN },
      { label: 'below', isAngle: false, from: 0, to: shroudThickness },
    ],
    columnsAre: 'first',
    worked: 'by-column',
    grid,
    picture: { kind: 'plane', columnScale: R },
    area: TURN * R * shroudThickness,
    cover: null,
    cutCells: cutCellsOf(null),
    wall: () => R - shape.hubRadius,
    opposite: null,
    isWall: () => true,
    holds: (u) => u >= 0 && u <= shroudThickness,
    position: (u, v, depth) => [(R - depth) * Math.cos(v), (R - depth) * Math.sin(v), -u],
    normal: (_u, v) => [Math.cos(v), Math.sin(v), 0],
    below: ([x, y, z]) => ({ depth: R - Math.hypot(x, y), u: -z, v: wrapTurn(Math.atan2(y, x)) }),
    metal: eachRow((row) => {
      const z = -(row + 0.5) * grid.du;
      const scaled = (p: Polynomial): Polynomial => [p[0] * z, p[1] * z, p[2] * z, p[3] * z];
      return {
        volume: { ...NO_TERMS, plain: volume },
        x: { ...NO_TERMS, first: radial },
        y: { ...NO_TERMS, second: radial },
        z: { ...NO_TERMS, plain: scaled(volume) },
        xz: { ...NO_TERMS, first: scaled(radial) },
        yz: { ...NO_TERMS, second: scaled(radial) },
      };
    }),
    metalAt: noPlace,
    cellArea: () => strip * R,
    columnFirst: columnMean(grid, Math.cos),
    columnSecond: columnMean(grid, Math.sin),
  };
}

function annulus({ hubRadius, outerRadius }: Impeller, cell: Mm | null): Grid {
  return faceGrid(
    { u0: hubRadius, u1: outerRadius, v0: 0, v1: TURN, vScale: outerRadius, wraps: true },
    cell,
  );
}

/** A flat ring at height `level` whose depth runs along `inward` z. */
function flatRing(name: string, shape: Impeller, grid: Grid, level: Mm, inward: 1 | -1): Face {
  const { outerRadius, hubRadius, shroudThickness } = shape;
  return {
    name,
    coordinates: [
      { label: 'radius', isAngle: false, from: hubRadius, to: outerRadius },
      { label: 'angle', isAngle: true, from: 0, to: TURN },
    ],
    columnsAre: 'second',
    worked: 'by-column',
    grid,
    picture: { kind: 'polar', slant: 1 },
    area: Math.PI * (outerRadius ** 2 - hubRadius ** 2),
    cover: null,
    cutCells: cutCellsOf(null),
    wall: () => shroudThickness,
    opposite: name === 'shroud/front' ? 'shroud/back' : 'shroud/front',
    isWall: () => true,
    holds: (u) => u >= hubRadius && u <= outerRadius,
    position: (u, v, depth) => [u * Math.cos(v), u * Math.sin(v), level + inward * depth],
    normal: () => [0, 0, -inward],
    below: ([x, y, z]) => ({
      depth: inward * (z - level),
      u: Math.hypot(x, y),
      v: wrapTurn(Math.atan2(y, x)),
    }),
    metal: eachRow((row) => ringMetal(grid, row, level, inward)),
    metalAt: noPlace,
    cellArea: (row) => ringArea(grid, row),
    columnFirst: columnMean(grid, Math.cos),
    columnSecond: columnMean(grid, Math.sin),
  };
}

function ringArea({ u0, du, dv }: Grid, row: number): number {
  const middle = u0 + (row + 0.5) * du;
  return dv * du * middle;
}

/** Metal under a piece of a flat ring: area times depth; z runs from the level inward. Exact. */
function ringMetal(grid: Grid, row: number, level: Mm, inward: 1 | -1): RowMetal {
  const r1 = grid.u0 + row * grid.du;
  const r2 = r1 + grid.du;
  const area = ringArea(grid, row);
  const radial = (grid.dv * (r2 ** 3 - r1 ** 3)) / 3;
  const flat = (a: number): Polynomial => [a, 0, 0, 0];
  const high = (a: number): Polynomial => [a * level, (a * inward) / 2, 0, 0];
  return {
    volume: { ...NO_TERMS, plain: flat(area) },
    x: { ...NO_TERMS, first: flat(radial) },
    y: { ...NO_TERMS, second: flat(radial) },
    z: { ...NO_TERMS, plain: high(area) },
    xz: { ...NO_TERMS, first: high(radial) },
    yz: { ...NO_TERMS, second: high(radial) },
  };
}

/** A footprint as radius and angle, its angles counted on past the 0/360 line. */
function unrolled(vane: VaneShape): readonly (readonly [number, number])[] {
  let turned = vane.angle;
  return footprint(vane).map(([s, n]) => {
    const [x, y] = vane.position(s, n, 0);
    const ahead = Math.atan2(y, x) - turned;
    turned += ahead - TURN * Math.round(ahead / TURN);
    return [Math.hypot(x, y), turned] as const;
  });
}

function noPlace(): never {
  throw new Error('shroud: every row has a law; ask metal(row)');
}
