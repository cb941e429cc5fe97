import { describe, expect, test } from 'vitest';
import { faceMesh } from '../../../geometry/part/face-mesh.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { toRadians } from '../../../geometry/units.ts';
import { faceOf, plate } from '../made.ts';
import { areaOf, cornersOf, cross, dot, minus } from './mesh-sums.ts';

/** Share of a circle's area that its regular polygon of n sides holds: n / (2 pi) sin(2 pi / n). */
const polygonShare = (n: number) => (n / (2 * Math.PI)) * Math.sin((2 * Math.PI) / n);

describe('a face as triangles', () => {
  // Checks B5: the annulus 320 / 120 has 69 115.0384 mm2. The mesh is the polygon's share of it; float32 holds 1e-6.
  test('of a flat ring has the area of the ring, as far as its polygons do', () => {
    const mesh = faceMesh(faceOf('face', { holes: [] }));
    expect(areaOf(mesh) / (69115.0384 * polygonShare(255))).toBeCloseTo(1, 6);
  });

  // Checks B6: z = (r - R) tan 4 deg has pi (R2 - r2) / cos a = 69 283.8103 mm2. Facets of a cone lie inside it: 1 - (pi/255)^2 / 6 or so.
  test('of a dished ring has the area of the cone', () => {
    const mesh = faceMesh(faceOf('face', { holes: [], coneAngle: toRadians(4) }));
    expect(areaOf(mesh) / 69283.8103).toBeGreaterThan(1 - 2e-4);
    expect(areaOf(mesh) / 69283.8103).toBeLessThan(1);
  });

  test('of a bore has the area of the cylinder, as far as its polygon does', () => {
    const mesh = faceMesh(faceOf('bore'));
    // Sides of a polygon of n: 2 R n sin(pi / n).
    expect(areaOf(mesh)).toBeCloseTo(2 * 60 * 255 * Math.sin(Math.PI / 255) * 18, 1);
  });

  test.each([
    ['face', {}],
    ['face', { coneAngle: toRadians(12) }],
    ['face', { coneAngle: toRadians(-8) }],
    ['bore', {}],
  ] as const)('shows its outside: %s %o', (name, shape) => {
    const mesh = faceMesh(faceOf(name, shape));
    let least = Infinity;
    for (let t = 0; t < mesh.index.length / 3; t++) {
      const [a, b, c] = cornersOf(mesh, t);
      const first = mesh.index[t * 3] * 3;
      const normal = [mesh.normal[first], mesh.normal[first + 1], mesh.normal[first + 2]] as const;
      least = Math.min(least, dot(cross(minus(b, a), minus(c, a)), normal));
    }
    expect(least).toBeGreaterThan(0);
  });

  test('closes its whole-turn seam to the last bit, with places 0 and 1', () => {
    const mesh = faceMesh(faceOf('face'), { rows: 12, columns: 64 });
    expect([mesh.rows, mesh.columns]).toEqual([12, 64]);
    for (let row = 0; row < mesh.rows; row++) {
      const first = row * mesh.columns;
      const last = first + mesh.columns - 1;
      expect(mesh.position.slice(last * 3, last * 3 + 3)).toEqual(
        mesh.position.slice(first * 3, first * 3 + 3),
      );
      expect([mesh.place[first * 2], mesh.place[last * 2]]).toEqual([0, 1]);
    }
  });

  test('has at most 256 x 256 vertices, and no more than the grid has corners', () => {
    const fine = faceMesh(faceOf('face', {}, 0.3));
    expect([fine.rows, fine.columns]).toEqual([256, 256]);
    const outline = {
      kind: 'outline',
      edge: [
        [0, 0],
        [12, 0],
        [12, 9],
        [0, 9],
      ],
      holes: [],
    } as const;
    const [face] = wearPlate({ ...plate(), shape: outline }, 1).faces;
    const coarse = faceMesh(face);
    expect([coarse.rows, coarse.columns]).toEqual([10, 13]);
  });

  test('refuses a side it can not have', () => {
    expect(() => faceMesh(faceOf('face'), { rows: 1 })).toThrow(/2 to 256 vertices a side, got 1/);
    expect(() => faceMesh(faceOf('face'), { columns: 257 })).toThrow(/got 257/);
  });
});
