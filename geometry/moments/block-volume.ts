import type { CellBlock } from '../depth/chart.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Mm3 } from '../units.ts';
import { volumeBetween } from './row-sums.ts';

/**
 * Metal lost under a block of cells, mm3: what `lostMetal` gives, of these cells alone. For figures that follow the brush.
 * Accuracy: exact for the map's cells and samples; cells cut by the face's edge count their share.
 */
export function blockVolume(face: Face, map: DepthMap, block: CellBlock): Mm3 {
  const { cover } = face;
  const { depth, slot, samples, grid } = map;
  let volume = 0;
  for (let row = block.row0; row <= block.row1; row++) {
    const law = face.metal(row)?.volume ?? null;
    const plain = law !== null && law.first === null && law.second === null ? law.plain : null;
    const u = grid.u0 + (row + 0.5) * grid.du;
    for (let k = 0; k < block.columns; k++) {
      const column = (block.column0 + k) % grid.columns;
      const cell = row * grid.columns + column;
      const d = depth[cell];
      if (d === 0) continue;
      const share = cover === null ? 1 : cover[cell];
      if (slot[cell] < 0) {
        volume +=
          share *
          (plain === null
            ? volumeBetween(face, row, column, u, grid.v0 + (column + 0.5) * grid.dv, 0, d)
            : d * (plain[0] + d * (plain[1] + d * (plain[2] + d * plain[3]))));
        continue;
      }
      const first = slot[cell] * SAMPLES;
      for (let i = 0; i < SAMPLES; i++) {
        const atU = grid.u0 + (row + SAMPLE_U[i]) * grid.du;
        const atV = grid.v0 + (column + SAMPLE_V[i]) * grid.dv;
        volume += (share * volumeBetween(face, row, column, atU, atV, 0, samples[first + i])) / SAMPLES;
      }
    }
  }
  return volume;
}
