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

/** Steps down through the metal, shares of a row's height: the side's own steps are met to half of that. */
const PACE = 1 / 12;

/**
 * Metal below both faces of a corner and within both layers. Walks down from the `over` face along the depth, cell by cell, and
 * takes at each step the share of the cell that lies in front of the side's worn surface (the surface cuts the cell square to u).
 * Accuracy: 0.3 % of the shared metal, which is itself a small share of what is lost; tests/oracle/worn-plate.test.ts
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
    const span = corner.seenFrom(u0 + grid.du, grid.v0, 0).depth - nearest;
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      if (depth[cell] <= over.from && slot[cell] < 0) continue;
      const v0 = grid.v0 + column * grid.dv;
      const beside = columnOf(corner.side, corner.seenFrom(u0, v0 + grid.dv / 2, 0).v);
      if (reach[beside] <= nearest || !over.holds(cell)) continue;
      const held = cover === null ? 1 : cover[cell];
      const line = { corner, metal, column, side, reach: reach[beside], from: over.from };
      if (slot[cell] < 0) {
        addLine(total, line, u0 + grid.du / 2, v0 + grid.dv / 2, depth[cell], span, held);
        continue;
      }
      for (let i = 0; i < SAMPLES; i++) {
        const to = samples[slot[cell] * SAMPLES + i];
        addLine(
          total,
          line,
          u0 + SAMPLE_U[i] * grid.du,
          v0 + SAMPLE_V[i] * grid.dv,
          to,
          span / SAMPLES,
          held / SAMPLES,
        );
      }
    }
  }
  return total;
}

/** What the lines of one cell have in common. */
interface Line {
  readonly corner: Corner;
  readonly metal: RowMetal;
  readonly column: number;
  readonly side: Layer;
  /** Nothing behind the side is worn deeper than this here, mm. */
  readonly reach: Mm;
  readonly from: Mm;
}

/**
 * Adds the shared slices of one line of metal, down to depth `to` below (u, v). Writes into `total`.
 * @param span   how far the line reaches away from the side, mm: it stands for that much metal, half on either side of u
 * @param share  of a whole cell
 */
function addLine(total: MetalSum, line: Line, u: number, v: number, to: Mm, span: Mm, share: number): void {
  const { corner, metal, column, side, reach, from } = line;
  if (to <= from) return;
  const steps = Math.max(4, Math.ceil((to - from) / (corner.over.grid.du * PACE)));
  const step = (to - from) / steps;
  const first = corner.over.columnFirst[column];
  const second = corner.over.columnSecond[column];
  for (let i = 0; i < steps; i++) {
    const top = from + i * step;
    const place = corner.seenFrom(u, v, top + step / 2);
    if (place.depth - span / 2 >= reach) continue;
    const taken = share * shareTaken(corner.side, side, place, span);
    if (taken === 0) continue;
    const bottom = top + step;
    total.volume += taken * between(metal.volume, top, bottom);
    total.x += taken * momentBetween(metal.x, first, second, top, bottom);
    total.y += taken * momentBetween(metal.y, first, second, top, bottom);
    total.z += taken * momentBetween(metal.z, first, second, top, bottom);
    total.xz += taken * momentBetween(metal.xz, first, second, top, bottom);
    total.yz += taken * momentBetween(metal.yz, first, second, top, bottom);
  }
}

function momentBetween(terms: Moment, first: number, second: number, top: Mm, bottom: Mm): number {
  let value = 0;
  if (terms.plain !== null) value += between(terms.plain, top, bottom);
  if (terms.first !== null) value += first * between(terms.first, top, bottom);
  if (terms.second !== null) value += second * between(terms.second, top, bottom);
  return value;
}

/** How much of a piece of metal `span` mm thick, centred on a place behind the side, lies in the side's layer, 0..1. */
function shareTaken(face: Face, side: Layer, place: SidePlace, span: Mm): number {
  const { grid } = face;
  const row = Math.floor((place.u - grid.u0) / grid.du);
  if (row < 0 || row >= grid.rows || !side.holds(row * grid.columns + columnOf(face, place.v))) return 0;
  const near = Math.max(side.from, place.depth - span / 2);
  const far = Math.min(depthAt(side.map, face, place.u, place.v), place.depth + span / 2);
  return far > near ? (far - near) / span : 0;
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
