/** Where a straightedge was laid over a face, as the job file writes it: mm, and degrees where a face's coordinate is an angle. */
import { coordinate, kindNeeds, list, point, record } from './field-kinds.ts';
import { z } from './zod.ts';

const FACE_NEEDS = 'the name of one face such as "face" or "vane-2/tip"';
const face = z
  .string({ error: FACE_NEEDS })
  .min(1, { error: FACE_NEEDS })
  .max(64, { error: FACE_NEEDS })
  .describe('One face of the part, without *');

const line = record('a straight section', {
  kind: z.literal('line'),
  face,
  from: point.describe('Where it begins, [first, second]'),
  to: point.describe('Where it ends; straight in the flat picture, across holes too'),
});

const alongFirst = record('a section along the first coordinate', {
  kind: z.literal('along-first'),
  face,
  at: coordinate.describe('The second coordinate, mm or deg: a spoke of a round face, a ring of a bore'),
});

const alongSecond = record('a section along the second coordinate', {
  kind: z.literal('along-second'),
  face,
  at: coordinate.describe('The first coordinate, mm or deg: a ring of a round face'),
});

export const sectionSchema = z
  .discriminatedUnion('kind', [line, alongFirst, alongSecond], {
    error: kindNeeds('a section', '"line", "along-first" or "along-second"'),
  })
  .meta({
    id: 'Section',
    description: 'A straightedge laid over a face; the sheet shows what lies under it',
  });

/** Sections a part may keep: each is a picture on the sheet. */
const MOST_SECTIONS = 20;

export const sections = list(sectionSchema, 'sections', 0, MOST_SECTIONS)
  .optional()
  .describe('Shown on the sheet in the order given');
