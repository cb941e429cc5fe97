/** Sums over triangle meshes, for the tests. */
import type { Mesh } from '../../../geometry/part/mesh.ts';

type Vec = readonly [number, number, number];

export function cornersOf(mesh: Mesh, triangle: number): readonly [Vec, Vec, Vec] {
  const at = (k: number): Vec => {
    const first = mesh.index[triangle * 3 + k] * 3;
    return [mesh.position[first], mesh.position[first + 1], mesh.position[first + 2]];
  };
  return [at(0), at(1), at(2)];
}

export function cross(a: Vec, b: Vec): Vec {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export const minus = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Area of the triangles for which `counts` holds of their area vector. */
export function areaOf(mesh: Mesh, counts: (vector: Vec) => boolean = () => true): number {
  let sum = 0;
  for (let t = 0; t < mesh.index.length / 3; t++) {
    const [a, b, c] = cornersOf(mesh, t);
    const vector = cross(minus(b, a), minus(c, a));
    if (counts(vector)) sum += Math.hypot(...vector) / 2;
  }
  return sum;
}

/** V = sum a . (b x c) / 6 and C = sum v_i (a + b + c) / 4 / V. Source: C. Zhang, T. Chen, ICIP 2001 (from memory). */
export function solidOf(meshes: readonly Mesh[]): { volume: number; centroid: Vec } {
  let volume = 0;
  const moment = [0, 0, 0];
  for (const mesh of meshes) {
    for (let t = 0; t < mesh.index.length / 3; t++) {
      const [a, b, c] = cornersOf(mesh, t);
      const piece = dot(a, cross(b, c)) / 6;
      volume += piece;
      for (let k = 0; k < 3; k++) moment[k] += (piece * (a[k] + b[k] + c[k])) / 4;
    }
  }
  return { volume, centroid: [moment[0] / volume, moment[1] / volume, moment[2] / volume] };
}

/** Directed sides that no triangle takes the other way, vertices within 1e-3 mm taken as one: 0 when the surface is closed. */
export function openSides(meshes: readonly Mesh[]): number {
  const sides = new Map<string, number>();
  const key = (v: Vec) => v.map((x) => Math.round(x * 1000) + 0).join(' ');
  for (const mesh of meshes) {
    for (let t = 0; t < mesh.index.length / 3; t++) {
      const names = cornersOf(mesh, t).map(key);
      for (let k = 0; k < 3; k++) {
        const [from, to] = [names[k], names[(k + 1) % 3]];
        if (from === to) continue;
        const [side, way] = from < to ? [`${from}|${to}`, 1] : [`${to}|${from}`, -1];
        sides.set(side, (sides.get(side) ?? 0) + way);
      }
    }
  }
  return [...sides.values()].filter((balance) => balance !== 0).length;
}
