import { describe, expect, test } from 'vitest';
import { bodyMeshes } from '../../../geometry/part/body-mesh.ts';
import { faceMesh } from '../../../geometry/part/face-mesh.ts';
import type { BodyMesh, Mesh } from '../../../geometry/part/mesh.ts';
import type { Part } from '../../../geometry/part/part.ts';
import { wearPlate } from '../../../geometry/part/wear-plate.ts';
import { toRadians } from '../../../geometry/units.ts';
import { plate } from '../made.ts';
import { areaOf, cornersOf, cross, dot, minus, openSides, solidOf } from './mesh-sums.ts';

/** Area of the regular polygon of n sides in a circle of radius r. */
const polygon = (n: number, r: number) => (n / 2) * r * r * Math.sin((2 * Math.PI) / n);

const round = (shape: Parameters<typeof plate>[0]): Part => wearPlate(plate(shape), 1);

/** A plate's body is one piece. */
function bodyMesh(part: Part): BodyMesh {
  const [mesh] = bodyMeshes(part, { segments: 255 });
  return mesh;
}

/** Body and faces together: the whole solid where no hole is cut. */
function whole(part: Part): Mesh[] {
  return [bodyMesh(part), ...part.faces.map((face) => faceMesh(face))];
}

// Checks B9.
const L_SHAPE = {
  kind: 'outline',
  edge: [
    [0, 0],
    [120, 0],
    [120, 50],
    [60, 50],
    [60, 90],
    [0, 90],
  ],
  holes: [
    [
      [10, 10],
      [40, 10],
      [40, 30],
      [10, 30],
    ],
  ],
} as const;
const isDown = (vector: readonly number[]) => vector[2] < -1e-6;
const isLevel = (vector: readonly number[]) => Math.abs(vector[2]) < 1e-6;

