import { cellAt } from '../depth/depth-at.ts';
import { type DepthMap, SAMPLE_U, SAMPLE_V, SAMPLES } from '../depth/depth-map.ts';
import { standsFor } from '../job/face-names.ts';
import type { Overrule, Repair } from '../job/job.ts';
import { type Face, isOnFace, toFacePoint, toGridPoint } from '../part/face.ts';
import type { Mm } from '../units.ts';
import { DAMAGE, labelRegions } from './label.ts';
import type { Region } from './region.ts';

/** What becomes of each cell of a face: which damage region it belongs to, and from what depth up the filler begins. */
export interface FillMap {
  /** Number of the region of each cell, rows x columns; 0 = none, k = regions[k - 1]. */
  readonly label: Int32Array;
  readonly regions: readonly Region[];
  /** The outermost mm of this face that are kept for the coat: filler stands from the worn surface up to here. */
  readonly allowance: Mm;
}

/** A depth this close under the limit reaches it: less than a depth gauge shows, and more than a ramp loses between samples. mm */
const REACH: Mm = 0.002;

/**
 * Finds the damage of a face and decides what is filled: a region whose deepest point reaches the limit, and then all of it,
 * unless the person overruled that for the region under a point; a later overrule wins.
 * Regions come deepest first. Source: geometry definitions, "What is filled".
 */
export function decideFill(part: string, face: Face, map: DepthMap, repair: Repair): FillMap {
  const { label, count } = labelRegions(map, face);
  const found = measureRegions(face, map, label, count);
  const order = found.map((_, i) => i).sort((a, b) => found[b].deepest - found[a].deepest || a - b);
  const rank = new Int32Array(count + 1);
  order.forEach((from, i) => {
    rank[from + 1] = i + 1;
  });
  for (let cell = 0; cell < label.length; cell++) label[cell] = rank[label[cell]];
  const overruled = overrulesByLabel(part, face, label, repair.overrules);
  const regions = order.map((from, i): Region => {
    const { deepest, area, u, v } = found[from];
    const chosen = overruled.get(i + 1);
    const action = chosen ?? (deepest >= repair.leaveBelow - REACH ? 'fill' : 'leave');
    return {
      id: `${face.name}-${i + 1}`,
      part,
      face: face.name,
      at: toFacePoint(face, u, v),
      area,
      deepest,
      action,
      overruled: chosen !== undefined,
    };
  });
  return {
    label,
    regions,
    allowance: isListed(repair.allowanceFaces, part, face.name) ? repair.coatAllowance : 0,
  };
}

interface Found {
  deepest: Mm;
  area: number;
  u: number;
  v: number;
}

function measureRegions(face: Face, map: DepthMap, label: Int32Array, count: number): Found[] {
  const { grid } = map;
  const found: Found[] = Array.from({ length: count }, () => ({ deepest: 0, area: 0, u: 0, v: 0 }));
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const cell = row * grid.columns + column;
      if (label[cell] === 0) continue;
      const region = found[label[cell] - 1];
      const slot = map.slot[cell];
      let share = 1;
      if (slot < 0) {
        if (map.depth[cell] > region.deepest) place(region, map.depth[cell], row + 0.5, column + 0.5, face);
      } else {
        let worn = 0;
        for (let i = 0; i < SAMPLES; i++) {
          const depth = map.samples[slot * SAMPLES + i];
          if (depth > DAMAGE) worn += 1;
          if (depth > region.deepest && isOnFace(face, cell, row + SAMPLE_U[i], column + SAMPLE_V[i]))
            place(region, depth, row + SAMPLE_U[i], column + SAMPLE_V[i], face);
        }
        share = worn / SAMPLES;
      }
      region.area += face.cellArea(row, column) * share * (face.cover === null ? 1 : face.cover[cell]);
    }
  }
  return found;
}

function place(region: Found, deepest: Mm, row: number, column: number, face: Face): void {
  region.deepest = deepest;
  region.u = face.grid.u0 + row * face.grid.du;
  region.v = face.grid.v0 + column * face.grid.dv;
}

function overrulesByLabel(
  part: string,
  face: Face,
  label: Int32Array,
  overrules: readonly Overrule[],
): Map<number, 'fill' | 'leave'> {
  const chosen = new Map<number, 'fill' | 'leave'>();
  for (const overrule of overrules) {
    if (overrule.part !== part || !standsFor(overrule.face, face.name)) continue;
    const cell = cellAt(face, ...toGridPoint(face, overrule.point));
    if (cell >= 0 && label[cell] > 0) chosen.set(label[cell], overrule.action);
  }
  return chosen;
}

/** True when a `part:face` pattern of the list names the face; * stands for any run of characters. */
export function isListed(patterns: readonly string[], part: string, face: string): boolean {
  return patterns.some((pattern) => fits(pattern.split('*'), `${part}:${face}`));
}

/** Whether the pieces of a pattern follow one another in a name, the first at its start and the last at its end. Linear. */
function fits(pieces: readonly string[], name: string): boolean {
  const [first] = pieces;
  const last = pieces[pieces.length - 1];
  if (pieces.length === 1) return name === first;
  if (!name.startsWith(first) || name.length < first.length + last.length || !name.endsWith(last))
    return false;
  let at = first.length;
  for (const piece of pieces.slice(1, -1)) {
    const found = name.indexOf(piece, at);
    if (found < 0) return false;
    at = found + piece.length;
  }
  return at <= name.length - last.length;
}
