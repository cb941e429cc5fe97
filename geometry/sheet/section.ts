import { cellAt, depthAt } from '../depth/depth-at.ts';
import type { DepthMap } from '../depth/depth-map.ts';
import type { Section } from '../job/job.ts';
import { type Face, toFacePoint } from '../part/face.ts';
import { type FacePoint, type Mm, wrapTurn } from '../units.ts';

import { type SectionLine, sectionLine } from './section-line.ts';
import { slopedDepth } from './sloped-depth.ts';

/** What lies under a straightedge: sound line, worn line, putty, coat, and the wall behind. All depths are taken off the sound face. */
export interface SectionProfile {
  readonly line: SectionLine;
  /** The stretches with metal, in order; between them the line lies over holes or off the face. */
  readonly runs: readonly SectionRun[];
  /** null where the line meets no metal. */
  readonly deepest: DeepestUnder | null;
  /** Near the line, in the order they were given. */
  readonly readings: readonly ReadingUnder[];
  /** All coats, dry; 0 on a face that is not coated, or while it is not known on what they go. */
  readonly film: Mm;
  /** False while it is not known what is filled: putty is then 0 everywhere and nothing is said to be left. */
  readonly isFillKnown: boolean;
}

/** Places in order, at least two. */
export type SectionRun = readonly SectionPlace[];

export interface SectionPlace {
  /** Distance along the line. */
  readonly at: Mm;
  /** Of the worn surface. */
  readonly depth: Mm;
  /** Thickness of the putty on it. */
  readonly putty: Mm;
  /** Belongs to damage that is left to the coat, and is filled by it. */
  readonly isLeft: boolean;
  /** Depth of the surface behind, worn where that is worn too; null where the wall is no measure: at edges, tips and noses. */
  readonly wall: Mm | null;
}

export interface DeepestUnder extends SectionPlace {
  readonly point: FacePoint;
  /** The damage there is filled, left, or there is none (or it is not known). */
  readonly action: 'fill' | 'leave' | null;
}

export interface Gauged {
  readonly at: FacePoint;
  readonly depth: Mm;
  /** One standard deviation. */
  readonly error: Mm;
}

export interface ReadingUnder {
  /** Distance along the line. */
  readonly at: Mm;
  readonly depth: Mm;
  readonly error: Mm;
  /** How far beside the line it was taken. */
  readonly off: Mm;
}

/** What becomes of each cell of the face. */
export interface FillUnder {
  /** 0 = no damage, k = actions[k - 1]; rows x columns. */
  readonly label: Int32Array;
  readonly actions: readonly ('fill' | 'leave')[];
  /** The outermost mm that are kept free of putty. */
  readonly allowance: Mm;
}

export interface SectionOptions {
  /** null while it is not known. */
  readonly fill: FillUnder | null;
  /** All coats, dry; 0 on a face that is not coated. */
  readonly film: Mm;
  /** The map of the face on the other side of the wall; null when there is none. */
  readonly behind: DepthMap | null;
  readonly readings: readonly Gauged[];
  /** Readings further off the line are left out. */
  readonly within?: Mm;
}

/** So far off the line a reading still says something of what lies under it. */
const READINGS_WITHIN: Mm = 5;
/** Between two places the deepest one is looked for in so many steps. */
const FINER = 64;
/** A depth is kept to seven digits: so close to the wall it has reached it. */
const THROUGH: Mm = 0.002;
/** Of a cell. */
const DUST = 1e-6;

/**
 * Walks a straightedge over a worn face.
 * Accuracy: depths as `slopedDepth` has them; the deepest place to 1/64 of the distance between places, under 1/100 of a cell.
 * Source: tests/geometry/sheet/section.test.ts
 */
