import { contours } from 'd3-contour';
import type { WallMap } from '../clearance/wall-map.ts';
import type { DepthMap } from '../depth/depth-map.ts';
import type { Face } from '../part/face.ts';
import type { Fraction, Mm } from '../units.ts';
import { type ContourLabel, contourLabels } from './contour-label.ts';
import { type FlatBox, type FlatFrame, type FlatPoint, flatFrame } from './flat-frame.ts';
import { contourStep, isOpen } from './flat-map.ts';
import { type FlatOutline, flatOutline } from './flat-outline.ts';
import { simplified, svgPath } from './flat-path.ts';
import { type FlatRaster, flatRaster, samplePlace, slopeAt } from './flat-raster.ts';
import { runsOnFace } from './runs-on-face.ts';

/**
 * What is left of a wall as shapes to draw, SVG path data in mm, y down. Bands and lines run on past the edges of the face: clip them to
 * the outline (edges and holes together, even-odd).
 */
export interface WallShapes {
  readonly box: FlatBox;
  readonly frame: FlatFrame;
  readonly outline: FlatOutline;
  readonly scale: WallScale;
  /** Thickest first; each covers all that is thinner than where it ends, so later ones lie on earlier ones. */
  readonly bands: readonly WallBand[];
  /** One line a thickness, thickest first; none at the limit. */
  readonly lines: readonly WallLine[];
  /** Round all that is thinner than the limit; null when nothing is, or no limit is known. */
  readonly limit: WallLine | null;
  /** Where the picture shows the wall worn through; places too narrow for it are not in here. */
  readonly through: string;
}

/** Thickness at the thin and at the thick end of the colours, mm, and the step between lines. */
export interface WallScale {
  readonly from: Mm;
  readonly to: Mm;
  readonly step: Mm;
}

export interface WallBand {
  readonly from: Mm;
  readonly to: Mm;
  /** Where its middle stands on the scale: 0 thin, 1 thick. */
  readonly share: Fraction;
  readonly path: string;
}

export interface WallLine {
  readonly left: Mm;
  readonly path: string;
  readonly labels: readonly ContourLabel[];
}

/** Shares of the longer side of the picture: room for a number on a line, and for the words of the limit. */
const NUMBER = 0.045;
const LIMIT_WORDS = 0.12;
const LEAST_SPACING = 0.25;
const MOST_NUMBERS = 40;
/** Lines are drawn this share of a step late: what is worn down to a thickness, dust or no dust, is not thinner than it. */
const LATE: Fraction = 0.02;

/**
 * Contours of what is left of a wall.
 * @param limit  least thickness allowed, mm; null when it is not known
 * Accuracy: of `flatRaster`; figures never come from here.
 */
export function wallShapes(wall: WallMap, limit: Mm | null): WallShapes {
  const { face } = wall;
  const frame = flatFrame(face);
  const top = thickestOf(face);
  const scale = scaleOf(wall.remaining, top, limit);
  const raster = missingRaster(wall, top, frame);
  const side = Math.max(frame.box.width, frame.box.height);
  const tolerance = 0.1 * Math.min(raster.dx, raster.dy);
  const spacing = LEAST_SPACING * NUMBER * side;
  const spacingAt = (x: Mm, y: Mm): Mm => scale.step / slopeAt(raster, x, y);
  const isRoomy = (x: Mm, y: Mm): boolean => isOpen(spacingAt, x, y, spacing);
  const ringsUnder = (left: Mm) => ringsAt(raster, top - left + LATE * scale.step);
  const smooth = (lines: readonly (readonly FlatPoint[])[]) =>
    lines.map((line) => simplified(line, tolerance));
  const taken: ContourLabel[] = [];
  const lineAt = (left: Mm, size: Mm, isWanted: (x: Mm, y: Mm) => boolean): WallLine => {
    const runs = smooth(runsOnFace(ringsUnder(left), face, frame));
    const labels = contourLabels(runs, taken, size, isWanted, MOST_NUMBERS - taken.length);
    taken.push(...labels);
    return { left, path: svgPath(runs, false), labels };
  };
  const marked = limit === null ? null : lineAt(limit, LIMIT_WORDS * side, () => true);
  const steps = Math.round((scale.to - scale.from) / scale.step);
  const limits = Array.from({ length: steps - 1 }, (_, i) => rounded(scale.to - (i + 1) * scale.step));
  const shareOf = (from: Mm): Fraction => (from + scale.step / 2 - scale.from) / (scale.to - scale.from);
  const thinFirst = limits
    .filter((left) => limit === null || Math.abs(left - limit) > scale.step / 4)
    .toReversed()
    .map((left) => lineAt(left, NUMBER * side, isRoomy));
  return {
    box: frame.box,
    frame,
    outline: flatOutline(face, frame),
    scale,
    bands: [
      {
        from: rounded(scale.to - scale.step),
        to: scale.to,
        share: shareOf(scale.to - scale.step),
        path: svgPath(smooth(ringsAt(raster, -1)), true),
      },
      ...limits.flatMap((to): WallBand[] => {
        const path = svgPath(smooth(ringsUnder(to)), true);
        const from = rounded(to - scale.step);
        return path === '' ? [] : [{ from, to, share: shareOf(from), path }];
      }),
    ],
    lines: thinFirst.toReversed().filter(({ path }) => path !== ''),
    limit: marked === null || marked.path === '' ? null : marked,
    through: svgPath(smooth(ringsAt(raster, top - LATE * scale.step)), true),
  };
}

function thickestOf({ grid, isWall, wall }: Face): Mm {
  let most = 0;
  for (let row = 0; row < grid.rows; row++) {
    const u = grid.u0 + (row + 0.5) * grid.du;
    if (isWall(u)) most = Math.max(most, wall(u));
  }
  return most;
}

/** From the limit or the thinnest place, whichever is less, to the wall as new; both out to whole steps. */
function scaleOf(remaining: Float32Array, top: Mm, limit: Mm | null): WallScale {
  let least = top;
  // NaN, where there is no wall, is not less than anything.
  for (const left of remaining) if (left < least) least = left;
  const low = Math.min(least, limit ?? least);
  const step = contourStep(Math.max(top - low, 0.1));
  const from = rounded(step * Math.max(0, Math.floor(low / step + LATE)));
  const to = rounded(step * Math.ceil(top / step - LATE));
  return { from, to: Math.max(to, rounded(from + step)), step };
}

/** What is missing of the thickest wall: contours look for more, not for less. Where there is no wall there is no face either. */
function missingRaster({ face, remaining }: WallMap, top: Mm, frame: FlatFrame): FlatRaster {
  const { grid } = face;
  const cover = new Float32Array(remaining.length);
  const depth = new Float32Array(remaining.length);
  for (let cell = 0; cell < remaining.length; cell++) {
    if (Number.isNaN(remaining[cell])) continue;
    cover[cell] = face.cover === null ? 1 : face.cover[cell];
    depth[cell] = top - remaining[cell];
  }
  const none = { samples: new Float32Array(0), cellOfSlot: new Int32Array(0), slots: 0 };
  const map: DepthMap = { grid, depth, slot: new Int32Array(0), ...none };
  return flatRaster({ ...face, cover }, map, frame);
}

function ringsAt(raster: FlatRaster, missing: Mm): FlatPoint[][] {
  const found = contours().size([raster.columns, raster.rows]).contour(raster.values, missing);
  return found.coordinates
    .flat()
    .map((ring) => ring.map(([column, row]) => samplePlace(raster, column - 0.5, row - 0.5)));
}

const rounded = (size: Mm): Mm => Math.round(size * 100) / 100;
