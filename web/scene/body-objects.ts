import { BufferAttribute, BufferGeometry, LineSegments, Mesh, ShaderMaterial } from 'three';
import type { BodyMesh } from '../../geometry/part/mesh.ts';
import { BODY_FRAGMENT, BODY_VERTEX, EDGE_FRAGMENT } from './body-shader.ts';
import { geometryOf, still } from './mesh-geometry.ts';
import { ofDepth, type Uniforms, type WornTextures } from './worn-textures.ts';

/** Darkness of the drawn edges. */
const EDGE_INK = 0.62;

/** Walls and back of a part; its edges sink with the running face. */
export function bodyObjects(mesh: BodyMesh, running: WornTextures, shared: Uniforms) {
  const { uncutFrom, innerFrom, index } = mesh;
  return [
    { from: 0, to: uncutFrom, isUncut: false, isInner: false },
    { from: uncutFrom, to: innerFrom, isUncut: true, isInner: false },
    { from: innerFrom, to: index.length, isUncut: false, isInner: true },
  ]
    .filter(({ from, to }) => from < to)
    .map(({ from, to, isUncut, isInner }) => {
      const geometry = geometryOf({ ...mesh, index: index.slice(from, to) });
      geometry.setAttribute('inward', new BufferAttribute(mesh.inward, 3));
      const material = new ShaderMaterial({
        vertexShader: BODY_VERTEX,
        fragmentShader: BODY_FRAGMENT,
        uniforms: {
          ...shared,
          ...ofDepth(running),
          uUncut: { value: isUncut },
          uInner: { value: isInner },
        },
        polygonOffset: true,
        polygonOffsetFactor: 1,
        polygonOffsetUnits: 1,
      });
      return still(new Mesh(geometry, material));
    });
}

/** The drawn edges. */
export function edgeObject({ edges }: BodyMesh, running: WornTextures, shared: Uniforms) {
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
