import {
  BackSide,
  type BufferGeometry,
  Group,
  type LineSegments,
  Matrix4,
  Mesh,
  type Object3D,
  Plane,
  ReplaceStencilOp,
  ShaderMaterial,
  Vector3,
  Vector4,
} from 'three';
import type { CellBlock } from '../../../geometry/depth/chart.ts';
import type { Mm, Rad } from '../../../geometry/units.ts';
import type { LiveFace, LivePart } from '../../wear/live-faces.ts';
import type { DepthScale } from '../depth-scale.ts';
import { drawnPart } from '../drawn-part.ts';
import { still } from '../mesh-geometry.ts';
import { plateRadius } from './assembly-bounds.ts';
import { CUT_OF, type CutPart, capObject } from './cap-object.ts';
import { cutNormal } from './cut.ts';
import type { Facing } from './facing.ts';
import type { Pose } from './pose.ts';

/** Everything the graphics chip needs of plate and impeller assembled, made together and thrown away together. */
export interface DrawnAssembly {
  readonly root: Object3D;
  /** Takes over the maps that have changed since. */
  takeAll(plate: LivePart, rotor: LivePart): void;
  /** Takes over a block a tool has touched. */
  take(live: LiveFace, block: CellBlock): void;
  stand(pose: Pose): void;
  /** @param cut  angle of the cut; null closes it */
  open(cut: Rad | null): void;
  look(how: { readonly scale: DepthScale; readonly pixel: number; readonly mmAPixel: Mm }): void;
  dispose(): void;
}

type Drawn = Mesh<BufferGeometry, ShaderMaterial> | LineSegments<BufferGeometry, ShaderMaterial>;

/** How far a cut reaches, times the greatest radius: also where the parts are pulled apart. */
const REACH = 4;
/**
 * The plate is drawn whole, then its cut face, then the rotor: tips that reach into the plate would else be seen through its cut face,
 * which lies in front of them.
 */
const ORDER: Readonly<Record<CutPart, number>> = { plate: 0, rotor: 2 };
/** px between two lines of the hatching, at least. */
const HATCH = 9;

export function drawnAssembly(plate: LivePart, rotor: LivePart, facing: Facing): DrawnAssembly {
  const drawn = { plate: drawnPart(plate), rotor: drawnPart(rotor) };
  const objectsOf = (part: CutPart) => drawn[part].objects as readonly Drawn[];
  bend(objectsOf('plate'), facing);
  for (const { material } of objectsOf('rotor')) turnTips(material, facing);

  const plane = new Plane();
  const insides: Mesh<BufferGeometry, ShaderMaterial>[] = [];
  const groups = { plate: new Group(), rotor: new Group() };
  for (const part of ['plate', 'rotor'] as const) {
    groups[part].matrixAutoUpdate = false;
    for (const object of objectsOf(part)) {
      hideInMetal(object.material, part === 'rotor' ? rotor : plate);
      object.material.clipping = true;
      groups[part].add(object);
      object.renderOrder = ORDER[part];
      if (!(object instanceof Mesh)) continue;
      markStencil(object.material, 0);
      const inside = insideOf(object, CUT_OF[part]);
      inside.renderOrder = ORDER[part];
      insides.push(inside);
      groups[part].add(inside);
    }
  }
  const clipped = [...objectsOf('plate'), ...objectsOf('rotor'), ...insides];
  const reach = REACH * Math.max(facing.rotor.shape.outerRadius, plateRadius(facing));
  const caps = (['plate', 'rotor'] as const).map((part) => capObject(part, reach, ORDER[part] + 1));
  const root = new Group();
  root.add(groups.plate, groups.rotor, ...caps);

  const pose = (group: Group, matrix: Matrix4) => {
    group.matrix.copy(matrix);
    group.matrixWorldNeedsUpdate = true;
  };
  return {
    root,
    takeAll(livePlate, liveRotor) {
      drawn.plate.takeAll(livePlate);
      drawn.rotor.takeAll(liveRotor);
    },
    take(live, block) {
      drawn.plate.take(live, block);
      drawn.rotor.take(live, block);
    },
    stand({ height, turn }) {
      pose(groups.plate, new Matrix4().makeRotationX(Math.PI).setPosition(0, 0, height));
      pose(groups.rotor, new Matrix4().makeRotationZ(turn));
    },
    open(cut) {
      for (const { material } of clipped) material.clippingPlanes = cut === null ? null : [plane];
      for (const object of [...insides, ...caps]) object.visible = cut !== null;
      if (cut === null) return;
      const normal = new Vector3(...cutNormal(cut));
      // What lies behind a plane is clipped.
      plane.set(normal.clone().negate(), 0);
      const along = new Vector3(Math.cos(cut), Math.sin(cut), 0);
      for (const cap of caps) {
        cap.matrix.makeBasis(along, new Vector3(0, 0, 1), normal);
        cap.matrixWorldNeedsUpdate = true;
      }
    },
    look({ scale, pixel, mmAPixel }) {
      drawn.plate.look({ times: 1, scale, pixel });
      drawn.rotor.look({ times: 1, scale, pixel });
      for (const { material } of caps) {
        // In steps, so that the lines stay where they are while the eye comes nearer by a little.
        material.uniforms.uApart.value = 2 ** Math.ceil(Math.log2(HATCH * mmAPixel));
        material.uniforms.uPixel.value = pixel;
      }
    },
    dispose() {
      for (const { material } of insides) material.dispose();
      for (const { geometry, material } of caps) {
        geometry.dispose();
        material.dispose();
      }
      drawn.plate.dispose();
      drawn.rotor.dispose();
    },
  };
}

