import type { Fraction, Mm } from '../units.ts';
import { isThrough, type SectionProfile } from './section.ts';

/** How a section lies in its drawing, px: distances to the right, depths down, both to a stated scale. */
export interface SectionFrame {
  /** Of the whole drawing. */
  readonly width: number;
  readonly height: number;
  /** The plot within it. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** How many times its true size depth is drawn against length. */
  readonly times: number;
  /** Whether the wall behind is within the plot. */
  readonly showsWall: boolean;
  x(at: Mm): number;
  y(depth: Mm): number;
  /** Round distances, and round depths, to stand on the axes. */
  readonly lengthTicks: readonly Mm[];
  readonly depthTicks: readonly Mm[];
}

export interface SectionSize {
  /** Of the whole drawing, px. */
  readonly width: number;
  /** Of its letters, px. */
  readonly text: number;
  /** The unit of the axes, mm: 1, or 25.4 for an inch. */
  readonly unit: Mm;
  /** Depth takes at most this share of the width of the plot. */
  readonly high: Fraction;
  /** Takes all of that height, so that a line under the hand does not make the plot jump. */
  readonly isSteady?: boolean;
}

/** Times depth may be drawn. */
const TIMES = [1, 2, 5, 10, 20, 50, 100];
/** A line so short that it is deeper than long is drawn smaller, no more than so many times as high as others. */
const HIGHEST = 1.7;
/** Something is drawn of a face as new as well. */
const LEAST_EXTENT: Mm = 1;
/** The wall is shown when it is no more than so many times as deep as the wear, and always where it is worn through. */
const WALL_WITHIN = 2.5;

/**
 * Chooses the scale and the exaggeration at which a section reads well, and where ticks stand.
 * @param foot  px kept free below the axis of lengths
 */
export function sectionFrame(profile: SectionProfile, size: SectionSize, foot: number): SectionFrame {
  const { width, text, unit, high, isSteady = false } = size;
  const { line, runs, readings, film } = profile;
  const places = runs.flat();
  const worn = places.reduce((most, { depth }) => Math.max(most, depth), 0);
  const most = readings.reduce((deepest, { depth, error }) => Math.max(deepest, depth + 2 * error), worn);
  const walls = places.flatMap(({ wall }) => (wall === null ? [] : [wall]));
  const thickest = Math.max(0, ...walls);
  const showsWall = thickest > 0 && (places.some(isThrough) || thickest <= WALL_WITHIN * most);
  const above = readings.reduce((high, { depth, error }) => Math.max(high, 2 * error - depth), film);
  const needed = Math.max(LEAST_EXTENT - above, 1.1 * most, showsWall ? 1.08 * thickest : 0);
  const extent = above + needed;

  const [left, right] = [3.4 * text, width - 1.4 * text];
  const room = right - left;
  const fitted = room / line.length;
  const times = TIMES.findLast((factor) => factor * extent * fitted <= high * room) ?? TIMES[0];
  const scale = Math.min(fitted, (HIGHEST * high * room) / (times * extent));
  const below = isSteady ? Math.max(needed, (high * room) / (times * scale) - above) : needed;
  const top = 3.2 * text;
  const zero = top + 0.5 * text + above * times * scale;
  const bottom = zero + below * times * scale + 0.4 * text;
  const start = left + (room - line.length * scale) / 2;
  return {
    width,
    height: bottom + 3.4 * text + foot,
    left,
    right,
    top,
    bottom,
    times,
    showsWall,
    x: (at) => start + at * scale,
    y: (depth) => zero + depth * times * scale,
    lengthTicks: ticks(0, line.length, niceStep((5 * text) / scale, unit)),
    depthTicks: ticks(0, below, niceStep((1.7 * text) / (times * scale), unit)),
  };
}

/** The smallest of 1, 2, 5 times a power of ten units that is not below `least`. */
function niceStep(least: Mm, unit: Mm): Mm {
  const power = 10 ** Math.floor(Math.log10(least / unit));
  const step = [1, 2, 5, 10].find((factor) => factor * power * unit >= least * (1 - 1e-9)) ?? 10;
  return step * power * unit;
}

function ticks(from: Mm, to: Mm, step: Mm): Mm[] {
  return Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, i) => from + i * step);
}