export function sectionProfile(
  face: Face,
  map: DepthMap,
  section: Section,
  { fill, film, behind, readings, within = READINGS_WITHIN }: SectionOptions,
): SectionProfile {
  const line = sectionLine(face, section);
  const actionAt = (u: number, v: number): 'fill' | 'leave' | null => {
    const cell = fill === null ? -1 : cellAt(face, u, v);
    const label = fill === null || cell < 0 ? 0 : fill.label[cell];
    return label > 0 ? (fill?.actions[label - 1] ?? null) : null;
  };
  const allowance = fill?.allowance ?? 0;
  const under = (at: Mm, uAt: number, vAt: number): DeepestUnder => {
    const [u, v] = withinGrid(face, uAt, vAt);
    const wall = face.wall(u);
    const depth = Math.min(wall, slopedDepth(map, face, u, v));
    const action = depth > 0 ? actionAt(u, v) : null;
    return {
      at,
      depth,
      putty: action === 'fill' ? Math.max(0, depth - allowance) : 0,
      isLeft: action === 'leave',
      wall: face.isWall(u) ? Math.max(0, wall - (behind === null ? 0 : depthAt(behind, face, u, v))) : null,
      point: facePoint(face, u, v),
      action,
    };
  };

  const runs: DeepestUnder[][] = [];
  let isOpen = true;
  for (let i = 0; i < line.at.length; i++) {
    if (line.on[i] === 1) {
      if (isOpen) runs.push([]);
      runs[runs.length - 1].push(under(line.at[i], line.u[i], line.v[i]));
    }
    isOpen = line.on[i] === 0;
  }
  const kept = runs.filter((run) => run.length > 1);
  return {
    line,
    runs: kept,
    deepest: deepestOf(kept, (at) => under(at, ...line.place(at))),
    readings: readings.flatMap(({ at: point, depth, error }) => {
      const { at, off } = line.near(point);
      return off <= within ? [{ at, depth, error, off }] : [];
    }),
    film: fill === null ? 0 : film,
    isFillKnown: fill !== null,
  };
}

/** True where nothing of the wall is left. */
export function isThrough({ depth, wall }: Pick<SectionPlace, 'depth' | 'wall'>): boolean {
  return wall !== null && depth > 0 && depth > wall - THROUGH;
}

/** The deepest of all places, and then closer about it; of an even bottom its middle. */
function deepestOf(
  runs: readonly (readonly DeepestUnder[])[],
  under: (at: Mm) => DeepestUnder,
): DeepestUnder | null {
  let most: DeepestUnder | null = null;
  let found: { readonly run: readonly DeepestUnder[]; readonly i: number } | null = null;
  for (const run of runs) {
    for (const [i, place] of run.entries()) {
      if (most !== null && place.depth <= most.depth) continue;
      most = place;
      found = { run, i };
    }
  }
  if (most === null || found === null || most.depth === 0) return most;
  const { run, i } = found;
  let last = i;
  while (last + 1 < run.length && run[last + 1].depth === most.depth) last += 1;
  if (last > i) return under((run[i].at + run[last].at) / 2);
  const [from, to] = [run[Math.max(0, i - 1)].at, run[Math.min(run.length - 1, i + 1)].at];
  for (let step = 1; step < 2 * FINER; step++) {
    const place = under(from + ((to - from) * step) / (2 * FINER));
    if (place.depth > most.depth) most = place;
  }
  return most;
}

/** A place on the last edge of the face as one of its last cells. */
function withinGrid({ grid }: Face, u: number, v: number): readonly [u: number, v: number] {
  const lastU = grid.u0 + (grid.rows - DUST) * grid.du;
  const lastV = grid.v0 + (grid.columns - DUST) * grid.dv;
  return [Math.min(lastU, Math.max(grid.u0, u)), grid.wraps ? v : Math.min(lastV, Math.max(grid.v0, v))];
}

/** Angles in [0, 2 pi). */
function facePoint(face: Face, u: number, v: number): FacePoint {
  const [first, second] = toFacePoint(face, u, v);
  const [a, b] = face.coordinates;
  return [a.isAngle ? wrapTurn(first) : first, b.isAngle ? wrapTurn(second) : second];
}
