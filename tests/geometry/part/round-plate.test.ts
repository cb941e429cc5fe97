import { describe, expect, test } from 'vitest';
import { metalBetween, volumeBetween } from '../../../geometry/moments/row-sums.ts';
import type { Face } from '../../../geometry/part/face.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf } from '../made.ts';

/** Sum of the covered cells' areas: what the grid makes of the face. */
function gridArea(face: Face): number {
  let area = 0;
  for (let row = 0; row < face.grid.rows; row++) {
    const cell = face.cellArea(row, 0);
    for (let column = 0; column < face.grid.columns; column++) {
      area += cell * (face.cover === null ? 1 : face.cover[row * face.grid.columns + column]);
    }
  }
  return area;
}

/** Volume of the whole face taken down to depth d. */
function layer(face: Face, d: number): number {
  let volume = 0;
  for (let row = 0; row < face.grid.rows; row++)
    volume += volumeBetween(face, row, 0, 0, 0, 0, d) * face.grid.columns;
  return volume;
}

describe('area of the running face', () => {
  // Annulus 320/120 and the same less six 14 mm holes: closed form pi (R^2 - r^2) - n pi r^2.
  test('a plain annulus 320/120 is 69 115.0384 mm2', () => {
    const face = faceOf('face', { holes: [] });
    expect(face.area).toBeCloseTo(69115.0384, 4);
    expect(gridArea(face)).toBeCloseTo(69115.0384, 4);
  });
  test('six 14 mm holes leave 68 191.4101 mm2, cell by cell too', () => {
    const face = faceOf('face');
    expect(face.area).toBeCloseTo(68191.4101, 4);
    // The holes' 720-corner polygons are 1e-5 short; cells of the rim of a hole take the mean radius: 2e-4 of the hole area.
    expect(Math.abs(gridArea(face) - 68191.4101)).toBeLessThan(924 * 2e-4);
  });
  test('a 4 degree dish of the same plate is 69 283.8103 mm2', () => {
    // pi (R^2 - r^2) / cos a, closed form.
    expect(faceOf('face', { holes: [], coneAngle: toRadians(4) }).area).toBeCloseTo(69283.8103, 4);
  });
  test('a hole on the 0/360 line takes the same area as one elsewhere', () => {
    const at = (degrees: number) => {
      const a = toRadians(degrees);
      return gridArea(faceOf('face', { holes: [{ x: 145 * Math.cos(a), y: 145 * Math.sin(a), radius: 7 }] }));
    };
    expect(Math.abs(at(0) - at(90))).toBeLessThan(0.05);
  });
});

describe('metal below the face', () => {
  test('a 3.5 mm layer of a 4 degree dish from 90 to 130 mm is 97 104.9783 mm3 (Pappus)', () => {
    // 2 pi ((r1 + r2)/2 + (d/2) sin a) L d, L = (r2 - r1)/cos a: theorem of Pappus, exact.
    const face = faceOf('face', { holes: [], outerRadius: 130, boreRadius: 90, coneAngle: toRadians(4) });
    expect(layer(face, 3.5)).toBeCloseTo(97104.9783, 4);
  });
  test('2.5 mm off a bore of radius 60, 18 mm long, is 17 318.0295 mm3', () => {
    // pi ((60 + 2.5)^2 - 60^2) 18: cylinder shell outward into the metal, closed form.
    expect(layer(faceOf('bore'), 2.5)).toBeCloseTo(17318.0295, 4);
  });
});

describe('first moments of one cell agree with quadrature of position over the cell', () => {
  // Independent route: sum position(u, v, depth) x its own area growth over a fine grid inside one cell.
  for (const [name, shape] of [
    ['flat face', {}],
    ['dished face', { coneAngle: toRadians(12) }],
    ['domed face', { coneAngle: toRadians(-7) }],
  ] as const) {
    test(name, () => {
      const face = faceOf('face', { holes: [], ...shape }, 8);
      const row = 4;
      const column = 3;
      const depth = 5;
      const metal = metalBetween(face, row, column, 0, 0, 0, depth);
      const sin = Math.sin('coneAngle' in shape ? shape.coneAngle : 0);
      const cos = Math.cos('coneAngle' in shape ? shape.coneAngle : 0);
      const n = 40;
      const sum = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) {
          for (let k = 0; k < n; k++) {
            const u = face.grid.u0 + (row + (i + 0.5) / n) * face.grid.du;
            const v = face.grid.v0 + (column + (j + 0.5) / n) * face.grid.dv;
            const d = ((k + 0.5) / n) * depth;
            const dV = (((u + d * sin) / cos) * face.grid.du * face.grid.dv * depth) / n ** 3;
            const [x, y, z] = face.position(u, v, d);
            sum.volume += dV;
            sum.x += x * dV;
            sum.y += y * dV;
            sum.z += z * dV;
            sum.xz += x * z * dV;
            sum.yz += y * z * dV;
          }
        }
      }
      // Midpoint rule with 40 points a side: relative 1e-4 is its own error.
      expect(metal.volume / sum.volume).toBeCloseTo(1, 4);
      for (const of of ['x', 'y', 'z', 'xz', 'yz'] as const) expect(metal[of] / sum[of]).toBeCloseTo(1, 3);
    });
  }
});

describe('places', () => {
  test('the running face of a dished plate is lower at the bore', () => {
    const face = faceOf('face', { coneAngle: toRadians(4) });
    expect(face.position(160, 0, 0)[2]).toBeCloseTo(0, 12);
    expect(face.position(60, 0, 0)[2]).toBeCloseTo(-100 * Math.tan(toRadians(4)), 12);
  });
  test('depth goes along the inward normal', () => {
    const face = faceOf('face', { coneAngle: toRadians(10) });
    const [x0, y0, z0] = face.position(100, 1, 0);
    const [x1, y1, z1] = face.position(100, 1, 2);
    const n = face.normal(100, 1);
    expect(x1 - x0).toBeCloseTo(-2 * n[0], 12);
    expect(y1 - y0).toBeCloseTo(-2 * n[1], 12);
    expect(z1 - z0).toBeCloseTo(-2 * n[2], 12);
  });
  test('no point inside a bolt hole is on the face', () => {
    const face = faceOf('face');
    expect(face.holds(145, 0)).toBe(false);
    expect(face.holds(145, toRadians(30))).toBe(true);
  });
});

test('a cell that would make more than 16 million cells is refused by name', () => {
  expect(() => faceOf('face', {}, 0.01)).toThrow(/cell: 0.01 mm makes .* the most is 16000000/);
});
