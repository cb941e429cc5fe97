/** How a change of a surface that was read bears on what is made of it: on the metal lost, the filler, and the pull of a rotor. */
import type { DepthMap } from '../depth/depth-map.ts';
import type { Places } from '../depth/kriging/kriging.ts';
import { placesOf } from '../depth/reading-places.ts';
import type { FillMap } from '../fill/fill-map.ts';
import type { Face } from '../part/face.ts';
import type { Density, Mm } from '../units.ts';
import { volumeBetween } from './row-sums.ts';

/** A face whose depth readings decide, in part. */
export interface ReadFace {
  readonly face: Face;
  readonly map: DepthMap;
  readonly fill: FillMap;
  /** 1 where they decide, row-major. */
  readonly decides: Uint8Array;
  readonly coated: boolean;
}

/** What a mm more of depth does, place by place: an array a quantity, a number a place. */
export interface ReadWeights {
  readonly places: Places;
  /** mm2: filler, and metal lost, per mm of depth. */
  readonly filled: Float64Array;
  readonly lost: Float64Array;
  /** g: first moment of filler and coat put in less metal lost, per mm of depth, about the shaft. */
  readonly netX: Float64Array;
  readonly netY: Float64Array;
}

export interface Densities {
  readonly metal: Density;
  readonly filler: Density;
  readonly coat: Density;
}

/** Half the step of depth over which the change of metal is taken, mm. */
const STEP: Mm = 0.01;

/**
 * The weights of a mark's readings on all faces it is on; those have the same grid, and a place of one is the same place on each.
 * The cells of a square block stand at one place, so that there are at most about `most` of them.
 */
export function readWeights(faces: readonly ReadFace[], densities: Densities, most: number): ReadWeights {
  const [{ face: one }] = faces;
  const { rows, columns, u0, du, v0, dv } = one.grid;
  const size = blockSize(faces, most);
  const across = Math.ceil(columns / size);
  const count = Math.ceil(rows / size) * across;
  const sums = { filled: new Float64Array(count), lost: new Float64Array(count) };
  const [netX, netY] = [new Float64Array(count), new Float64Array(count)];
  const [atU, atV] = [new Float64Array(count), new Float64Array(count)];
  for (const read of faces) {
    const here = {
      lost: new Float64Array(count),
      net: new Float64Array(count),
      u: new Float64Array(count),
      v: new Float64Array(count),
      depth: new Float64Array(count),
    };
    for (let row = 0; row < rows; row++) {
      const u = u0 + (row + 0.5) * du;
      for (let column = 0; column < columns; column++) {
        const cell = row * columns + column;
        const depth = read.map.depth[cell];
        if (read.decides[cell] === 0 || depth <= 0) continue;
        const v = v0 + (column + 0.5) * dv;
        const amount = slope(read.face, row, column, u, v, depth);
        if (amount === 0) continue;
        const action = actionAt(read, cell, depth);
        const block = Math.floor(row / size) * across + Math.floor(column / size);
        here.lost[block] += amount;
        here.net[block] += amount * (putIn(action, read.coated, densities) - densities.metal);
        here.u[block] += amount * u;
        here.v[block] += amount * v;
        here.depth[block] += amount * depth;
        if (action === 'fill') sums.filled[block] += amount;
      }
    }
    for (let block = 0; block < count; block++) {
      const amount = here.lost[block];
      if (amount === 0) continue;
      const [u, v] = [here.u[block] / amount, here.v[block] / amount];
      const [x, y] = read.face.position(u, v, here.depth[block] / amount);
      netX[block] += here.net[block] * x;
      netY[block] += here.net[block] * y;
      sums.lost[block] += amount;
      atU[block] += here.u[block];
      atV[block] += here.v[block];
    }
  }
  const used = Array.from(sums.lost, (_, block) => block).filter((block) => sums.lost[block] > 0);
  const of = (values: Float64Array) => Float64Array.from(used, (block) => values[block]);
  return {
    places: placesOf(
      one,
      used.map((block) => [atU[block] / sums.lost[block], atV[block] / sums.lost[block]] as const),
    ),
    filled: of(sums.filled),
    lost: of(sums.lost),
    netX: of(netX),
    netY: of(netY),
  };
}

function blockSize(faces: readonly ReadFace[], most: number): number {
  let decided = 0;
  for (const { decides } of faces) {
    let here = 0;
    for (let cell = 0; cell < decides.length; cell++) here += decides[cell];
    if (here > decided) decided = here;
  }
  return Math.max(1, Math.ceil(Math.sqrt(decided / most)));
}

/** Metal of a cell per mm of depth, at its depth, mm2; what lies off the face does not count. */
function slope(face: Face, row: number, column: number, u: number, v: number, depth: Mm): number {
  const share = face.cover === null ? 1 : face.cover[row * face.grid.columns + column];
  if (share === 0) return 0;
  const from = Math.max(0, depth - STEP);
  return (share * volumeBetween(face, row, column, u, v, from, depth + STEP)) / (depth + STEP - from);
}

function actionAt({ fill }: ReadFace, cell: number, depth: Mm): 'fill' | 'leave' | null {
  const label = fill.label[cell];
  if (label === 0) return null;
  const { action } = fill.regions[label - 1];
  return action === 'fill' && depth <= fill.allowance ? null : action;
}

/** Density of what a mm more of depth is made up with. */
function putIn(action: 'fill' | 'leave' | null, coated: boolean, { filler, coat }: Densities): Density {
  if (action === 'fill') return filler;
  return action === 'leave' && coated ? coat : 0;
}
