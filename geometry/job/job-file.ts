/**
 * The job file, format 1: what was measured and chosen, in the file's units (mm, deg, g/cm3, cm3, g, min, degC, %, um).
 * `jobSchema` says which values each field can hold; what fields must agree on is in `checkJob`.
 */
import { allowance, depth, list, oneOf, percent, point, quantity, record, text } from './field-kinds.ts';
import type { markSchema } from './mark-schema.ts';
import { coatSchema, fillerSchema } from './material-schema.ts';
import { type impellerSchema, partSchema, type wearPlateSchema } from './part-schema.ts';
import { logSchema, planSchema } from './plan-schema.ts';
import type { sectionSchema } from './section-schema.ts';
import {
  clearanceSchema,
  climateSchema,
  flowTestSchema,
  rotorSchema,
  serviceSchema,
} from './service-schema.ts';
import { z } from './zod.ts';

/** The one format this version reads and writes. */
export const FORMAT = 1;
export const MOST_PARTS = 8;

const PATTERN_NEEDS = 'part and face such as "plate:face", * for any';
const facePattern = z
  .string({ error: PATTERN_NEEDS })
  .regex(/^[^:]{1,64}:[^:]{1,64}$/, { error: PATTERN_NEEDS });
const facePatterns = list(facePattern, 'part:face patterns', 0, 200).optional();

const overruleSchema = record('an overrule', {
  at: facePattern.describe('part:face'),
  point: point.describe('A point of the damage region'),
  action: oneOf(['fill', 'leave']),
});

const repairSchema = record('the repair', {
  leaveBelow: depth
    .optional()
    .describe('Regions shallower than this are left for the coat, mm; 1 when left out'),
  coatAllowance: allowance.optional().describe('Left free of filler for the coat, mm; 0 when left out'),
  allowanceFaces: facePatterns.describe('Where the coat allowance holds; the running faces when left out'),
  coatedFaces: facePatterns.describe('Every face when left out'),
  overbuild: allowance.optional().describe('Filler above the surface to be dressed off, mm; 0 when left out'),
  fillerWaste: percent.optional().describe('% on top of the net volume; 10 when left out'),
  coatWaste: percent.optional().describe('% on top of the net volume; 20 when left out'),
  applicationRate: quantity('a rate in cm3/min', { above: 0, most: 10_000 })
    .optional()
    .describe('What this person fills and levels, cm3/min; 20 when left out'),
  readingWorth: quantity('a volume in cm3', { above: 0, most: 1_000_000 })
    .optional()
    .describe('How far the putty to order may be off, cm3; the smallest pack when left out'),
  overrule: list(overruleSchema, 'overrules', 0, 10_000).optional(),
});

export const jobSchema = record('a job', {
  format: z.literal(FORMAT, { error: `${FORMAT}, the format this version reads` }),
  title: text('a title', 500).optional(),
  notes: text('notes', 100_000).optional(),
  parts: list(partSchema, 'parts', 1, MOST_PARTS),
  filler: fillerSchema.optional(),
  coat: coatSchema.optional(),
  repair: repairSchema.optional(),
  rotor: rotorSchema.optional(),
  clearance: clearanceSchema.optional(),
  climate: climateSchema.optional(),
  service: serviceSchema
    .optional()
    .describe('What the pump moves: it says which class of putty stands up to it'),
  plan: planSchema.optional(),
  log: logSchema.optional().describe('What was done when'),
  flowTest: flowTestSchema.optional(),
});

/** What a schema reads, read-only and with the fields we know alone, so that a misspelt name does not compile. */
type Known<T> = T extends readonly unknown[]
  ? { readonly [K in keyof T]: Known<T[K]> }
  : T extends object
    ? { readonly [K in keyof T as string extends K ? never : K]: Known<T[K]> }
    : T;

export type JobFile = Known<z.infer<typeof jobSchema>>;
export type WearPlateFile = Known<z.infer<typeof wearPlateSchema>>;
export type ImpellerFile = Known<z.infer<typeof impellerSchema>>;
export type PartFile = WearPlateFile | ImpellerFile;
export type MarkFile = Known<z.infer<typeof markSchema>>;
export type SectionFile = Known<z.infer<typeof sectionSchema>>;
export type FillerFile = Known<z.infer<typeof fillerSchema>>;
export type CoatFile = Known<z.infer<typeof coatSchema>>;
export type RepairFile = Known<z.infer<typeof repairSchema>>;
export type ClimateFile = Known<z.infer<typeof climateSchema>>;
export type ServiceFile = Known<z.infer<typeof serviceSchema>>;
export type PlanFile = Known<z.infer<typeof planSchema>>;
export type LogFile = Known<z.infer<typeof logSchema>>;
export type OverruleFile = Known<z.infer<typeof overruleSchema>>;
export type BoltCircleFile = NonNullable<WearPlateFile['boltHoles']>[number];
export type OutlineFile = NonNullable<WearPlateFile['outline']>;
