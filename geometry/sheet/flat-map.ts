import { contours } from 'd3-contour';
import type { DepthMap } from '../depth/depth-map.ts';
import { DAMAGE } from '../fill/label.ts';
import type { Face } from '../part/face.ts';
import type { Fraction, Mm } from '../units.ts';
import { type ContourLabel, contourLabels } from './contour-label.ts';
import { type FlatBox, type FlatPoint, flatFrame } from './flat-frame.ts';
import { type FlatOutline, flatOutline } from './flat-outline.ts';
import { simplified, svgPath } from './flat-path.ts';
import { type FlatRaster, flatRaster, samplePlace, slopeAt } from './flat-raster.ts';
import { runsOnFace } from './runs-on-face.ts';

/**
 * The depth map of a face as shapes to draw, SVG path data in mm, y down. Bands and lines run on past the face's edges:
 * clip them to the outline (edges and holes together, even-odd).
 */
export interface FlatMap {
  readonly box: FlatBox;
  readonly outline: FlatOutline;
  /** Shallowest first; each covers all that is deeper than where it begins, so later ones lie on earlier ones. */
  readonly bands: readonly DepthBand[];
  /** One contour line a depth, shallowest first. */
  readonly lines: readonly ContourLine[];
  /** mm between contour lines. */
  readonly step: Mm;
  /** Depth at the deep end of the colours: the deepest wear rounded up to a step. */
  readonly scaleTo: Mm;
  /** A round length to draw as a scale bar. */
  readonly scaleBar: Mm;
  /** How far apart contour lines lie at a place, mm: endless on even ground. */
  spacingAt(x: Mm, y: Mm): Mm;
}

export interface DepthBand {
  /** The band runs from `depth` up to `to`; the first, from 0, begins where wear counts as damage. */
  readonly depth: Mm;
  readonly to: Mm;
  /** Where its middle stands on the colour scale. */
  readonly share: Fraction;
  readonly path: string;
}

export interface ContourLine {
  readonly depth: Mm;
  readonly path: string;
  /** The line as it lies on the face: each closed one, and each from edge to edge. */
  readonly runs: readonly (readonly FlatPoint[])[];
  /** A number on each run that has room for one, the longest first. */
  readonly labels: readonly ContourLabel[];
}

/** Steps between contour lines that read well, mm. */
const STEPS: readonly Mm[] = [1, 2, 5, 10, 20, 50, 100];
const MOST_LINES = 12;
/** Width of a contour's number as a share of the picture. */
const LABEL_WIDTH = 0.04;
/** More numbers than this hide the wear. */
const MOST_NUMBERS = 60;
/** Lines nearer to each other than this share of a number's width carry none: half the height of one. */
const LEAST_SPACING = 0.25;
/** Lines are drawn this share of a step early: a flat bottom of 3 mm is then within its 3 mm line, dust or no dust. */
const EARLY: Fraction = 0.02;

/**
 * Contours of a face's depth at whole mm; at half mm while nothing is 3 mm deep, at tenths under 0.6 mm, wider apart when deep.
 * @param deepest      mm, sets the steps and the scale; that of the map unless several maps are to look alike
 * @param numberWidth  of a number on a contour line, mm; as the sheet draws it unless said
 * Accuracy: of `flatRaster`; figures never come from here.
 */
export function flatMap(
  face: Face,
  map: DepthMap,
  deepest: Mm = deepestOf(map),
  { numberWidth }: { readonly numberWidth?: Mm } = {},
): FlatMap {
  const frame = flatFrame(face);
  const raster = flatRaster(face, map, frame);
  const side = Math.max(frame.box.width, frame.box.height);
  const size = numberWidth ?? LABEL_WIDTH * side;
  const step = contourStep(deepest);
  const depths = Array.from({ length: Math.floor(deepest / step + EARLY) }, (_, i) =>
    roundDepth((i + 1) * step),
  );
  const scaleTo = roundDepth(step * Math.max(1, Math.ceil(deepest / step - EARLY)));
  const tolerance = 0.1 * Math.min(raster.dx, raster.dy);
  const smooth = (lines: readonly (readonly FlatPoint[])[]) =>
    lines.map((line) => simplified(line, tolerance));

  const bands: DepthBand[] = [];
  const lines: { depth: Mm; runs: readonly (readonly FlatPoint[])[] }[] = [];
  for (const depth of [DAMAGE, ...depths]) {
    const rings = ringsAt(raster, depth === DAMAGE ? depth : depth - EARLY * step);
    if (rings.length === 0) continue;
    const from = depth === DAMAGE ? 0 : depth;
    const to = roundDepth(from + step);
    bands.push({ depth: from, to, share: (from + to) / 2 / scaleTo, path: svgPath(smooth(rings), true) });
    if (depth !== DAMAGE) lines.push({ depth, runs: smooth(runsOnFace(rings, face, frame)) });
  }
  const spacingAt = (x: Mm, y: Mm) => step / slopeAt(raster, x, y);
  return {
    box: frame.box,
    outline: flatOutline(face, frame),
    bands,
    lines: numbered(lines, size, (x, y) => isOpen(spacingAt, x, y, LEAST_SPACING * size)),
    step,
    scaleTo,
    scaleBar: roundLength(side / 4),
    spacingAt,
  };
}

/** True where contour lines lie at least `spacing` mm apart, and a little way round. */
export function isOpen(spacingAt: FlatMap['spacingAt'], x: Mm, y: Mm, spacing: Mm): boolean {
  return [-1, 0, 1].every((i) =>
    [-1, 0, 1].every((j) => spacingAt(x + i * spacing, y + j * spacing) > spacing),
  );
}

/** Gives each line places for its number, the deepest first: that is the one that is looked for. */
function numbered(
  lines: readonly { readonly depth: Mm; readonly runs: readonly (readonly FlatPoint[])[] }[],
  size: Mm,
  isOpenAt: (x: Mm, y: Mm) => boolean,
): ContourLine[] {
  const taken: ContourLabel[] = [];
  const deepFirst = lines.toReversed().map(({ depth, runs }) => {
    const labels = contourLabels(runs, taken, size, isOpenAt, MOST_NUMBERS - taken.length);
    taken.push(...labels);
    return { depth, path: svgPath(runs, false), runs, labels };
  });
  return deepFirst.reverse().filter(({ path }) => path !== '');
}

/** mm between contour lines when the deepest wear is `deepest` mm. */
export function contourStep(deepest: Mm): Mm {
  if (deepest < 0.6) return 0.1;
  if (deepest < 3) return 0.5;
  return STEPS.find((step) => step >= 1 && deepest / step <= MOST_LINES) ?? STEPS[STEPS.length - 1];
}

function ringsAt(raster: FlatRaster, depth: Mm): FlatPoint[][] {
  const found = contours().size([raster.columns, raster.rows]).contour(raster.values, depth);
  return found.coordinates
    .flat()
    .map((ring) => ring.map(([column, row]) => samplePlace(raster, column - 0.5, row - 0.5)));
}

/** Multiples of a tenth without their float dust. */
const roundDepth = (depth: Mm): Mm => Math.round(depth * 100) / 100;

function deepestOf(map: DepthMap): Mm {
  return map.depth.reduce((most, depth) => Math.max(most, depth), 0);
}

/** The largest of 1, 2, 5, 10, 20 .. that is not above `length`. */
function roundLength(length: Mm): Mm {
  const power = 10 ** Math.floor(Math.log10(length));
  return power * (length >= 5 * power ? 5 : length >= 2 * power ? 2 : 1);
}
