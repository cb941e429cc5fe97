/**
 * The metal that worn faces share where they meet: it lies below several of them, and is lost, or filled, once.
 */
import { depthAt } from '../depth/depth-at.ts';
import { type DepthMap, depthsWithin, isEven, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import type { Reach } from '../depth/reach.ts';
import type { Face, Grid } from '../part/face.ts';
import { addMetal, type Metal, type MetalSum, NO_METAL } from '../part/metal.ts';
import type { Corner, Side, SidePlace } from '../part/part.ts';
import type { Fraction, Mm } from '../units.ts';
import { type Bounds, layerBounds } from './layer-bounds.ts';
import { metalBetween } from './row-sums.ts';

/** Which layer of a face counts: from this depth to the worn surface, where `holds(cell)`. */
export interface Layer {
  readonly map: DepthMap;
  readonly from: Mm;
  /** No wear of the layer is deeper, mm. */
  readonly reach: Mm;
  /** The same place by place. */
  readonly near: Reach;
  holds(cell: number): boolean;
}

/** Steps down through the metal, shares of a side's cell. */
const PACE = 1 / 3;
const LEAST_STEPS = 4;
/** So few steps are sooner taken than looked over. */
const FEW_STEPS = 4;
/** Rounding of a place behind a side, mm. */
const DUST: Mm = 1e-12;
/** Shares that differ by more than this from step to step are an edge, which is then found to 1/64 of the step. */
const JUMP = 0.25;
const HALVINGS = 6;

/**
 * Metal below the `over` face of a corner and below any of its sides, within their layers. Walks down from the `over` face along the
 * depth, cell by cell, and takes at each step the share of the cell that a side's worn surface has already taken.
 * @param layerOf  the layer of a side that counts; null for a side that does not
 * Accuracy: 0.3 % of the shared metal, which is itself a small share of what is lost; tests/oracle/worn-plate.test.ts
 */
export function sharedMetal(corner: Corner, over: Layer, layerOf: (side: Face) => Layer | null): Metal {
  const total = { ...NO_METAL };
  const sides = corner.sides.flatMap((side): WornSide[] => {
    const layer = layerOf(side.face);
    if (layer === null || layer.reach <= layer.from) return [];
    let known: ReturnType<typeof layerBounds> | null = null;
    const bounds: WornSide['bounds'] = (a, b) => {
      known ??= layerBounds(side.face, layer);
      return known(a.u, a.v, b.u, b.v);
    };
    return [{ side, layer, bounds }];
  });
  if (sides.length === 0 || over.reach <= over.from) return total;
  const { over: face } = corner;
  const { grid } = face;
  const { depth, slot, samples } = over.map;
  for (let row = 0; row < grid.rows; row++) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    const beside = sides
      .filter((worn) => isWornBeside(worn, face, u, over))
      .map((worn) => ({ ...worn, span: spanOf(worn.side, face, u, over.from) }));
    if (beside.length === 0) continue;
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      if ((depth[cell] <= over.from && slot[cell] < 0) || !over.holds(cell)) continue;
      const held = face.cover === null ? 1 : face.cover[cell];
      if (held === 0) continue;
      const v = grid.v0 + (column + 0.5) * grid.dv;
      const [, most] = depthsWithin(over.map, cell);
      if (!beside.some((side) => isNear(side, u, v, over.from, most))) continue;
      const line = { face, row, column, sides: beside };
      const split = isEven(over.map, cell) ? -1 : slot[cell];
      if (split < 0) {
        addLine(total, line, u, v, over.from, depth[cell], held, 1);
        continue;
      }
      for (let i = 0; i < SAMPLES; i++) {
        const atU = grid.u0 + (row + SAMPLE_U[i]) * grid.du;
        const atV = grid.v0 + (column + SAMPLE_V[i]) * grid.dv;
        addLine(total, line, atU, atV, over.from, samples[split * SAMPLES + i], held / SAMPLES, 1 / SAMPLES);
      }
    }
  }
  return total;
}

interface WornSide {
  readonly side: Side;
  readonly layer: Layer;
  /** What is known of the layer between two places, made when it is first asked for. */
  bounds(a: SidePlace, b: SidePlace): Bounds;
}

interface NearSide extends WornSide {
  /** How far a cell of the `over` face reaches away from the side, mm. */
  readonly span: Mm;
}

/** What the lines of one cell have in common. */
interface Line {
  readonly face: Face;
  readonly row: number;
  readonly column: number;
  readonly sides: readonly NearSide[];
}

/** How far a cell in the middle of a row reaches away from the side, mm: much the same all along the row. */
function spanOf(side: Side, { grid }: Face, u: number, depth: Mm): Mm {
  const { du, dv } = grid;
  const v = grid.v0 + (grid.columns * dv) / 2;
  const behind = (atU: number, atV: number): Mm => side.seenFrom(atU, atV, depth).depth;
  const alongU = Math.abs(behind(u + du / 2, v) - behind(u - du / 2, v));
  const alongV = Math.abs(behind(u, v + dv / 2) - behind(u, v - dv / 2));
  return Math.max(alongU + alongV, 1e-9);
}

/** False when nothing of a side is worn anywhere near what lies below a row. */
function isWornBeside({ side, layer }: WornSide, { grid }: Face, u: number, over: Layer): boolean {
  // Its middle too: a rounded edge stands out there.
  const ends = [0, 0.5, 1]
    .map((share) => grid.v0 + share * grid.columns * grid.dv)
    .flatMap((v) => [over.from, over.reach].map((depth) => side.seenFrom(u, v, depth)));
  const us = ends.map((place) => place.u);
  const vs = ends.map((place) => place.v);
  const most = layer.near.within(Math.min(...us), Math.min(...vs), Math.max(...us), Math.max(...vs));
  return most > layer.from;
}