/** What is seen of a part where it is cut: its walls from within. Shares the shape and all that is known of the wear. */
function insideOf(object: Mesh<BufferGeometry, ShaderMaterial>, mark: number) {
  const { vertexShader, fragmentShader, uniforms, defines } = object.material;
  const material = new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms,
    defines: { ...defines, INSIDE: '' },
    side: BackSide,
    clipping: true,
  });
  markStencil(material, mark);
  return still(new Mesh(object.geometry, material));
}

function markStencil(material: ShaderMaterial, mark: number): void {
  material.stencilWrite = true;
  material.stencilRef = mark;
  material.stencilZPass = ReplaceStencilOp;
}

/** Draws the plate as it follows the tips. Writes into the shapes, each array once: walls and back share theirs. */
function bend(objects: readonly Drawn[], facing: Facing): void {
  const bent = new Set<unknown>();
  for (const { geometry } of objects) {
    const { array } = geometry.getAttribute('position');
    if (bent.has(array)) continue;
    bent.add(array);
    for (let i = 0; i < array.length; i += 3)
      array[i + 2] += facing.bendAt(Math.hypot(array[i], array[i + 1]));
  }
}

/**
 * What stands within the metal, under the vanes, comes to light only where the shroud's front has worn off it. Writes into the material,
 * before it is first drawn.
 */
function hideInMetal(material: ShaderMaterial, { part }: LivePart): void {
  const front = part.faces.find(({ name }) => name === 'shroud/front');
  if (front === undefined || material.uniforms.uInner?.value !== true) return;
  const { u0, du, rows, v0 } = front.grid;
  material.defines = { ...material.defines, IN_METAL: '' };
  material.uniforms.uLaidOpen = { value: new Vector3(u0, u0 + rows * du, v0) };
}

/** Writes into the material, before it is first drawn. */
function turnTips(material: ShaderMaterial, { rotor: { shape } }: Facing): void {
  const { vanes, outerRadius } = shape;
  const rise = (vanes.heightOutlet - vanes.heightInlet) / (outerRadius - vanes.inletRadius);
  material.defines = { ...material.defines, TURNED_TIPS: '' };
  material.uniforms.uRake = { value: new Vector4(vanes.inletRadius, vanes.heightInlet, rise, outerRadius) };
}
