import { type DepthMap, deepestOf, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { FillMap } from '../fill/fill-map.ts';
import { type Face, isCutCell, toFacePoint } from '../part/face.ts';
import type { FacePoint, Mm, Mm2 } from '../units.ts';
import { type Rings, rowWalk } from './row-walk.ts';

/** A face that runs against another, with its wear and what is filled of it. */
export interface RunningFace {
  readonly face: Face;
  readonly map: DepthMap;
  readonly fill: FillMap;
  readonly coated: boolean;
}

/** What becomes of a place: sound or under the limit of damage, left to the coat, filled. */
const PLACE_KINDS = ['sound', 'left', 'filled'] as const;
type PlaceKind = (typeof PLACE_KINDS)[number];

/** What is missing of a running face, by what becomes of it. A bin is a sector of a ring, ring by ring. */
export interface FaceResiduals {
  readonly rings: Rings;
  /** Shares of the turn that a ring is parted in. */
  readonly sectors: number;
  readonly depths: Readonly<Record<PlaceKind, Depths>>;
  /** Nominal area of the face in each ring, mm2; 0 where the face has none. */
  readonly weight: Float64Array;
  /** The depths that `capped` is worked out for. */
  readonly caps: readonly Mm[];
  /** Of all its places. */
  readonly deepest: Mm;
}

/** The depths of one kind of place. */
export interface Depths {
  /** By bin; Infinity and -Infinity where there is none of the kind. */
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** By bin, where, see `placeOf`. */
  readonly leastAt: Int32Array;
  readonly mostAt: Int32Array;
  /** By ring: weight times depth. */
  readonly sum: Float64Array;
  /** By cap, then by ring: weight times depth, no depth counted as more than the cap. */
  readonly capped: readonly Float64Array[];
}

/**
 * What is missing of a running face, ring by ring about the shaft. A cell counts in the ring of its centre; its share that is no face
 * does not count. One pass over the cells answers for every way to fill them.
 * @param caps     how far under the surface a fill may stop, mm
 * @param sectors  for a picture of the face; 1 takes each ring whole
 * Accuracy: the map's cells and samples. Source: geometry definitions, "What is filled"; tests/geometry/clearance/gap.test.ts
 */
export function faceResiduals(
  { face, map, fill }: RunningFace,
  rings: Rings,
  caps: readonly Mm[],
  sectors: number,
): FaceResiduals {
  const { grid, depth, slot, samples } = map;
  const { cover } = face;
  const { label } = fill;
  const bins = rings.count * sectors;
  const sums = sumsFor(bins, rings.count, caps);
  const { least, most, leastAt, mostAt, sum } = sums;
  const weight = new Float64Array(rings.count);
  const kindOf = Uint8Array.from([0, ...fill.regions.map(({ action }) => (action === 'fill' ? 2 : 1))]);
  const onFace = new Uint8Array(SAMPLES);
  const walk = rowWalk(face, rings, sectors);

  for (let row = 0; row < grid.rows; row++) {
    if (!walk.place(row)) continue;
    for (let column = 0; column < grid.columns; column++) {
      const ring = walk.ring[column];
      const cell = row * grid.columns + column;
      if (ring < 0 || (cover !== null && cover[cell] === 0)) continue;
      const area = walk.area[column] * (cover === null ? 1 : cover[cell]);
      const kind = kindOf[label[cell]];
      const bin = kind * bins + ring * sectors + walk.sector[column];
      const mm = depth[cell];
      if (slot[cell] >= 0) {
        // What the samples of a cut cell stand for is the part of it that is face; a sliver that holds none has no depth of its own.
        const count = isCutCell(face, cell) ? samplesOnFace(face, row, column, onFace) : SAMPLES;
        if (count > 0) weight[ring] += area;
        for (let i = 0; i < SAMPLES && count > 0; i++) {
          if (count < SAMPLES && onFace[i] === 0) continue;
          const at = cell * (SAMPLES + 1) + 1 + i;
          add(sums, bin, kind, ring, area / count, samples[slot[cell] * SAMPLES + i], at);
        }
        continue;
      }
      weight[ring] += area;
      // As `add` does, without the call: nearly all cells come this way.
      if (mm < least[bin]) {
        least[bin] = mm;
        leastAt[bin] = cell * (SAMPLES + 1);
      }
      if (mm > most[bin]) {
        most[bin] = mm;
        mostAt[bin] = cell * (SAMPLES + 1);
      }
      if (mm === 0) continue;
      sum[kind * rings.count + ring] += area * mm;
      if (kind > 0) addCapped(sums, kind, ring, area, mm);
    }
  }
  const depthsOf = (kind: number): Depths => {
    const byBin = [kind * bins, (kind + 1) * bins] as const;
    const inRings = (all: Float64Array, list: number): Float64Array =>
      all.subarray((3 * list + kind) * rings.count, (3 * list + kind + 1) * rings.count);
    return {
      least: least.subarray(...byBin),
      most: most.subarray(...byBin),
      leastAt: leastAt.subarray(...byBin),
      mostAt: mostAt.subarray(...byBin),
      sum: inRings(sum, 0),
      capped: caps.map((_, i) => inRings(sums.capped, i)),
    };
  };
  return {
    rings,
    sectors,
    depths: { sound: depthsOf(0), left: depthsOf(1), filled: depthsOf(2) },
    weight,
    caps,
    deepest: deepestOf(map),
  };
}

/** All kinds one after the other, as PLACE_KINDS has them; of what is capped, cap by cap. */
interface Sums extends Omit<Depths, 'capped'> {
  readonly rings: number;
  readonly caps: Float64Array;
  readonly capped: Float64Array;
}

function sumsFor(bins: number, rings: number, caps: readonly Mm[]): Sums {
  return {
    least: new Float64Array(3 * bins).fill(Infinity),
    most: new Float64Array(3 * bins).fill(-Infinity),
    leastAt: new Int32Array(3 * bins),
    mostAt: new Int32Array(3 * bins),
    sum: new Float64Array(3 * rings),
    rings,
    caps: Float64Array.from(caps),
    capped: new Float64Array(3 * rings * caps.length),
  };
}

/** Writes into `to`. */
function add(to: Sums, bin: number, kind: number, ring: number, share: Mm2, mm: Mm, at: number): void {
  if (mm < to.least[bin]) {
    to.least[bin] = mm;
    to.leastAt[bin] = at;
  }
  if (mm > to.most[bin]) {
    to.most[bin] = mm;
    to.mostAt[bin] = at;
  }
  to.sum[kind * to.rings + ring] += share * mm;
  if (kind > 0) addCapped(to, kind, ring, share, mm);
}

/** Writes into `to`. */
function addCapped({ rings, caps, capped }: Sums, kind: number, ring: number, share: Mm2, mm: Mm): void {
  for (let i = 0; i < caps.length; i++)
    capped[(3 * i + kind) * rings + ring] += share * (mm < caps[i] ? mm : caps[i]);
}

/** Marks the samples of a cell that lie on the face; writes into `on` and returns how many do. */
function samplesOnFace(face: Face, row: number, column: number, on: Uint8Array): number {
  const { u0, du, v0, dv } = face.grid;
  let count = 0;
  for (let i = 0; i < SAMPLES; i++) {
    on[i] = face.holds(u0 + (row + SAMPLE_U[i]) * du, v0 + (column + SAMPLE_V[i]) * dv) ? 1 : 0;
    count += on[i];
  }
  return count;
}

/** In the face's own coordinates a place that made the least or the most of a bin: the middle of a cell, or one of its samples. */
export function placeOf(face: Face, at: number): FacePoint {
  const { u0, du, v0, dv, columns } = face.grid;
  const cell = Math.floor(at / (SAMPLES + 1));
  const sample = at - cell * (SAMPLES + 1) - 1;
  const row = Math.floor(cell / columns);
  const [u, v] = sample < 0 ? [0.5, 0.5] : [SAMPLE_U[sample], SAMPLE_V[sample]];
  return toFacePoint(face, u0 + (row + u) * du, v0 + (cell - row * columns + v) * dv);
}
