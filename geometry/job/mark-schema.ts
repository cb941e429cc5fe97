/** The wear marks as the job file writes them: mm, and degrees where a face's coordinate is an angle. */
import {
  byKind,
  coordinate,
  count,
  depth,
  described,
  faceName,
  flag,
  length,
  list,
  oneOf,
  optional,
  pair,
  patterned,
  point,
  quantity,
  record,
} from './field-kinds.ts';
import { z } from './zod.ts';

const face = described(
  faceName('the name of a face such as "face" or "bore"'),
  'Face of the part; * may stand for the vane number',
);

const blend = optional(
  oneOf(['deepest', 'add', 'replace']),
  'How the mark meets what is there; deepest when left out',
);

const corners = list(point, 'corners', 3, 2000);
const path = described(list(point, 'points', 1, 20_000), 'Points [first, second] the tool passes through');
const radius = described(length, 'Radius of the tool in the flat picture of the face, mm');

const patch = record('a patch', {
  kind: z.literal('patch'),
  face,
  first: described(pair(coordinate, 'two numbers, [from, to]'), 'From and to along the first coordinate'),
  second: described(pair(coordinate, 'two numbers, [from, to]'), 'From and to along the second coordinate'),
  depth: described(
    z.union([depth, pair(depth, 'two depths')], {
      error: 'a depth in mm of at least 0, or two of them, [at from, at to]',
    }),
    'mm; two depths vary linearly along the first coordinate',
  ),
  blend,
});

const area = record('an area', {
  kind: z.literal('area'),
  face,
  outline: described(corners, 'Corners of a closed polygon in the flat picture of the face'),
  depth: described(depth, 'mm'),
  blend,
});

const pit = record('a pit', {
  kind: z.literal('pit'),
  face,
  at: described(point, 'Centre'),
  diameter: described(length, 'mm'),
  depth: described(depth, 'At the centre, mm'),
  form: oneOf(['cone', 'bowl', 'flat']),
  blend,
});

const stroke = record('a stroke', {
  kind: z.literal('stroke'),
  face,
  path,
  radius,
  depth: optional(depth, 'mm; may be left out when the stroke clears'),
  edge: optional(oneOf(['hard', 'soft']), 'hard when left out'),
  clear: optional(flag, 'Wipes wear away instead of adding it'),
  blend,
});

const smooth = record('a smoothing stroke', {
  kind: z.literal('smooth'),
  face,
  path,
  radius,
  strength: described(quantity('a share', { least: 0, most: 1 }), '0 leaves the surface, 1 evens it out'),
});

const edge = record('an edge loss', {
  kind: z.literal('edge'),
  face,
  profile: described(
    list(z.tuple([coordinate, depth], { error: 'two numbers, [along, depth]' }), 'points', 1, 2000),
    'Loss in mm against the first coordinate, linear between the points',
  ),
  blend,
});

/** A gauge reads a little below zero on sound metal; more than this is a slip. */
const HIGHEST_READING_MM = 1;
const readingDepth = quantity('a depth in mm', { least: -HIGHEST_READING_MM, most: 10_000 });

const covariance = record('a covariance', {
  shape: optional(oneOf(['matern-3/2', 'matern-5/2', 'exponential', 'gaussian'])),
  length: optional(length, 'Over which depths are alike, mm'),
  sill: optional(quantity('a variance in mm2', { above: 0, most: 1_000_000 }), 'Variance of the depth, mm2'),
});

/** Kriging costs the cube of their number: these take some ten seconds, and a fifth of a gigabyte. */
export const MOST_READINGS = 5000;

const readingPoint = z.tuple([coordinate, coordinate, readingDepth], {
  error: 'three numbers, [first, second, depth]',
});

const readings = record('gauge readings', {
  kind: z.literal('readings'),
  face,
  points: described(list(readingPoint, 'readings', 1, MOST_READINGS), '[first, second, depth in mm]'),
  gaugeError: optional(
    quantity('a standard deviation in mm', { least: 0, most: 10 }),
    'One standard deviation of a reading, mm; 0.1 when left out',
  ),
  within: optional(corners, 'Where the readings hold; the whole face when left out'),
  covariance: optional(
    covariance,
    'How alike two depths are against their distance; what is left out is found from the readings',
  ),
  blend,
});

const scan = record('a scan', {
  kind: z.literal('scan'),
  face,
  columns: count('a number of columns', 1, 10_000),
  rows: count('a number of rows', 1, 10_000),
  depths: described(
    patterned(/^[A-Za-z0-9+/]*={0,2}$/, 'depths in base64'),
    'Base64 of little-endian float32, row by row, mm; NaN = not seen',
  ),
  blend,
});

export const markSchema = byKind(
  'a mark',
  [patch, area, pit, stroke, smooth, edge, readings, scan],
  '"patch", "area", "pit", "stroke", "smooth", "edge", "readings" or "scan"',
  { id: 'Mark', description: 'Something worn; marks are applied in the order given' },
);

/** Marks a part may carry. A long day with the brush makes a few hundred; replaying many thousands would keep a screen waiting. */
export const MOST_MARKS = 5000;
