import type { Mm, Mm2 } from '../units.ts';
import { addLoop, cutCellsOf, settleCover } from './cover.ts';
import { eachRow, type Face, type Grid, NO_TERMS, type Polynomial } from './face.ts';
import { faceGrid } from './face-grid.ts';
import { lastOf } from './last-of.ts';
import { type Metal, NO_METAL } from './metal.ts';
import { overRow, type VaneFace } from './vane-face.ts';
import type { VaneShape } from './vane-shape.ts';

/**
 * A side of a vane: u is the distance along, v the height; depth runs from n = +-t/2 inward.
 * The metal under a row is exact to the third power of depth: (C + n Np)(1 - k n) dn with n = +-(t/2 - d).
 * A round nose takes the corner of the side away: rows before its half thickness have no law and are answered place by place.
 * Source: geometry definitions, "Impeller"; tests/geometry/part/impeller.test.ts.
 */
export function vaneSide(shape: VaneShape, side: 'pressure' | 'suction', cell: Mm | null): VaneFace {
  const { length } = shape;
  const sign = side === 'pressure' ? 1 : -1;
  const top = Math.max(shape.height(0), shape.height(length));
  const grid = faceGrid({ u0: 0, u1: length, v0: 0, v1: top, vScale: 1, wraps: false }, cell);
  const noseEnd = shape.nose === 'round' ? shape.noseThickness / 2 : 0;
  const cover = coverUnder(shape, grid);
  /** (1 - k n) at the surface: how much wider the side is than its camber. */
  const widening = (s: Mm): number => 1 - (shape.camber(s).k * sign * shape.thickness(s)) / 2;
  const areaBetween = (from: Mm, to: Mm, height: (s: Mm) => Mm): Mm2 => {
    let area = 0;
    if (to > noseEnd) {
      overRow(Math.max(from, noseEnd), to, (s, weight) => {
        area += weight * height(s) * widening(s);
      });
    }
    return area;
  };
  const rowFrom = (row: number): Mm => row * grid.du;
  const rowAreas = Float64Array.from({ length: grid.rows }, (_, row) =>
    areaBetween(rowFrom(row), rowFrom(row + 1), () => grid.dv),
  );
  let area = 0;
  for (let row = 0; row < grid.rows; row++) area += areaBetween(rowFrom(row), rowFrom(row + 1), shape.height);

  /** Metal below the surface at s: its laws, and from what depth to what depth there is any. */
  const metalBelow = lastOf((s: Mm) => {
    const half = shape.thickness(s) / 2;
    const metal = shape.halfThickness(s);
    return { laws: lawsAt(shape, sign, s), first: half - metal, last: half + metal };
  });
  const inVane: VaneFace['inVane'] = (u, v, depth) => ({
    s: u,
    n: sign * (shape.thickness(u) / 2 - depth),
    z: v,
  });
  const under: VaneFace['under'] = ({ s, n, z }) => ({
    u: s,
    v: z,
    depth: shape.thickness(s) / 2 - sign * n,
  });
  const face: Face = {
    name: `vane-${shape.number}/${side}`,
    coordinates: [
      { label: 'along', isAngle: false, from: 0, to: length },
      { label: 'height', isAngle: false, from: 0, to: top },
    ],
    columnsAre: 'second',
    worked: 'by-row',
    grid,
    picture: { kind: 'plane', columnScale: 1 },
    area,
    cover,
    cutCells: cutCellsOf(cover),
    wall: shape.thickness,
    opposite: `vane-${shape.number}/${side === 'pressure' ? 'suction' : 'pressure'}`,
    isWall: (u) => u >= noseEnd,
    holds: (u, v) => u >= 0 && u <= length && v >= 0 && v <= shape.height(u),
    position: (u, v, depth) => {
      const { s, n, z } = inVane(u, v, depth);
      return shape.position(s, n, z);
    },
    normal: (u) => {
      const { nx, ny } = shape.camber(u);
      return [sign * nx, sign * ny, 0];
    },
    below: (point) => under(shape.locate(point)),
    metal: eachRow((row) => {
      if (rowFrom(row) < noseEnd) return null;
      const volume = [0, 0, 0, 0];
      const x = [0, 0, 0, 0];
      const y = [0, 0, 0, 0];
      overRow(rowFrom(row), rowFrom(row + 1), (s, weight) => {
        const laws = lawsAt(shape, sign, s);
        const share = weight * grid.dv;
        for (let k = 0; k < 3; k++) {
          volume[k] += share * laws.volume[k];
          x[k] += share * laws.x[k];
          y[k] += share * laws.y[k];
        }
      });
      const law = (p: number[]): Polynomial => [p[0], p[1], p[2], 0];
      return {
        volume: { ...NO_TERMS, plain: law(volume) },
        x: { ...NO_TERMS, plain: law(x) },
        y: { ...NO_TERMS, plain: law(y) },
        z: { ...NO_TERMS, first: law(volume) },
        xz: { ...NO_TERMS, first: law(x) },
        yz: { ...NO_TERMS, first: law(y) },
      };
    }),
    metalAt: (u, v, from, to) => {
      const { laws, first, last } = metalBelow(u);
      return layer(laws, Math.max(from, first), Math.min(to, last), v, grid.du * grid.dv);
    },
    cellArea: (row) => rowAreas[row],
    columnFirst: Float64Array.from({ length: grid.columns }, (_, j) => (j + 0.5) * grid.dv),
    columnSecond: new Float64Array(grid.columns),
  };
  return { face, inVane, under };
}

type Law = readonly [number, number, number];

/** Metal under 1 mm2 of (s, z) down to depth d, as powers 1 to 3 of d. */
function lawsAt(
  shape: VaneShape,
  sign: number,
  s: Mm,
): { readonly volume: Law; readonly x: Law; readonly y: Law } {
  const { x, y, nx, ny, k } = shape.camber(s);
  const half = shape.thickness(s) / 2;
  const a = 1 - k * sign * half;
  const b = k * sign;
  const moment = (c: number, n: number): Law => {
    const [p, q] = [c + sign * half * n, -sign * n];
    return [p * a, (p * b + q * a) / 2, (q * b) / 3];
  };
  return { volume: [a, b / 2, 0], x: moment(x, nx), y: moment(y, ny) };
}

function layer(laws: ReturnType<typeof lawsAt>, from: Mm, to: Mm, z: Mm, size: Mm2): Metal {
  if (to <= from) return NO_METAL;
  const value = ([p, q, r]: Law): number =>
    size * (to * (p + to * (q + to * r)) - from * (p + from * (q + from * r)));
  const [volume, x, y] = [value(laws.volume), value(laws.x), value(laws.y)];
  return { volume, x, y, z: volume * z, xz: x * z, yz: y * z };
}

/** Shares of the cells under the sloping top; null when the top is level. */
function coverUnder(shape: VaneShape, grid: Grid): Float32Array | null {
  if (shape.height(0) === shape.height(shape.length)) return null;
  const cover = new Float32Array(grid.rows * grid.columns);
  const top = Array.from({ length: grid.rows + 1 }, (_, row) => {
    const s = row * grid.du;
    return [s, shape.height(s)] as const;
  });
  addLoop(cover, grid, [[shape.length, 0], [0, 0], ...top], 1);
  return settleCover(cover);
}
