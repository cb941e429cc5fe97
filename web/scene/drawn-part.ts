import type { Object3D, Texture } from 'three';
import type { CellBlock } from '../../geometry/depth/chart.ts';
import { bodyMeshes } from '../../geometry/part/body-mesh.ts';
import type { Part } from '../../geometry/part/part.ts';
import { vaneFaceOf } from '../../geometry/part/vane-mesh.ts';
import type { LiveFace, LivePart } from '../wear/live-faces.ts';
import { bodyObjects, edgeObject } from './body-objects.ts';
import { cornerOf } from './corner-uniforms.ts';
import type { DepthScale } from './depth-scale.ts';
import { wholeBlock } from './depth-texels.ts';
import { faceObject } from './face-object.ts';
import { rampTexture } from './face-texture.ts';
import { camberTexture, type DrawnVane, drawnVane } from './vane-objects.ts';
import {
  COLUMNS,
  disposeTextures,
  takeBlock,
  type Uniforms,
  type WornTextures,
  wornTextures,
} from './worn-textures.ts';

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

export function drawnPart({ part }: LivePart): DrawnPart {
  const shared = {
    uTimes: { value: 1 },
    uStep: { value: 1 },
    uScaleTo: { value: 5 },
    uPixel: { value: 1 },
    uRamp: { value: rampTexture() as Texture },
  };
  const worn = texturesOf(part);
  const flat = worn.filter(({ face }) => vaneFaceOf(face.name) === null);
  const vanes = drawnVanes(part, worn, shared);
  const taken: LiveFace[] = [];
  const objects = [
    ...flat.map(({ face }) => faceObject(face, part, worn, part.faces.indexOf(face), shared)),
    ...vanes.vanes.flatMap((vane) => vane.objects),
    ...bodyMeshes(part, { segments: COLUMNS - 1 }).flatMap((mesh) => {
      const rides = worn.find(({ face }) => face === mesh.rides) ?? worn[0];
      const corner = cornerOf(part, worn, part.faces.indexOf(rides.face));
      return [...bodyObjects(mesh, rides, shared), edgeObject(mesh, rides, { ...shared, ...corner })];
    }),
  ];
  const follow = () => {
    for (const vane of vanes.vanes) vane.follow();
  };
  return {
    objects,
    takeAll(live) {
      for (const [i, face] of live.faces.entries()) {
        if (taken[i] !== face) takeBlock(worn[i], face.map, wholeBlock(face.map));
        taken[i] = face;
      }
      follow();
    },
    take(live, block) {
      const found = worn.find(({ face }) => face === live.face);
      if (found === undefined) return;
      takeBlock(found, live.map, block);
      follow();
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
      vanes.camber?.dispose();
      shared.uRamp.value.dispose();
    },
  };
}

/** The vanes of an impeller are alike: what is worked out of the cells of one holds for all. */
function texturesOf({ faces }: Part): readonly WornTextures[] {
  const first = new Map<string, WornTextures>();
  return faces.map((face) => {
    const kind = vaneFaceOf(face.name)?.name ?? face.name;
    const textures = wornTextures(face, first.get(kind));
    if (!first.has(kind)) first.set(kind, textures);
    return textures;
  });
}

/** The vanes of an impeller, which share one camber; of another part none. */
function drawnVanes(
  { body }: Part,
  worn: readonly WornTextures[],
  shared: Uniforms,
): { readonly vanes: readonly DrawnVane[]; readonly camber: Texture | null } {
  if (body.kind !== 'impeller') return { vanes: [], camber: null };
  const [first] = body.vanes;
  const camber = camberTexture(first);
  const vanes = body.vanes.map((shape) => {
    const faces = worn.filter(({ face }) => vaneFaceOf(face.name)?.vane === shape.number);
    return drawnVane(shape, shape.angle - first.angle, camber, faces, shared);
  });
  return { vanes, camber };
}