describe('the body of a plate as triangles', () => {
  // Checks B5: 69 115.0384 mm2 less six 14 mm holes is 68 191.4101; here each circle counts as its polygon.
  test('the back of a flat plate with holes has the area of the ring less the holes', () => {
    const back = areaOf(bodyMesh(round({})), isDown);
    expect(back).toBeCloseTo(polygon(255, 160) - polygon(255, 60) - 6 * polygon(64, 7), 1);
    expect(back / 68191.4101).toBeCloseTo(1, 3);
  });

  test('its walls are the rim and the holes, without the bore', () => {
    const sides = (n: number, r: number) => 2 * n * r * Math.sin(Math.PI / n);
    expect(areaOf(bodyMesh(round({})), isLevel)).toBeCloseTo(18 * (sides(255, 160) + 6 * sides(64, 7)), 1);
  });

  // A prism; for the cone the same, since the back is the face moved straight down: area in plan x thickness.
  test.each([0, 4, -6])('with its faces it closes, and holds area x thickness: %d deg', (degrees) => {
    const solid = whole(round({ holes: [], coneAngle: toRadians(degrees) }));
    expect(openSides(solid)).toBe(0);
    const { volume, centroid } = solidOf(solid);
    expect(volume / ((polygon(255, 160) - polygon(255, 60)) * 18)).toBeCloseTo(1, 6);
    expect(Math.hypot(centroid[0], centroid[1])).toBeLessThan(1e-3);
  });

  test('an open side is found when there is one', () => {
    const part = round({ holes: [] });
    expect(openSides([bodyMesh(part)])).toBe(2 * 255);
  });

  // Checks B9: outer 8400, net 7800 mm2 at (53.4615385, 39.2307692).
  test('an L with a hole has its area, walls and, closed with its own mirror image, its volume and centroid', () => {
    const part = wearPlate({ ...plate(), shape: L_SHAPE }, 1);
    const mesh = bodyMesh(part);
    expect(areaOf(mesh, isDown)).toBeCloseTo(7800, 3);
    expect(areaOf(mesh, isLevel)).toBeCloseTo((420 + 100) * 18, 3);
    const front = mirroredBack(mesh);
    // Open along the face alone: as many sides as its edges are divided into.
    const alongFace = mesh.edges.position.filter((z, i) => i % 3 === 2 && z === 0).length;
    expect(openSides([mesh])).toBe((alongFace - 10) / 2);
    const { volume, centroid } = solidOf([mesh, front]);
    expect(volume).toBeCloseTo(7800 * 18, 1);
    expect(centroid[0]).toBeCloseTo(53.4615385, 4);
    expect(centroid[1]).toBeCloseTo(39.2307692, 4);
    expect(centroid[2]).toBeCloseTo(-9, 4);
  });

  test('an outline drawn clockwise gives the same body', () => {
    const turned = {
      ...L_SHAPE,
      edge: L_SHAPE.edge.toReversed(),
      holes: L_SHAPE.holes.map((hole) => hole.toReversed()),
    };
    const mesh = bodyMesh(wearPlate({ ...plate(), shape: turned }, 1));
    expect(solidOf([mesh, mirroredBack(mesh)]).volume).toBeCloseTo(7800 * 18, 1);
  });

  test.each([
    ['flat', {}],
    ['dished', { coneAngle: toRadians(4) }],
  ] as const)('every triangle shows its outside: %s', (_, shape) => {
    const mesh = bodyMesh(round(shape));
    for (let t = 0; t < mesh.index.length / 3; t++) {
      const [a, b, c] = cornersOf(mesh, t);
      const first = mesh.index[t * 3] * 3;
      const normal = [mesh.normal[first], mesh.normal[first + 1], mesh.normal[first + 2]] as const;
      expect(dot(cross(minus(b, a), minus(c, a)), normal)).toBeGreaterThan(0);
    }
  });

  test('where a wall meets the running face it rides on it, along the inward normal, at the right place of the texture', () => {
    const part = round({ coneAngle: toRadians(4) });
    const [face] = part.faces;
    const { grid } = face;
    const mesh = bodyMesh(part);
    let riding = 0;
    for (let vertex = 0; vertex < mesh.position.length / 3; vertex++) {
      const inward = mesh.inward.slice(vertex * 3, vertex * 3 + 3);
      if (inward[2] === 0) continue;
      riding += 1;
      const u = grid.u0 + mesh.place[vertex * 2 + 1] * grid.rows * grid.du;
      const v = grid.v0 + mesh.place[vertex * 2] * grid.columns * grid.dv;
      const sunk = face.position(u, v, 1);
      for (let k = 0; k < 3; k++) {
        expect(mesh.position[vertex * 3 + k] + inward[k]).toBeCloseTo(sunk[k], 3);
      }
    }
    // Two a side: 255 of the rim and 64 of each hole.
    expect(riding).toBe(2 * (255 + 6 * 64));
  });

  test('its edges run round rim, bore and holes at the face and at the back, and down the corners of an outline', () => {
    const length = (part: Part) => {
      const { position } = bodyMesh(part).edges;
      let sum = 0;
      for (let i = 0; i < position.length; i += 6) {
        sum += Math.hypot(
          position[i] - position[i + 3],
          position[i + 1] - position[i + 4],
          position[i + 2] - position[i + 5],
        );
      }
      return sum;
    };
    const girth = (n: number, r: number) => 2 * n * r * Math.sin(Math.PI / n);
    expect(length(round({}))).toBeCloseTo(2 * (girth(255, 160) + girth(255, 60) + 6 * girth(64, 7)), 1);
    const outline = wearPlate({ ...plate(), shape: L_SHAPE }, 1);
    expect(length(outline)).toBeCloseTo(2 * (420 + 100) + 10 * 18, 3);
  });

  test('only the back of a cone is left uncut, and says where', () => {
    const flat = bodyMesh(round({}));
    expect(flat.uncutFrom).toBe(flat.index.length);
    const dished = bodyMesh(round({ coneAngle: toRadians(4) }));
    expect(dished.index.length - dished.uncutFrom).toBe(255 * 6);
    for (let i = dished.uncutFrom; i < dished.index.length; i++) {
      const vertex = dished.index[i];
      const [x, y] = dished.position.slice(vertex * 3, vertex * 3 + 2);
      const angle = dished.place[vertex * 2] * 2 * Math.PI;
      const radius = 60 + 100 * dished.place[vertex * 2 + 1];
      expect(x).toBeCloseTo(radius * Math.cos(angle), 3);
      expect(y).toBeCloseTo(radius * Math.sin(angle), 3);
    }
  });
});

/** The flat back lifted to z = 0 and turned over. */
function mirroredBack(mesh: Mesh): Mesh {
  const position = Float32Array.from(mesh.position, (x, i) => (i % 3 === 2 ? 0 : x));
  const down: number[] = [];
  for (let t = 0; t < mesh.index.length / 3; t++) {
    const [a, b, c] = cornersOf(mesh, t);
    if (cross(minus(b, a), minus(c, a))[2] >= -1e-6) continue;
    down.push(mesh.index[t * 3], mesh.index[t * 3 + 2], mesh.index[t * 3 + 1]);
  }
  return { position, normal: mesh.normal, index: Uint32Array.from(down) };
}
