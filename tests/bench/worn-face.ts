/** A round face of about two million cells, worn all over, for the benches. */
import { createDepthMap, type DepthMap } from '../../geometry/depth/depth-map.ts';
import type { Face } from '../../geometry/part/face.ts';
import { wearPlate } from '../../geometry/part/wear-plate.ts';

export function largeFace(): Face {
  const part = wearPlate(
    {
      id: 'plate',
      kind: 'wear-plate',
      density: 0.0072,
      shape: { kind: 'round', outerRadius: 340, boreRadius: 100, coneAngle: 0, holes: [] },
      thickness: 25,
      leastThickness: null,
      marks: [],
      sections: [],
    },
    0.5,
  );
  return part.faces[0];
}

/** Depths of 1 to 4 mm from a fixed sequence. */
export function wornMap(face: Face): DepthMap {
  const map = createDepthMap(face.grid);
  let seed = 12345;
  for (let cell = 0; cell < map.depth.length; cell++) {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    map.depth[cell] = 1 + (3 * seed) / 2 ** 32;
  }
  return map;
}

/** The plain sum of the same cells: the unit that the engine's work is counted in. */
export function plainSum(map: DepthMap): number {
  const { depth } = map;
  let sum = 0;
  for (let cell = 0; cell < depth.length; cell++) sum += depth[cell];
  return sum;
}
