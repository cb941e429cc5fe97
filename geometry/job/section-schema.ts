/** Where a straightedge was laid over a face, as the job file writes it: mm, and degrees where a face's coordinate is an angle. */
import { byKind, coordinate, described, faceName, list, optional, point, record } from './field-kinds.ts';
import { z } from './zod.ts';

const face = described(
  faceName('the name of one face such as "face" or "vane-2/tip"'),
  'One face of the part, without *',
);

const line = record('a straight section', {
  kind: z.literal('line'),
  face,
  from: described(point, 'Where it begins, [first, second]'),
  to: described(point, 'Where it ends; straight in the flat picture, across holes too'),
});

const alongFirst = record('a section along the first coordinate', {
  kind: z.literal('along-first'),
  face,
  at: described(coordinate, 'The second coordinate, mm or deg: a spoke of a round face, a ring of a bore'),
});

const alongSecond = record('a section along the second coordinate', {
  kind: z.literal('along-second'),
  face,
  at: described(coordinate, 'The first coordinate, mm or deg: a ring of a round face'),
});

export const sectionSchema = byKind(
  'a section',
  [line, alongFirst, alongSecond],
  '"line", "along-first" or "along-second"',
  { id: 'Section', description: 'A straightedge laid over a face; the sheet shows what lies under it' },
);

/** Sections a part may keep: each is a picture on the sheet. */
const MOST_SECTIONS = 20;

export const sections = optional(
  list(sectionSchema, 'sections', 0, MOST_SECTIONS),
  'Shown on the sheet in the order given',
);