/** True when the metal below a cell comes near enough to a side to be taken by it. */
function isNear({ side, layer, span }: NearSide, u: number, v: number, from: Mm, to: Mm): boolean {
  const top = side.seenFrom(u, v, from);
  const bottom = side.seenFrom(u, v, to);
  const closest = Math.min(top.depth, bottom.depth) - span;
  return closest < layer.reach && closest < layer.near.within(top.u, top.v, bottom.u, bottom.v);
}

/**
 * Adds the shared slices of one line of metal below (u, v). Writes into `total`.
 * @param held  of a whole cell
 * @param part  of the cell's width that the line stands for
 */
function addLine(
  total: MetalSum,
  line: Line,
  u: number,
  v: number,
  from: Mm,
  to: Mm,
  held: Fraction,
  part: Fraction,
): void {
  if (to <= from) return;
  const { face, row, column, sides } = line;
  const pace = sides.reduce((least, { side }) => Math.min(least, side.face.grid.du), Infinity) * PACE;
  const steps = Math.max(LEAST_STEPS, Math.ceil((to - from) / pace));
  const step = (to - from) / steps;
  const shareOf = (depth: Mm): Fraction => shareAt(sides, u, v, depth, part);
  // Slices that are taken alike are added as one.
  let open = from;
  let openShare = 0;
  const taken = (share: Fraction, until: Mm): void => {
    if (share === openShare) return;
    if (openShare > 0 && until > open) {
      addMetal(total, metalBetween(face, row, column, u, v, open, until), held * openShare);
    }
    open = until;
    openShare = share;
  };
  let above = shareOf(from);
  // A long stretch that is taken alike all through is one step; any other is halved.
  const walk = (first: number, end: number): void => {
    const top = from + first * step;
    if (end - first > FEW_STEPS) {
      const all = shareAllAlong(sides, u, v, top, from + end * step, part);
      if (all === null) {
        const middle = (first + end) >> 1;
        walk(first, middle);
        walk(middle, end);
      } else {
        taken(all, top);
        above = all;
      }
      return;
    }
    for (let i = first; i < end; i++) stepDown(from + i * step);
  };
  const stepDown = (top: Mm): void => {
    const below = shareOf(top + step);
    if (Math.abs(below - above) <= JUMP) taken((above + below) / 2, top);
    else {
      taken(above, top);
      taken(below, crossing(shareOf, top, top + step, above, below));
    }
    above = below;
  };
  walk(0, steps);
  taken(0, to);
}

/**
 * The share that is taken at every depth between two: 0 or 1; null where it may change, or lies between.
 * Going down a line, its place behind a side runs on one way.
 */
function shareAllAlong(
  sides: readonly NearSide[],
  u: number,
  v: number,
  top: Mm,
  bottom: Mm,
  part: Fraction,
): 0 | 1 | null {
  let share: 0 | null = 0;
  for (const { side, layer, span, bounds } of sides) {
    const a = side.seenFrom(u, v, top);
    const b = side.seenFrom(u, v, bottom);
    const half = (span * part) / 2;
    const closest = Math.min(a.depth, b.depth) - half;
    if (closest >= layer.reach) continue;
    const { least, most } = bounds(a, b);
    if (least >= Math.max(a.depth, b.depth) + half && closest >= layer.from - DUST) return 1;
    if (most > Math.max(layer.from, closest)) share = null;
  }
  return share;
}

/** Where the share jumps between two depths, mm. */
function crossing(
  shareOf: (depth: Mm) => Fraction,
  top: Mm,
  bottom: Mm,
  above: Fraction,
  below: Fraction,
): Mm {
  const middle = (above + below) / 2;
  let [a, b] = [top, bottom];
  for (let i = 0; i < HALVINGS; i++) {
    const depth = (a + b) / 2;
    if (shareOf(depth) > middle === above > middle) a = depth;
    else b = depth;
  }
  return (a + b) / 2;
}

/** How much of the metal at a depth below (u, v) lies in the layer of any side. */
function shareAt(sides: readonly NearSide[], u: number, v: number, depth: Mm, part: Fraction): Fraction {
  let free = 1;
  for (const { side, layer, span } of sides) {
    const place = side.seenFrom(u, v, depth);
    const width = span * part;
    if (place.depth - width / 2 >= layer.reach) continue;
    free *= 1 - shareTaken(side.face, layer, place, width);
  }
  return 1 - free;
}

/** How much of a piece of metal `width` mm thick, centred on a place behind the side, lies in the side's layer, 0..1. */
function shareTaken(face: Face, layer: Layer, place: SidePlace, width: Mm): Fraction {
  const { grid } = face;
  const row = Math.floor((place.u - grid.u0) / grid.du);
  const column = columnOf(grid, place.v);
  if (row < 0 || row >= grid.rows || column < 0 || !layer.holds(row * grid.columns + column)) return 0;
  const near = Math.max(layer.from, place.depth - width / 2);
  const far = Math.min(depthAt(layer.map, face, place.u, place.v), place.depth + width / 2);
  return far > near ? (far - near) / width : 0;
}

function columnOf(grid: Grid, v: number): number {
  const column = Math.floor((v - grid.v0) / grid.dv);
  if (grid.wraps) return ((column % grid.columns) + grid.columns) % grid.columns;
  return column < 0 || column >= grid.columns ? -1 : column;
}
