import { BufferAttribute, Mesh, ShaderMaterial, Vector2 } from 'three';
import type { Face } from '../../geometry/part/face.ts';
import { type FaceMesh, faceMesh } from '../../geometry/part/face-mesh.ts';
import type { Part } from '../../geometry/part/part.ts';
import { cornerOf } from './corner-uniforms.ts';
import { FACE_FRAGMENT, FACE_VERTEX } from './face-shader.ts';
import { geometryOf, still } from './mesh-geometry.ts';
import { openShares } from './open-shares.ts';
import { COLUMNS, ofDepth, rowsOf, type Uniforms, type WornTextures } from './worn-textures.ts';

/** The mesh of one worn face of a part, the `i`th. */
export function faceObject(
  face: Face,
  part: Part,
  worn: readonly WornTextures[],
  i: number,
  shared: Uniforms,
) {
  const mesh = faceMesh(face, { rows: rowsOf(face), columns: COLUMNS });
  const geometry = geometryOf(mesh);
  geometry.setAttribute('groove', new BufferAttribute(groovesOf(face, mesh), 3));
  geometry.setAttribute('open', new BufferAttribute(openShares(part, face, mesh), 1));
  const material = new ShaderMaterial({
    vertexShader: FACE_VERTEX,
    fragmentShader: FACE_FRAGMENT,
    uniforms: {
      ...shared,
      ...ofDepth(worn[i]),
      ...shapeOf(face, worn[i]),
      ...cornerOf(part, worn, i),
      ...skinOf(face),
    },
    // Edges are drawn on the very same places.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  return still(new Mesh(geometry, material));
}

/**
 * Between the vanes the shroud is as it was cast, and its face goes on a cell under them: what they stand on closes the rest. All else
 * is turned on a lathe.
 */
function skinOf({ name }: Face): Uniforms {
  const isCast = name === 'shroud/front';
  return { uCast: { value: isCast }, uLeastCover: { value: isCast ? 0.01 : 0.5 } };
}

/** Sizes of a texel, and which way u runs, for the slopes. */
export function shapeOf(face: Face, { texels }: WornTextures): Uniforms {
  const { grid, picture } = face;
  const polar = picture.kind === 'polar';
  const across = (grid.columns * grid.dv * (polar ? 1 : picture.columnScale)) / texels.width;
  const along = ((grid.rows * grid.du) / texels.height) * (polar ? 1 / picture.slant : 1);
  return {
    uCellSize: { value: new Vector2(across, along) },
    uPolar: { value: polar },
    uHand: { value: hand(face) },
  };
}

/** 1 where v x normal runs along u, else -1. */
function hand(face: Face): number {
  const { grid } = face;
  const u = grid.u0 + (grid.rows * grid.du) / 2;
  const v = grid.v0 + (grid.columns * grid.dv) / 2;
  const [x, y, z] = face.position(u, v, 0);
  const alongU = difference(face.position(u + grid.du, v, 0), [x, y, z]);
  const alongV = difference(face.position(u, v + grid.dv / 8, 0), [x, y, z]);
  const [nx, ny, nz] = face.normal(u, v);
  const cross = [
    alongV[1] * nz - alongV[2] * ny,
    alongV[2] * nx - alongV[0] * nz,
    alongV[0] * ny - alongV[1] * nx,
  ];
  return Math.sign(cross[0] * alongU[0] + cross[1] * alongU[1] + cross[2] * alongU[2]);
}

/** Unit vector along v at each vertex: the way a turning tool runs. */
function groovesOf(face: Face, { place, rows, columns }: FaceMesh): Float32Array {
  const { grid } = face;
  const grooves = new Float32Array(rows * columns * 3);
  for (let vertex = 0; vertex < rows * columns; vertex++) {
    const u = grid.u0 + place[vertex * 2 + 1] * grid.rows * grid.du;
    const v = grid.v0 + place[vertex * 2] * grid.columns * grid.dv;
    const step = grid.dv / 4;
    const [x, y, z] = difference(face.position(u, v + step, 0), face.position(u, v - step, 0));
    const length = Math.hypot(x, y, z);
    grooves.set([x / length, y / length, z / length], vertex * 3);
  }
  return grooves;
}

const difference = (a: readonly number[], b: readonly number[]) =>
  [a[0] - b[0], a[1] - b[1], a[2] - b[2]] as const;
