import { BufferAttribute, BufferGeometry, type Object3D } from 'three';
import type { FaceMesh } from '../../geometry/part/face-mesh.ts';

/** Plain arrays as the graphics chip takes them. */
export function geometryOf(mesh: Pick<FaceMesh, 'position' | 'normal' | 'place' | 'index'>): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(mesh.position, 3));
  geometry.setAttribute('normal', new BufferAttribute(mesh.normal, 3));
  geometry.setAttribute('place', new BufferAttribute(mesh.place, 2));
  geometry.setIndex(new BufferAttribute(mesh.index, 1));
  return geometry;
}

/** Stands where the part frame is and is always drawn: the shaders move vertices, so boxes would be wrong. */
export function still<T extends Object3D>(object: T): T {
  object.frustumCulled = false;
  object.matrixAutoUpdate = false;
  return object;
}
