/** Everything the graphics chip needs of one part: meshes, materials and textures, made together and thrown away together. */
import {
  BufferAttribute,
  BufferGeometry,
  DataTexture,
  type IUniform,
  LineSegments,
  Mesh,
  type Object3D,
  ShaderMaterial,
  type Texture,
  Vector2,
  Vector3,
} from 'three';
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import { type BodyMesh, bodyMesh } from '../../geometry/part/body-mesh.ts';
import type { Face } from '../../geometry/part/face.ts';
import { type FaceMesh, faceMesh } from '../../geometry/part/face-mesh.ts';
import type { Part } from '../../geometry/part/part.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import type { DepthScale } from './depth-scale.ts';
import { type DepthTexels, depthTexels, wholeBlock, writeBlock } from './depth-texels.ts';
import { coverTexture, halfTexture, rampTexture } from './face-texture.ts';
import {
  BODY_FRAGMENT,
  BODY_VERTEX,
  EDGE_FRAGMENT,
  FACE_FRAGMENT,
  FACE_VERTEX,
} from './metal-shader.ts';
import { type SinkTexels, sinkTexels, writeSink } from './sink-texels.ts';

export interface DrawnPart {
  readonly part: Part;
  readonly objects: readonly Object3D[];
  /** Takes over the maps of the part that have changed since. */
  takeAll(live: LivePart): void;
  /** Takes over a block a tool has touched. */
  take(live: LiveFace, block: CellBlock): void;
  look(how: { readonly times: number; readonly scale: DepthScale; readonly pixel: number }): void;
  dispose(): void;
}

/** Vertices round a face: enough for a smooth rim and for worn places to sink; finer relief is the texture's. */
const COLUMNS = 256;
/** Vertices across it: this many times as close together as those round it, since most wear runs round, and within these. */
const ROWS = { closer: 1.5, fewest: 8, most: 96 } as const;
/** Darkness of the drawn edges. */
const EDGE_INK = 0.62;

export function drawnPart({ part, faces }: LivePart): DrawnPart {
  const shared = {
    uTimes: { value: 1 },
    uStep: { value: 1 },
    uScaleTo: { value: 5 },
    uPixel: { value: 1 },
    uRamp: { value: rampTexture() as Texture },
  };
  const worn = faces.map(({ face }) => wornTextures(face));
  const faceMeshes = faces.map(({ face }, i) => faceObject(face, part, worn, i, shared));
  const [running] = worn;
  const taken: LiveFace[] = [];
  const body = bodyMesh(part, { segments: COLUMNS - 1 });
  const objects = [...faceMeshes, ...bodyObjects(body, running, shared), edgeObject(body, running, { ...shared, ...cornerOf(part, worn, 0) })];
  return {
    part,
    objects,
    takeAll(live) {
      for (const [i, face] of live.faces.entries()) {
        if (taken[i] !== face) takeBlock(worn[i], face.map, wholeBlock(face.map));
        taken[i] = face;
      }
    },
    take(live, block) {
      const found = worn.find(({ face }) => face === live.face);
      if (found === undefined) return;
      takeBlock(found, live.map, block);
    },
    look({ times, scale, pixel }) {
      shared.uTimes.value = times;
      shared.uStep.value = scale.step;
      shared.uScaleTo.value = scale.to;
      shared.uPixel.value = pixel;
    },
    dispose() {
      for (const object of objects) {
        object.geometry.dispose();
        object.material.dispose();
      }
      for (const { depth, sink, cover } of worn) {
        depth.dispose();
        sink.dispose();
        cover.dispose();
      }
      shared.uRamp.value.dispose();
    },
  };
}

function takeBlock({ texels, depth, sinkOf, sink }: WornTextures, map: DepthMap, block: CellBlock): void {
  writeBlock(texels, map, block);
  writeSink(sinkOf, block);
  depth.needsUpdate = true;
  sink.needsUpdate = true;
}

/** Steps between vertices round the face: the seam is one vertex. */
const stepsAlong = ({ of, width }: SinkTexels): number => (of.face.grid.wraps ? width : width - 1);

type Shared = Readonly<Record<string, IUniform>>;

interface WornTextures {
  readonly face: Face;
  readonly texels: DepthTexels;
  readonly depth: DataTexture;
  readonly cover: DataTexture;
  readonly hasCover: boolean;
  readonly cells: Vector2;
  readonly sinkOf: SinkTexels;
  readonly sink: DataTexture;
}

function wornTextures(face: Face): WornTextures {
  const texels = depthTexels(face);
  const cover = coverTexture(face);
  const columns = face.grid.wraps ? COLUMNS : Math.min(COLUMNS, face.grid.columns + 1);
  const sinkOf = sinkTexels(texels, rowsOf(face), columns);
  return {
    face,
    texels,
    depth: halfTexture(texels, face),
    cover: cover ?? new DataTexture(new Uint8Array([255, 255, 255, 255]), 1, 1),
    hasCover: cover !== null,
    cells: new Vector2(texels.width, texels.height),
    sinkOf,
    sink: halfTexture(sinkOf, face),
  };
}

const ofDepth = ({ depth, cells, cover, hasCover, sink, sinkOf }: WornTextures): Shared => ({
  uDepth: { value: depth },
  uCells: { value: cells },
  uCover: { value: cover },
  uHasCover: { value: hasCover },
  uSink: { value: sink },
  uSinkSteps: { value: new Vector2(stepsAlong(sinkOf), sinkOf.height - 1) },
  uSinkTexels: { value: new Vector2(sinkOf.width, sinkOf.height) },
});

