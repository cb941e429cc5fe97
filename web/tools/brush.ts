/**
 * The brush: presses while it is drawn, and leaves one mark when it is lifted. The map is frozen when it is put down; every piece
 * of path works from that.
 */
import type { CellBlock } from '../../geometry/depth/chart.ts';
import type { DepthMap } from '../../geometry/depth/depth-map.ts';
import { beginSmooth, endSmooth, extendSmooth } from '../../geometry/depth/smooth.ts';
import { beginStroke, endStroke, extendStroke } from '../../geometry/depth/stroke.ts';
import type { MarkFile } from '../../geometry/job/job-file.ts';
import type { Face } from '../../geometry/part/face.ts';
import type { FacePoint, Fraction, Mm } from '../../geometry/units.ts';
import { filePoint, ownPoint } from './file-point.ts';
import { flatDistance } from './flat-distance.ts';
import { freezeMap, thawInto } from './frozen-map.ts';

export interface BrushSettings {
  readonly mode: 'set' | 'add' | 'smooth' | 'clear';
  readonly radius: Mm;
  readonly depth: Mm;
  readonly edge: 'hard' | 'soft';
  /** Of a smoothing pass. */
  readonly strength: Fraction;
}

export interface BrushInHand {
  /** Draws on to a point of the face, which may lie beyond its edges or over a hole. Points closer than a share of the radius wait. */
  drawTo(point: FacePoint): void;
  /** Lifts the brush: the mark it leaves, in the file's units; null when it never touched the face. */
  lift(): MarkFile | null;
  /** Puts the map back as it was when the brush was put down. */
  abandon(): void;
}

/** Points of a path lie at least this share of the radius apart: a round brush shows no corners at that pace. */
const PACE: Fraction = 1 / 8;
/** More points than this a mark may not have; a path that long is drawn by a machine. */
const MOST_POINTS = 20_000;

/**
 * Puts the brush down on a face. Writes into `map` with every piece of path.
 * @param onTouched  hears of every block of cells that may have changed, the whole map's when the stroke is abandoned
 */
export function putBrushDown(
  face: Face,
  map: DepthMap,
  brush: BrushSettings,
  onTouched: (block: CellBlock) => void = () => {},
): BrushInHand {
  const frozen = freezeMap(map);
  const press = presser(face, map, brush);
  const path: FacePoint[] = [];
  let waiting: FacePoint | null = null;
  let hasTouched = false;

  const apart = (a: FacePoint, b: FacePoint) => flatDistance(face, ownPoint(face, a), ownPoint(face, b));
  const take = (point: FacePoint) => {
    path.push(point);
    const block = press.extend(ownPoint(face, point));
    if (block === null) return;
    hasTouched = true;
    onTouched(block);
  };
  return {
    drawTo(at) {
      if (path.length >= MOST_POINTS) return;
      const point = filePoint(face, at);
      const last = path.at(-1);
      waiting = null;
      if (last === undefined || apart(last, point) >= PACE * brush.radius) take(point);
      else waiting = point;
    },
    lift() {
      const last = path.at(-1);
      if (waiting !== null && last !== undefined && apart(last, waiting) > 0) take(waiting);
      press.end();
      return hasTouched ? markOf(face, brush, path) : null;
    },
    abandon() {
      press.end();
      thawInto(map, frozen);
      onTouched({ row0: 0, row1: map.grid.rows - 1, column0: 0, columns: map.grid.columns });
    },
  };
}

interface Presser {
  extend(point: FacePoint): CellBlock | null;
  end(): void;
}

function presser(face: Face, map: DepthMap, brush: BrushSettings): Presser {
  if (brush.mode === 'smooth') {
    const inHand = beginSmooth(map, face, brush.radius, brush.strength);
    return { extend: (point) => extendSmooth(inHand, point), end: () => endSmooth(inHand) };
  }
  const clear = brush.mode === 'clear';
  const inHand = beginStroke(map, face, {
    radius: brush.radius,
    depth: clear ? 0 : brush.depth,
    edge: brush.edge,
    blend: brush.mode === 'add' ? 'add' : 'deepest',
    clear,
  });
  return { extend: (point) => extendStroke(inHand, point), end: () => endStroke(inHand) };
}

function markOf(face: Face, brush: BrushSettings, points: readonly FacePoint[]): MarkFile {
  const path = points.map(([first, second]): [number, number] => [first, second]);
  const { mode, radius, depth, edge, strength } = brush;
  if (mode === 'smooth') return { kind: 'smooth', face: face.name, path, radius, strength };
  if (mode === 'clear') return { kind: 'stroke', face: face.name, path, radius, edge, clear: true };
  const blend = mode === 'add' ? 'add' : 'deepest';
  return { kind: 'stroke', face: face.name, blend, path, radius, depth, edge };
}
