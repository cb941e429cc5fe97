import type { CellBlock } from '../depth/chart.ts';
import { type DepthMap, SAMPLES } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Mm3 } from '../units.ts';

/**
 * Metal lost under a block of cells, mm3: what `lostMetal` gives, of these cells alone. For figures that follow the brush.
 * Accuracy: exact for the map's cells and samples; cells cut by the face's edge count their share.
 */
export function blockVolume(face: Face, map: DepthMap, block: CellBlock): Mm3 {
  const { cover } = face;
  const { depth, slot, samples, grid } = map;
  let volume = 0;
  for (let row = block.row0; row <= block.row1; row++) {
    let [p1, p2, p3, p4] = [0, 0, 0, 0];
    for (let k = 0; k < block.columns; k++) {
      const cell = row * grid.columns + ((block.column0 + k) % grid.columns);
      const d = depth[cell];
      if (d === 0) continue;
      const share = cover === null ? 1 : cover[cell];
      p1 += share * d;
      if (slot[cell] < 0) {
        p2 += share * d * d;
        p3 += share * d ** 3;
        p4 += share * d ** 4;
        continue;
      }
      const first = slot[cell] * SAMPLES;
      for (let i = first; i < first + SAMPLES; i++) {
        const s = samples[i];
        p2 += (share * s * s) / SAMPLES;
        p3 += (share * s ** 3) / SAMPLES;
        p4 += (share * s ** 4) / SAMPLES;
      }
    }
    const [c1, c2, c3, c4] = face.metal(row).volume;
    volume += c1 * p1 + c2 * p2 + c3 * p3 + c4 * p4;
  }
  return volume;
}
