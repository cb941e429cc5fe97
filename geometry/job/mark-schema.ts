/** The wear marks as the job file writes them: mm, and degrees where a face's coordinate is an angle. */
import {
  coordinate,
  count,
  depth,
  kindNeeds,
  length,
  list,
  oneOf,
  pair,
  point,
  quantity,
  record,
} from './field-kinds.ts';
import { z } from './zod.ts';

const FACE_NEEDS = 'the name of a face such as "face" or "bore"';
const face = z
  .string({ error: FACE_NEEDS })
  .min(1, { error: FACE_NEEDS })
  .max(64, { error: FACE_NEEDS })
  .describe('Face of the part; * may stand for the vane number');

const blend = oneOf(['deepest', 'add', 'replace'])
  .optional()
  .describe('How the mark meets what is there; deepest when left out');

const corners = list(point, 'corners', 3, 2000);
const path = list(point, 'points', 1, 20_000).describe('Points [first, second] the tool passes through');
const radius = length.describe('Radius of the tool in the flat picture of the face, mm');

const patch = record('a patch', {
  kind: z.literal('patch'),
  face,
  first: pair(coordinate, 'two numbers, [from, to]').describe('From and to along the first coordinate'),
  second: pair(coordinate, 'two numbers, [from, to]').describe('From and to along the second coordinate'),
  depth: z
    .union([depth, pair(depth, 'two depths')], {
      error: 'a depth in mm of at least 0, or two of them, [at from, at to]',
    })
    .describe('mm; two depths vary linearly along the first coordinate'),
  blend,
});

const area = record('an area', {
  kind: z.literal('area'),
  face,
  outline: corners.describe('Corners of a closed polygon in the flat picture of the face'),
  depth: depth.describe('mm'),
  blend,
});

const pit = record('a pit', {
  kind: z.literal('pit'),
  face,
  at: point.describe('Centre'),
  diameter: length.describe('mm'),
  depth: depth.describe('At the centre, mm'),
  form: oneOf(['cone', 'bowl', 'flat']),
  blend,
});

const stroke = record('a stroke', {
  kind: z.literal('stroke'),
  face,
  path,
  radius,
  depth: depth.optional().describe('mm; may be left out when the stroke clears'),
  edge: oneOf(['hard', 'soft']).optional().describe('hard when left out'),
  clear: z.boolean({ error: 'true or false' }).optional().describe('Wipes wear away instead of adding it'),
  blend,
});

const smooth = record('a smoothing stroke', {
  kind: z.literal('smooth'),
  face,
  path,
  radius,
  strength: quantity('a share', { least: 0, most: 1 }).describe('0 leaves the surface, 1 evens it out'),
});

const edge = record('an edge loss', {
  kind: z.literal('edge'),
  face,
  profile: list(
    z.tuple([coordinate, depth], { error: 'two numbers, [along, depth]' }),
    'points',
    1,
    2000,
  ).describe('Loss in mm against the first coordinate, linear between the points'),
  blend,
});

/** A gauge reads a little below zero on sound metal; more than this is a slip. */
const HIGHEST_READING_MM = 1;
const readingDepth = quantity('a depth in mm', { least: -HIGHEST_READING_MM, most: 10_000 });

const covariance = record('a covariance', {
  shape: oneOf(['matern-3/2', 'matern-5/2', 'exponential', 'gaussian']).optional(),
  length: length.optional().describe('Over which depths are alike, mm'),
  sill: quantity('a variance in mm2', { above: 0, most: 1_000_000 })
    .optional()
    .describe('Variance of the depth, mm2'),
});

/** Kriging costs the cube of their number: these take some ten seconds, and a fifth of a gigabyte. */
export const MOST_READINGS = 5000;

const readings = record('gauge readings', {
  kind: z.literal('readings'),
  face,
  points: list(
    z.tuple([coordinate, coordinate, readingDepth], { error: 'three numbers, [first, second, depth]' }),
    'readings',
    1,
    MOST_READINGS,
  ).describe('[first, second, depth in mm]'),
  gaugeError: quantity('a standard deviation in mm', { least: 0, most: 10 })
    .optional()
    .describe('One standard deviation of a reading, mm; 0.1 when left out'),
  within: corners.optional().describe('Where the readings hold; the whole face when left out'),
  covariance: covariance
    .optional()
    .describe('How alike two depths are against their distance; what is left out is found from the readings'),
  blend,
});

const scan = record('a scan', {
  kind: z.literal('scan'),
  face,
  columns: count('a number of columns', 1, 10_000),
  rows: count('a number of rows', 1, 10_000),
  depths: z
    .string({ error: 'depths in base64' })
    .regex(/^[A-Za-z0-9+/]*={0,2}$/, { error: 'depths in base64' })
    .describe('Base64 of little-endian float32, row by row, mm; NaN = not seen'),
  blend,
});

export const markSchema = z
  .discriminatedUnion('kind', [patch, area, pit, stroke, smooth, edge, readings, scan], {
    error: kindNeeds('a mark', '"patch", "area", "pit", "stroke", "smooth", "edge", "readings" or "scan"'),
  })
  .meta({ id: 'Mark', description: 'Something worn; marks are applied in the order given' });

/** Marks a part may carry. A long day with the brush makes a few hundred; replaying many thousands would keep a screen waiting. */
export const MOST_MARKS = 5000;
