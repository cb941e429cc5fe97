/**
 * The metal that two worn faces share at their corner: it lies below both, and is lost, or filled, once.
 */

import { depthAt } from '../depth/depth-at.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { Face, Moment, Polynomial, RowMetal } from '../part/face.ts';
import type { Corner } from '../part/part.ts';
import type { Mm } from '../units.ts';
import { NO_METAL } from './integrate.ts';
import type { Metal } from './metal.ts';
import { upTo } from './tally.ts';

/** Which layer of a face counts: from this depth to the worn surface, where `holds(cell)`. */
export interface Layer {
  readonly map: DepthMap;
  readonly from: Mm;
  holds(cell: number): boolean;
}

/** Steps down through the metal, shares of a cell's height. */
const PACE = 0.25;
/** Rows are cut into this many lines; a whole cell then has a line every eighth of it. */
const LINES = 8;

/**
 * Metal below both faces of a corner and within both layers. Walks down from the `over` face along the depth, a line every eighth
 * of a cell, and asks the side at each step whether it has already taken that point.
 * Accuracy: 1 % of the shared metal, which is itself a small share of what is lost; tests/oracle/corner.test.ts
 */
export function sharedMetal(corner: Corner, over: Layer, side: Layer): Metal {
  const furthest = deepest(side);
  if (furthest <= side.from) return NO_METAL;
  const { face, grid } = { face: corner.over, grid: corner.over.grid };
  const total = { volume: 0, x: 0, y: 0, z: 0, xz: 0, yz: 0 };
  for (let row = 0; row < grid.rows; row++) {
    if (corner.seenFrom(grid.u0 + row * grid.du, grid.v0, 0).depth >= furthest) break;
    const metal = face.metal(row);
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      if (over.map.depth[cell] === 0 || !over.holds(cell)) continue;
      const share = face.cover === null ? 1 : face.cover[cell];
      const slot = over.map.slot[cell];
      const lines = slot < 0 ? LINES : SAMPLES;
      for (let i = 0; i < lines; i++) {
        const u = grid.u0 + (row + (slot < 0 ? (i + 0.5) / LINES : SAMPLE_U[i])) * grid.du;
        const v = grid.v0 + (column + (slot < 0 ? 0.5 : SAMPLE_V[i])) * grid.dv;
        const depth = slot < 0 ? over.map.depth[cell] : over.map.samples[slot * SAMPLES + i];
        addLine(total, corner, metal, u, v, over.from, depth, side, share / lines, column);
      }
    }
  }
  return total;
}

function addLine(
  total: { -readonly [K in keyof Metal]: number },
  corner: Corner,
  metal: RowMetal,
  u: number,
  v: number,
  from: Mm,
  to: Mm,
  side: Layer,
  share: number,
  column: number,
): void {
  if (to <= from) return;
  const steps = Math.max(4, Math.ceil((to - from) / (corner.over.grid.du * PACE)));
  const step = (to - from) / steps;
  for (let i = 0; i < steps; i++) {
    const middle = from + (i + 0.5) * step;
    const place = corner.seenFrom(u, v, middle);
    if (place.depth <= side.from || !isTaken(corner.side, side, place)) continue;
    const top = middle - step / 2;
    const bottom = middle + step / 2;
    const first = corner.over.columnFirst[column];
    const second = corner.over.columnSecond[column];
    const slice = (p: Polynomial): number => (upTo(p, bottom) - upTo(p, top)) * share;
    const moment = (m: Moment): number =>
      (m.plain === null ? 0 : slice(m.plain)) +
      (m.first === null ? 0 : slice(m.first) * first) +
      (m.second === null ? 0 : slice(m.second) * second);
    total.volume += slice(metal.volume);
    total.x += moment(metal.x);
    total.y += moment(metal.y);
    total.z += moment(metal.z);
    total.xz += moment(metal.xz);
    total.yz += moment(metal.yz);
  }
}

function isTaken(face: Face, side: Layer, place: { u: number; v: number; depth: Mm }): boolean {
  const { grid } = face;
  const row = Math.floor((place.u - grid.u0) / grid.du);
  if (row < 0 || row >= grid.rows) return false;
  const column = Math.floor((place.v - grid.v0) / grid.dv) % grid.columns;
  if (!side.holds(row * grid.columns + column)) return false;
  return depthAt(side.map, face, place.u, place.v) > place.depth;
}

function deepest(layer: Layer): Mm {
  let most = 0;
  const { map } = layer;
  for (let cell = 0; cell < map.depth.length; cell++) if (map.depth[cell] > most) most = map.depth[cell];
  for (let i = 0; i < map.slots * SAMPLES; i++) if (map.samples[i] > most) most = map.samples[i];
  return most;
}
