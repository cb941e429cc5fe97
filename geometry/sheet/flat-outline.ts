import { contours } from 'd3-contour';
import type { Face } from '../part/face.ts';
import type { Mm } from '../units.ts';
import type { FlatFrame, FlatPoint } from './flat-frame.ts';
import { circlePath, simplified, svgPath } from './flat-path.ts';
import { rasterOver, samplePlace } from './flat-raster.ts';
import { squared } from './squared.ts';

/** The drawn edges of a face as SVG path data. */
export interface FlatOutline {
  /** Outer edges. */
  readonly edges: readonly string[];
  /** Bore, bolt holes, cut-outs. */
  readonly holes: readonly string[];
}

/** An edge is placed to this, mm. */
const PLACED: Mm = 0.01;

/**
 * The edges of a face in its drawn picture. A face without holes is its coordinate box and drawn exactly; any other is traced from
 * `face.holds`, so that nothing here needs to know what part it has.
 * Accuracy: traced edges to 0.03 mm; a hole narrower than a sample (the longer side / 320) may be missed.
 */
export function flatOutline(face: Face, frame: FlatFrame): FlatOutline {
  const outline = known.get(face) ?? outlineOf(face, frame);
  known.set(face, outline);
  return outline;
}

/** A face never changes, and each has one drawn picture. */
const known = new WeakMap<Face, FlatOutline>();

function outlineOf(face: Face, frame: FlatFrame): FlatOutline {
  if (face.cover !== null) return traced(face, frame);
  const { grid } = face;
  if (face.picture.kind === 'polar') {
    return {
      edges: [circlePath(grid.u0 + grid.rows * grid.du)],
      holes: grid.u0 > 0 ? [circlePath(grid.u0)] : [],
    };
  }
  const { x, y, width, height } = frame.box;
  const corners: FlatPoint[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  return { edges: [svgPath([corners], true)], holes: [] };
}

function traced(face: Face, frame: FlatFrame): FlatOutline {
  const raster = rasterOver(frame.box);
  const holds = ([x, y]: FlatPoint) => face.holds(...frame.toGrid(x, y));
  const inside: number[] = new Array(raster.columns * raster.rows);
  for (let row = 0; row < raster.rows; row++) {
    for (let column = 0; column < raster.columns; column++) {
      inside[row * raster.columns + column] = isHeld(face, frame, samplePlace(raster, column, row)) ? 1 : 0;
    }
  }
  const edges: string[] = [];
  const holes: string[] = [];
  const found = contours().size([raster.columns, raster.rows]).contour(inside, 0.5);
  for (const polygon of found.coordinates) {
    for (const [i, ring] of polygon.entries()) {
      const placed = ring.map(([column, row]) => {
        // A ring passes half way between an inside and an outside sample: find where between the two the edge is.
        const [x, y] = [column - 0.5, row - 0.5];
        const ends = [
          samplePlace(raster, Math.floor(x), Math.floor(y)),
          samplePlace(raster, Math.ceil(x), Math.ceil(y)),
        ] as const;
        return holds(ends[0]) ? edgeBetween(holds, ends[0], ends[1]) : edgeBetween(holds, ends[1], ends[0]);
      });
      const corners = squared(simplified(placed, 2 * PLACED).slice(0, -1), Math.max(raster.dx, raster.dy));
      (i === 0 ? edges : holes).push(svgPath([corners], true));
    }
  }
  return { edges, holes };
}

/** Asks the cover first: most samples are nowhere near an edge. */
function isHeld(face: Face, frame: FlatFrame, [x, y]: FlatPoint): boolean {
  const { grid, cover } = face;
  const [u, v] = frame.toGrid(x, y);
  const row = Math.floor((u - grid.u0) / grid.du);
  const column = Math.floor((v - grid.v0) / grid.dv);
  if (cover === null || row < 0 || row >= grid.rows || column < 0 || column >= grid.columns)
    return face.holds(u, v);
  const share = cover[row * grid.columns + column];
  return share === 0 || share === 1 ? share === 1 : face.holds(u, v);
}

/** The last point that the face holds on the way from an inside to an outside point, to PLACED mm. */
function edgeBetween(holds: (point: FlatPoint) => boolean, inside: FlatPoint, outside: FlatPoint): FlatPoint {
  let [from, to] = [inside, outside];
  while (Math.hypot(to[0] - from[0], to[1] - from[1]) > PLACED) {
    const middle: FlatPoint = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    if (holds(middle)) from = middle;
    else to = middle;
  }
  return from;
}
