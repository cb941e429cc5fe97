/**
 * The metal that two worn faces share at their corner: it lies below both, and is lost, or filled, once.
 */

import { depthAt } from '../depth/depth-at.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { Face, Moment, RowMetal } from '../part/face.ts';
import type { Corner, SidePlace } from '../part/part.ts';
import type { Mm } from '../units.ts';
import { NO_METAL } from './integrate.ts';
import type { Metal } from './metal.ts';
import type { MetalSum } from './row-sums.ts';
import { between } from './row-sums.ts';

/** Which layer of a face counts: from this depth to the worn surface, where `holds(cell)`. */
export interface Layer {
  readonly map: DepthMap;
  readonly from: Mm;
  holds(cell: number): boolean;
}

/** Steps down through the metal, shares of a cell's height. */
const PACE = 0.5;
/** Rows are cut into this many lines; a whole cell then has a line every eighth of it. */
const LINES = 8;

/**
 * Metal below both faces of a corner and within both layers. Walks down from the `over` face along the depth, a line every eighth
 * of a cell, and asks the side at each step whether it has already taken that point.
 * Accuracy: 1 % of the shared metal, which is itself a small share of what is lost; tests/oracle/corner.test.ts
 */
export function sharedMetal(corner: Corner, over: Layer, side: Layer): Metal {
  const total = { ...NO_METAL };
  const reach = deepestByColumn(side, corner.side);
  const furthest = reach.reduce((most, depth) => Math.max(most, depth), 0);
  if (furthest <= side.from) return total;
  const { grid, cover } = corner.over;
  const { depth, slot, samples } = over.map;
  for (let row = 0; row < grid.rows; row++) {
    const u0 = grid.u0 + row * grid.du;
    const nearest = corner.seenFrom(u0, grid.v0, 0).depth;
    if (nearest >= furthest) break;
    const metal = corner.over.metal(row);
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      if (depth[cell] <= over.from && slot[cell] < 0) continue;
      const v0 = grid.v0 + column * grid.dv;
      const beside = columnOf(corner.side, corner.seenFrom(u0, v0 + grid.dv / 2, 0).v);
      if (reach[beside] <= nearest || !over.holds(cell)) continue;
      const whole = slot[cell] < 0;
      const lines = whole ? LINES : SAMPLES;
      const share = (cover === null ? 1 : cover[cell]) / lines;
      for (let i = 0; i < lines; i++) {
        const u = u0 + (whole ? (i + 0.5) / LINES : SAMPLE_U[i]) * grid.du;
        const v = v0 + (whole ? 0.5 : SAMPLE_V[i]) * grid.dv;
        const to = whole ? depth[cell] : samples[slot[cell] * SAMPLES + i];
        addLine(total, corner, metal, column, u, v, over.from, to, side, reach[beside], share);
      }
    }
  }
  return total;
}

/** Adds the shared slices of one line of metal, from depth `from` to `to` below (u, v). Writes into `total`. */
function addLine(
  total: MetalSum,
  corner: Corner,
  metal: RowMetal,
  column: number,
  u: number,
  v: number,
  from: Mm,
  to: Mm,
  side: Layer,
  reach: Mm,
  share: number,
): void {
  if (to <= from) return;
  const steps = Math.max(4, Math.ceil((to - from) / (corner.over.grid.du * PACE)));
  const step = (to - from) / steps;
  const first = corner.over.columnFirst[column];
  const second = corner.over.columnSecond[column];
  for (let i = 0; i < steps; i++) {
    const top = from + i * step;
    const place = corner.seenFrom(u, v, top + step / 2);
    if (place.depth <= side.from || place.depth >= reach || !isTaken(corner.side, side, place)) continue;
    const bottom = top + step;
    total.volume += share * between(metal.volume, top, bottom);
    total.x += share * momentBetween(metal.x, first, second, top, bottom);
    total.y += share * momentBetween(metal.y, first, second, top, bottom);
    total.z += share * momentBetween(metal.z, first, second, top, bottom);
    total.xz += share * momentBetween(metal.xz, first, second, top, bottom);
    total.yz += share * momentBetween(metal.yz, first, second, top, bottom);
  }
}

function momentBetween(terms: Moment, first: number, second: number, top: Mm, bottom: Mm): number {
  let value = 0;
  if (terms.plain !== null) value += between(terms.plain, top, bottom);
  if (terms.first !== null) value += first * between(terms.first, top, bottom);
  if (terms.second !== null) value += second * between(terms.second, top, bottom);
  return value;
}

function isTaken(face: Face, side: Layer, place: SidePlace): boolean {
  const { grid } = face;
  const row = Math.floor((place.u - grid.u0) / grid.du);
  if (row < 0 || row >= grid.rows) return false;
  if (!side.holds(row * grid.columns + columnOf(face, place.v))) return false;
  return depthAt(side.map, face, place.u, place.v) > place.depth;
}

function columnOf({ grid }: Face, v: number): number {
  const column = Math.floor((v - grid.v0) / grid.dv);
  return grid.wraps
    ? ((column % grid.columns) + grid.columns) % grid.columns
    : Math.max(0, Math.min(grid.columns - 1, column));
}

/** The deepest wear of each column of the side, mm. */
function deepestByColumn({ map }: Layer, { grid }: Face): Float32Array {
  const most = new Float32Array(grid.columns);
  for (let cell = 0; cell < map.depth.length; cell++) {
    const column = cell % grid.columns;
    if (map.depth[cell] > most[column]) most[column] = map.depth[cell];
  }
  for (let slot = 0; slot < map.slots; slot++) {
    const column = map.cellOfSlot[slot] % grid.columns;
    for (let i = slot * SAMPLES; i < (slot + 1) * SAMPLES; i++)
      most[column] = Math.max(most[column], map.samples[i]);
  }
  return most;
}
