import type { Object3D, Texture } from 'three';
import type { CellBlock } from '../../geometry/depth/chart.ts';
import { bodyMesh } from '../../geometry/part/body-mesh.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import { bodyObjects, edgeObject } from './body-objects.ts';
import { cornerOf } from './corner-uniforms.ts';
import type { DepthScale } from './depth-scale.ts';
import { wholeBlock } from './depth-texels.ts';
import { faceObject } from './face-object.ts';
import { rampTexture } from './face-texture.ts';
import { COLUMNS, disposeTextures, takeBlock, wornTextures } from './worn-textures.ts';

/** Everything the graphics chip needs of one part: meshes, materials and textures, made together and thrown away together. */
export interface DrawnPart {
  readonly objects: readonly Object3D[];
  /** Takes over the maps of the part that have changed since. */
  takeAll(live: LivePart): void;
  /** Takes over a block a tool has touched. */
  take(live: LiveFace, block: CellBlock): void;
  look(how: { readonly times: number; readonly scale: DepthScale; readonly pixel: number }): void;
  dispose(): void;
}

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
  const objects = [
    ...faceMeshes,
    ...bodyObjects(body, running, shared),
    edgeObject(body, running, { ...shared, ...cornerOf(part, worn, 0) }),
  ];
  return {
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
      for (const textures of worn) disposeTextures(textures);
      shared.uRamp.value.dispose();
    },
  };
}
