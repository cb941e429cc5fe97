import { type DepthMap, SAMPLES } from '../../geometry/depth/depth-map.ts';

/** A depth map as it stood at one moment. */
export interface FrozenMap {
  readonly depth: Float32Array;
  readonly slot: Int32Array;
  readonly samples: Float32Array;
  readonly cellOfSlot: Int32Array;
  readonly slots: number;
}

/** A copy of what a map holds. About 3 MB and 1 ms for the usual face. */
export function freezeMap(map: DepthMap): FrozenMap {
  return {
    depth: map.depth.slice(),
    slot: map.slot.slice(),
    samples: map.samples.slice(0, map.slots * SAMPLES),
    cellOfSlot: map.cellOfSlot.slice(0, map.slots),
    slots: map.slots,
  };
}

/** Puts a map back as it was. Writes into `map`. */
export function thawInto(map: DepthMap, frozen: FrozenMap): void {
  map.depth.set(frozen.depth);
  map.slot.set(frozen.slot);
  map.samples.set(frozen.samples);
  map.cellOfSlot.set(frozen.cellOfSlot);
  map.slots = frozen.slots;
}
