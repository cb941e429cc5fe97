import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { type Face, isOnFace, toFacePoint } from '../part/face.ts';
import type { FacePoint, Mm } from '../units.ts';

/** A face that runs against another, with its wear and what is filled of it. */
export interface RunningFace {
  readonly face: Face;
  readonly map: DepthMap;
  readonly fill: FillMap;
  /** Thickness of all its coats together, mm; 0 where it is not coated. */
  readonly film: Mm;
}

/** Rings about the shaft, all of one width. */
export interface Rings {
  readonly from: Mm;
  readonly width: Mm;
  readonly count: number;
}

/** How far one state of a face lies below its nominal surface, ring by ring. */
export interface Residuals {
  readonly least: Float64Array;
  /** Summed over the weights; divide by `weight`. */
  readonly sum: Float64Array;
  readonly most: Float64Array;
  /** Where the least and the most of a ring are, in the face's own coordinates. */
  readonly leastAt: (FacePoint | null)[];
  readonly mostAt: (FacePoint | null)[];
}

export interface FaceResiduals {
  readonly worn: Residuals;
  readonly filled: Residuals;
  /** Nominal area of the face in each ring, mm2; 0 where the face has none. */
  readonly weight: Float64Array;
  /** Sum of weight times the height z of the nominal surface in the part's own frame, mm3. */
  readonly height: Float64Array;
}

/**
 * What is missing of a running face against the radius, as it is worn and as the fill leaves it. A cell counts in the ring of its centre,
 * its share that is no face does not count.
 * @param allowance  the mm kept for the coat where it is filled; what the fill map says unless told otherwise
 * Accuracy: the map's cells and samples. Source: geometry definitions, "What is filled"; tests/geometry/clearance/gap.test.ts
 */
export function faceResiduals(
  { face, map, fill }: RunningFace,
  rings: Rings,
  allowance: Mm = fill.allowance,
): FaceResiduals {
  const { grid } = map;
  const worn = residuals(rings);
  const filled = residuals(rings);
  const weight = new Float64Array(rings.count);
  const height = new Float64Array(rings.count);
  const take = (ring: number, share: number, row: number, column: number, depth: Mm, isFilled: boolean) => {
    const left = isFilled ? Math.min(depth, allowance) : depth;
    add(worn, ring, share, depth, face, row, column);
    add(filled, ring, share, left, face, row, column);
  };
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      const cover = face.cover === null ? 1 : face.cover[cell];
      if (cover === 0) continue;
      const [x, y, z] = face.position(grid.u0 + (row + 0.5) * grid.du, grid.v0 + (column + 0.5) * grid.dv, 0);
      const ring = Math.floor((Math.hypot(x, y) - rings.from) / rings.width);
      if (ring < 0 || ring >= rings.count) continue;
      const area = face.cellArea(row, column) * cover;
      weight[ring] += area;
      height[ring] += area * z;
      const region = fill.label[cell];
      const isFilled = region > 0 && fill.regions[region - 1].action === 'fill';
      const slot = map.slot[cell];
      if (slot < 0) {
        take(ring, area, row + 0.5, column + 0.5, map.depth[cell], isFilled);
        continue;
      }
      // What the samples of a cut cell stand for is the part of it that is face.
      const on = Array.from({ length: SAMPLES }, (_, i) => i).filter((i) =>
        isOnFace(face, cell, row + SAMPLE_U[i], column + SAMPLE_V[i]),
      );
      for (const i of on) {
        const depth = map.samples[slot * SAMPLES + i];
        take(ring, area / on.length, row + SAMPLE_U[i], column + SAMPLE_V[i], depth, isFilled);
      }
      if (on.length === 0) take(ring, area, row + 0.5, column + 0.5, map.depth[cell], isFilled);
    }
  }
  return { worn, filled, weight, height };
}

function residuals({ count }: Rings): Residuals {
  return {
    least: new Float64Array(count).fill(Infinity),
    sum: new Float64Array(count),
    most: new Float64Array(count).fill(-Infinity),
    leastAt: Array.from({ length: count }, () => null),
    mostAt: Array.from({ length: count }, () => null),
  };
}

/** Writes into `to`. Row and column count in cells. */
function add(
  to: Residuals,
  ring: number,
  share: number,
  depth: Mm,
  face: Face,
  row: number,
  column: number,
): void {
  to.sum[ring] += share * depth;
  if (depth < to.least[ring]) {
    to.least[ring] = depth;
    to.leastAt[ring] = pointOf(face, row, column);
  }
  if (depth > to.most[ring]) {
    to.most[ring] = depth;
    to.mostAt[ring] = pointOf(face, row, column);
  }
}

const pointOf = (face: Face, row: number, column: number): FacePoint =>
  toFacePoint(face, face.grid.u0 + row * face.grid.du, face.grid.v0 + column * face.grid.dv);
