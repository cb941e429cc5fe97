/**
 * Independent solids: the same metal built as closed meshes by a general solid kernel, measured by signed tetrahedra.
 * Nothing here uses the engine.
 */
import Module, { type ManifoldToplevel, type Manifold as Solid } from 'manifold-3d';

let kernel: ManifoldToplevel | null = null;

async function loadKernel(): Promise<ManifoldToplevel> {
  if (kernel === null) {
    kernel = await Module();
    kernel.setup();
  }
  return kernel;
}

/** Chords a turn: a circle of 160 mm is then 2e-6 of its area short. */
const SEGMENTS = 1440;

/** The closed polygon (r, z) swept about z from `from` to `to` degrees. */
export async function swept(
  profile: readonly (readonly [number, number])[],
  from = 0,
  to = 360,
): Promise<Solid> {
  const { CrossSection } = await loadKernel();
  const section = new CrossSection([profile.map(([r, z]) => [r, z] as [number, number])]);
  const segments = Math.max(8, Math.round((SEGMENTS * (to - from)) / 360));
  return section.revolve(segments * (360 / (to - from)), to - from).rotate([0, 0, from]);
}

export async function cylinder(x: number, y: number, radius: number, z0: number, z1: number): Promise<Solid> {
  const { Manifold } = await loadKernel();
  return Manifold.cylinder(z1 - z0, radius, radius, 360).translate([x, y, z0]);
}

export interface Measured {
  readonly volume: number;
  readonly centroid: readonly [number, number, number];
}

/** V = sum a . (b x c) / 6, C = sum v_i (a + b + c) / 4 / V over the triangles of the closed mesh. */
export function measured(solid: Solid): Measured {
  const { vertProperties, triVerts, numProp } = solid.getMesh();
  let volume = 0;
  const sum = [0, 0, 0];
  const corner = (i: number): [number, number, number] => [
    vertProperties[i * numProp],
    vertProperties[i * numProp + 1],
    vertProperties[i * numProp + 2],
  ];
  for (let t = 0; t < triVerts.length; t += 3) {
    const [a, b, c] = [corner(triVerts[t]), corner(triVerts[t + 1]), corner(triVerts[t + 2])];
    const v =
      (a[0] * (b[1] * c[2] - b[2] * c[1]) +
        a[1] * (b[2] * c[0] - b[0] * c[2]) +
        a[2] * (b[0] * c[1] - b[1] * c[0])) /
      6;
    volume += v;
    for (let k = 0; k < 3; k++) sum[k] += (v * (a[k] + b[k] + c[k])) / 4;
  }
  return { volume, centroid: [sum[0] / volume, sum[1] / volume, sum[2] / volume] };
}

type Point = readonly [number, number, number];

/** A closed mesh from rings of points, each ring joined to the next and the ends closed by fans: rings must be convex in their own plane. */
export async function lofted(rings: readonly (readonly Point[])[]): Promise<Solid> {
  const { Manifold, Mesh } = await loadKernel();
  const corners = rings[0].length;
  const vertices = rings.flat().flat();
  const triangles: number[] = [];
  const at = (ring: number, corner: number) => ring * corners + (corner % corners);
  for (let ring = 0; ring + 1 < rings.length; ring++) {
    for (let k = 0; k < corners; k++) {
      triangles.push(at(ring, k), at(ring, k + 1), at(ring + 1, k + 1));
      triangles.push(at(ring, k), at(ring + 1, k + 1), at(ring + 1, k));
    }
  }
  const last = rings.length - 1;
  for (let k = 1; k + 1 < corners; k++) {
    triangles.push(at(0, 0), at(0, k + 1), at(0, k));
    triangles.push(at(last, 0), at(last, k), at(last, k + 1));
  }
  const flipped = triangles.map((_, i) => triangles[i - (i % 3) + [0, 2, 1][i % 3]]);
  const make = (index: number[]) =>
    new Manifold(
      new Mesh({
        numProp: 3,
        vertProperties: Float32Array.from(vertices),
        triVerts: Uint32Array.from(index),
      }),
    );
  const solid = make(triangles);
  return solid.volume() > 0 ? solid : make(flipped);
}
