/** The vanes of an impeller as the graphics chip takes them: a mesh a face and the lines of their edges. */
import {
  BufferAttribute,
  BufferGeometry,
  DataTexture,
  FloatType,
  LineSegments,
  Mesh,
  NearestFilter,
  RGBAFormat,
  ShaderMaterial,
  Vector2,
  Vector3,
  Vector4,
} from 'three';
import { type VaneFaceName, vaneEdges, vaneFaceOf, vaneMesh } from '../../geometry/part/vane-mesh.ts';
import type { VaneShape } from '../../geometry/part/vane-shape.ts';
import { shapeOf } from './face-object.ts';
import { FACE_FRAGMENT, VANE_VERTEX } from './face-shader.ts';
import { geometryOf, still } from './mesh-geometry.ts';
import { VANE_EDGE_FRAGMENT, VANE_EDGE_VERTEX, VANE_ROLES } from './vane-glsl.ts';
import { ofDepth, sinkSteps, type Uniforms, type WornTextures } from './worn-textures.ts';

/** Steps of the camber kept for the shaders: between two of them it is met to 0.001 mm. */
const CAMBER_STEPS = 512;
/** Darkness of the drawn edges. */
const EDGE_INK = 0.62;

/** The camber of a vane, ready to be read at any place along it. */
export function camberTexture(shape: VaneShape): DataTexture {
  const texels = new Float32Array((CAMBER_STEPS + 1) * 4);
  for (let i = 0; i <= CAMBER_STEPS; i++) {
    const { x, y, tx, ty } = shape.camber((shape.length * i) / CAMBER_STEPS);
    texels.set([x, y, tx, ty], i * 4);
  }
  const texture = new DataTexture(texels, CAMBER_STEPS + 1, 1, RGBAFormat, FloatType);
  // Not every tablet filters 32-bit floats; the shader does it itself.
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
}

/** One vane: its objects, and what says whether anything of it is worn. */
export interface DrawnVane {
  readonly objects: readonly (
    | Mesh<BufferGeometry, ShaderMaterial>
    | LineSegments<BufferGeometry, ShaderMaterial>
  )[];
  /** To be called when the textures of one of its faces have changed. */
  follow(): void;
}

/**
 * @param turn    from the vane whose camber the texture holds, rad
 * @param worn    textures of its faces, in any order
 */
export function drawnVane(
  shape: VaneShape,
  turn: number,
  camber: DataTexture,
  worn: readonly WornTextures[],
  shared: Uniforms,
): DrawnVane {
  const isWorn = { value: false };
  const uniforms = { ...shared, ...sizesOf(shape, turn, camber), ...sunkenOf(worn), uVaneWorn: isWorn };
  const meshes = worn.map((textures) => vaneFaceObject(shape, textures, uniforms));
  const edges = edgeObject(shape, uniforms);
  return {
    objects: [...meshes.map(({ object }) => object), edges],
    follow() {
      isWorn.value = worn.some((textures) => textures.isWorn.value);
      for (const mesh of meshes) mesh.follow();
    },
  };
}

function vaneFaceObject(shape: VaneShape, worn: WornTextures, uniforms: Uniforms) {
  const name = roleOf(worn);
  const mesh = vaneMesh(shape, worn.face, name);
  const geometry = geometryOf(mesh);
  geometry.setAttribute('groove', new BufferAttribute(mesh.across, 3));
  geometry.setAttribute('inVane', new BufferAttribute(mesh.inVane, 3));
  const material = new ShaderMaterial({
    vertexShader: VANE_VERTEX,
    fragmentShader: FACE_FRAGMENT,
    defines: { VANE: '' },
    uniforms: {
      ...uniforms,
      ...ofDepth(worn),
      ...shapeOf(worn.face, worn),
      uRole: { value: VANE_ROLES.indexOf(name) + 1 },
      // The mesh itself ends where the face does.
      uHasCover: { value: false },
      uLeastCover: { value: 0.5 },
      uCast: { value: name !== 'tip' },
    },
    // Edges are drawn on the very same places.
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
  const follow = () => geometry.setDrawRange(0, worn.isWorn.value ? mesh.index.length : mesh.innerFrom);
  follow();
  return { object: still(new Mesh(geometry, material)), follow };
}

/** The edges of a vane, where nothing about them is worn. */
function edgeObject(shape: VaneShape, uniforms: Uniforms) {
  const edges = vaneEdges(shape);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(edges.position, 3));
  geometry.setAttribute('inVane', new BufferAttribute(edges.inVane, 3));
  const material = new ShaderMaterial({
    vertexShader: VANE_EDGE_VERTEX,
    fragmentShader: VANE_EDGE_FRAGMENT,
    uniforms: { ...uniforms, uRole: { value: 0 }, uInk: { value: EDGE_INK } },
    transparent: true,
    depthWrite: false,
  });
  return still(new LineSegments(geometry, material));
}

function sizesOf(shape: VaneShape, turn: number, camber: DataTexture): Uniforms {
  const { length, nose, noseThickness } = shape;
  const { tx, ty, nx, ny } = shape.camber(0);
  const thickness = [0, length].map(shape.thickness);
  return {
    uVane: { value: new Vector4(length, ...thickness, nose === 'round' ? noseThickness / 2 : 0) },
    uVaneHeight: {
      value: new Vector4(...cubicThrough([0, 1, 2, 3].map((i) => shape.height((length * i) / 3)))),
    },
    uCamber: { value: camber },
    uCamberSteps: { value: CAMBER_STEPS },
    uTurn: { value: new Vector2(Math.cos(turn), Math.sin(turn)) },
    uSweep: { value: Math.sign(nx * ty - ny * tx) },
  };
}

/** Powers 0 to 3 of the cubic that takes four values at 0, 1/3, 2/3 and 1. */
function cubicThrough([a, b, c, d]: readonly number[]): [number, number, number, number] {
  return [
    a,
    (-11 * a + 18 * b - 9 * c + 2 * d) / 2,
    (9 * (2 * a - 5 * b + 4 * c - d)) / 2,
    (9 * (-a + 3 * b - 3 * c + d)) / 2,
  ];
}

/** How far each face of the vane has sunk. */
function sunkenOf(worn: readonly WornTextures[]): Uniforms {
  const of = (name: VaneFaceName) => worn.find((textures) => roleOf(textures) === name) as WornTextures;
  const [side, tip, lead, trail] = [of('pressure'), of('tip'), of('leading-edge'), of('trailing-edge')];
  const gridOf = ({ face }: WornTextures) => face.grid;
  const half = (textures: WornTextures) => -gridOf(textures).v0;
  const top = (textures: WornTextures) => gridOf(textures).rows * gridOf(textures).du;
  return {
    uPressure: { value: side.sink },
    uSuction: { value: of('suction').sink },
    uTip: { value: tip.sink },
    uLead: { value: lead.sink },
    uTrail: { value: trail.sink },
    uSideSteps: { value: sinkSteps(side.sinkOf) },
    uTipSteps: { value: sinkSteps(tip.sinkOf) },
    uLeadSteps: { value: sinkSteps(lead.sinkOf) },
    uTrailSteps: { value: sinkSteps(trail.sinkOf) },
    uSideTop: { value: gridOf(side).columns * gridOf(side).dv },
    uHalves: { value: new Vector3(half(tip), half(lead), half(trail)) },
    uEdgeTops: { value: new Vector2(top(lead), top(trail)) },
  };
}

function roleOf({ face }: WornTextures): VaneFaceName {
  const on = vaneFaceOf(face.name);
  if (on === null) throw new Error(`vane-objects: ${face.name} is no face of a vane`);
  return on.name;
}
