import Module, { type ManifoldToplevel } from 'manifold-3d';
import { createDepthMap, type DepthMap } from '../../geometry/depth/depth-map.ts';
import { lostMetal } from '../../geometry/moments/integrate.ts';
import type { Face } from '../../geometry/part/face.ts';
import { wearPlate } from '../../geometry/part/wear-plate.ts';
import { type BenchResult, ratio } from './measure.ts';

/** Rows and columns of the ring that both sides work on: about 200,000 triangles as a closed mesh. */
const CELL = 1.12;
const THICKNESS = 20;
/** Vertices without wear are raised this far, so that no face of the two solids coincides: the kindest case for the kernel. */
const RAISED = 1e-3;
/** The worn solid reaches this far past bore, rim and back, for the same reason. */
const BEYOND = 1;

/** The same worn metal by our integral and by a mesh boolean: build both solids, subtract, measure volume and centroid. */
export async function bench(): Promise<BenchResult> {
  const kernel = await Module();
  kernel.setup();
  const face = wearPlate(
    {
      id: 'plate',
      kind: 'wear-plate',
      density: 0.0072,
      shape: { kind: 'round', outerRadius: 200, boreRadius: 90, coneAngle: 0, holes: [] },
      thickness: THICKNESS,
      leastThickness: null,
      marks: [],
      sections: [],
    },
    CELL,
  ).faces[0];
  const map = scoured(face);
  const boolean = subtracted(kernel, face, map);
  const ours = lostMetal(face, map).volume;
  if (Math.abs(ours / boolean - 1) > 2e-3)
    throw new Error(`boolean.bench: ${ours} mm3 by integral, ${boolean} by boolean`);
  return ratio(
    'mesh boolean, 200k triangles',
    () => subtracted(kernel, face, map),
    'lost metal, the same cells',
    () => lostMetal(face, map).volume,
    { least: 500, warm: 2, repeats: 15 },
  );
}

/** A scoured ring, 0 to 4 mm deep, that fades out towards rim and bore. */
function scoured(face: Face): DepthMap {
  const map = createDepthMap(face.grid);
  const { rows, columns } = face.grid;
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      const across = Math.sin((Math.PI * (row + 0.5)) / rows) ** 2;
      map.depth[row * columns + column] = across * (3 + Math.sin((14 * Math.PI * column) / columns));
    }
  }
  return map;
}

function subtracted(kernel: ManifoldToplevel, face: Face, map: DepthMap): number {
  const nominal = ringSolid(kernel, face, () => 0, 0);
  const worn = ringSolid(
    kernel,
    face,
    (cell) => (map.depth[cell] > RAISED ? map.depth[cell] : -RAISED),
    BEYOND,
  );
  const lost = nominal.subtract(worn);
  const volume = lost.volume();
  for (const solid of [nominal, worn, lost]) solid.delete();
  return volume;
}

/** A closed ring: top at the cells' depths, flat bottom, walls. Vertices stand at the cell centres, the rim and bore rows at the edges. */
function ringSolid(kernel: ManifoldToplevel, face: Face, depthOf: (cell: number) => number, beyond: number) {
  const { rows, columns, u0, du, dv } = face.grid;
  const rings = rows + 2;
  const vertices = new Float32Array(2 * rings * columns * 3);
  for (let ring = 0; ring < rings; ring++) {
    const row = Math.min(rows - 1, Math.max(0, ring - 1));
    const u = ring === 0 ? u0 - beyond : ring === rings - 1 ? u0 + rows * du + beyond : u0 + (row + 0.5) * du;
    for (let column = 0; column < columns; column++) {
      const v = (column + 0.5) * dv;
      const top = (ring * columns + column) * 3;
      const bottom = top + rings * columns * 3;
      vertices.set([u * Math.cos(v), u * Math.sin(v), -depthOf(row * columns + column)], top);
      vertices.set([u * Math.cos(v), u * Math.sin(v), -THICKNESS - beyond], bottom);
    }
  }
  const triangles: number[] = [];
  const under = rings * columns;
  for (let column = 0; column < columns; column++) {
    const next = (column + 1) % columns;
    for (let ring = 0; ring + 1 < rings; ring++) {
      const [a, b, c, d] = [
        ring * columns + column,
        (ring + 1) * columns + column,
        (ring + 1) * columns + next,
        ring * columns + next,
      ];
      triangles.push(a, b, c, a, c, d, under + a, under + c, under + b, under + a, under + d, under + c);
    }
    const outer = (rings - 1) * columns;
    triangles.push(column, next, under + next, column, under + next, under + column);
    triangles.push(
      outer + column,
      under + outer + column,
      under + outer + next,
      outer + column,
      under + outer + next,
      outer + next,
    );
  }
  const mesh = new kernel.Mesh({
    numProp: 3,
    vertProperties: vertices,
    triVerts: Uint32Array.from(triangles),
  });
  return new kernel.Manifold(mesh);
}