function faceObject(face: Face, part: Part, worn: readonly WornTextures[], i: number, shared: Shared) {
  const mesh = faceMesh(face, { rows: rowsOf(face), columns: COLUMNS });
  const geometry = geometryOf(mesh);
  geometry.setAttribute('groove', new BufferAttribute(groovesOf(face, mesh), 3));
  const material = new ShaderMaterial({
    vertexShader: FACE_VERTEX,
    fragmentShader: FACE_FRAGMENT,
    uniforms: { ...shared, ...ofDepth(worn[i]), ...shapeOf(face, worn[i]), ...cornerOf(part, worn, i) },
    // Edges are drawn on the very same places.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  return still(new Mesh(geometry, material));
}

function rowsOf({ grid, picture }: Face): number {
  const middle = picture.kind === 'polar' ? grid.u0 + (grid.rows * grid.du) / 2 : picture.columnScale;
  const apart = (grid.columns * grid.dv * middle) / COLUMNS;
  const wanted = Math.round((ROWS.closer * grid.rows * grid.du) / apart);
  return Math.max(2, Math.min(ROWS.most, Math.max(ROWS.fewest, wanted), grid.rows + 1));
}

/** Sizes of a texel, and which way u runs, for the slopes. */
function shapeOf(face: Face, { texels }: WornTextures): Shared {
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
  const [x, y, z] = face.position(u, grid.v0, 0);
  const alongU = difference(face.position(u + grid.du, grid.v0, 0), [x, y, z]);
  const alongV = difference(face.position(u, grid.v0 + grid.dv / 8, 0), [x, y, z]);
  const [nx, ny, nz] = face.normal(u, grid.v0);
  const cross = [
    alongV[1] * nz - alongV[2] * ny,
    alongV[2] * nx - alongV[0] * nz,
    alongV[0] * ny - alongV[1] * nx,
  ];
  return Math.sign(cross[0] * alongU[0] + cross[1] * alongU[1] + cross[2] * alongU[2]);
}

/** What a face needs to know of the one it shares a corner with; see discardLost in the shader. */
function cornerOf({ corners, faces }: Part, worn: readonly WornTextures[], i: number): Shared {
  const corner = corners.find(({ over, side }) => over === faces[i] || side === faces[i]);
  const other = corner && worn[faces.indexOf(corner.over === faces[i] ? corner.side : corner.over)];
  const { sink, sinkOf } = other ?? worn[i];
  const side = {
    uSide: { value: sink },
    uSideSteps: { value: new Vector2(stepsAlong(sinkOf), sinkOf.height - 1) },
    uSideTexels: { value: new Vector2(sinkOf.width, sinkOf.height) },
  };
  if (corner === undefined) {
    return { ...side, uCorner: { value: 0 }, uCornerSize: { value: new Vector3() }, uSlope: { value: new Vector2(0, 1) } };
  }
  const { over, side: bore } = corner;
  const [x, y] = bore.position(0, 0, 0);
  const [nx, , nz] = over.normal(over.grid.u0, 0);
  const size = new Vector3(Math.hypot(x, y), bore.grid.rows * bore.grid.du, over.grid.rows * over.grid.du);
  return {
    ...side,
    uCorner: { value: over === faces[i] ? 1 : 2 },
    uCornerSize: { value: size },
    uSlope: { value: new Vector2(-nx, nz) },
  };
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

function bodyObjects(mesh: BodyMesh, running: WornTextures, shared: Shared) {
  const made = (from: number, to: number, isUncut: boolean) => {
    const geometry = geometryOf({ ...mesh, index: mesh.index.slice(from, to) });
    geometry.setAttribute('inward', new BufferAttribute(mesh.inward, 3));
    const material = new ShaderMaterial({
      vertexShader: BODY_VERTEX,
      fragmentShader: BODY_FRAGMENT,
      uniforms: { ...shared, ...ofDepth(running), uUncut: { value: isUncut } },
      polygonOffset: true,
      polygonOffsetFactor: 1,
      polygonOffsetUnits: 1,
    });
    return still(new Mesh(geometry, material));
  };
  const whole = made(0, mesh.uncutFrom, false);
  return mesh.uncutFrom < mesh.index.length ? [whole, made(mesh.uncutFrom, mesh.index.length, true)] : [whole];
}

function edgeObject({ edges }: BodyMesh, running: WornTextures, shared: Shared) {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(edges.position, 3));
  geometry.setAttribute('place', new BufferAttribute(edges.place, 2));
  geometry.setAttribute('inward', new BufferAttribute(edges.inward, 3));
  // An edge has no side: its "normal" says whether it lies at the face.
  const upper = edges.inward.map((value, i) => (i % 3 === 2 && value !== 0 ? 1 : 0));
  geometry.setAttribute('normal', new BufferAttribute(upper, 3));
  const material = new ShaderMaterial({
    vertexShader: BODY_VERTEX,
    fragmentShader: EDGE_FRAGMENT,
    uniforms: { ...shared, ...ofDepth(running), uInk: { value: EDGE_INK } },
    transparent: true,
    depthWrite: false,
  });
  return still(new LineSegments(geometry, material));
}

function geometryOf(mesh: Pick<FaceMesh, 'position' | 'normal' | 'place' | 'index'>): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(mesh.position, 3));
  geometry.setAttribute('normal', new BufferAttribute(mesh.normal, 3));
  geometry.setAttribute('place', new BufferAttribute(mesh.place, 2));
  geometry.setIndex(new BufferAttribute(mesh.index, 1));
  return geometry;
}

/** Stands where the part frame is and is always drawn: the shaders move vertices, so boxes would be wrong. */
function still<T extends Object3D>(object: T): T {
  object.frustumCulled = false;
  object.matrixAutoUpdate = false;
  return object;
}

const difference = (a: readonly number[], b: readonly number[]) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]] as const;
