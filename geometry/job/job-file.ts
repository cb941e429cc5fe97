/**
 * The job file, format 1: what was measured and chosen, in the file's units (mm, deg, g/cm3, cm3, g, min, degC, %, um).
 * `jobSchema` says which values each field can hold; what fields must agree on is in `checkJob`.
 */
import {
  allowance,
  depth,
  described,
  list,
  oneOf,
  optional,
  patterned,
  percent,
  point,
  quantity,
  record,
  text,
} from './field-kinds.ts';
import type { markSchema } from './mark-schema.ts';
import { coatSchema, fillerSchema } from './material-schema.ts';
import { type impellerSchema, partSchema, type wearPlateSchema } from './part-schema.ts';
import { logSchema, planSchema } from './plan-schema.ts';
import type { sectionSchema } from './section-schema.ts';
import {
  clearanceSchema,
  climateSchema,
  flowTestSchema,
  historySchema,
  rotorSchema,
  serviceSchema,
} from './service-schema.ts';
import { z } from './zod.ts';

/** The one format this version reads and writes. */
export const FORMAT = 1;
export const MOST_PARTS = 8;

const facePattern = patterned(/^[^:]{1,64}:[^:]{1,64}$/, 'part and face such as "plate:face", * for any');
const facePatterns = list(facePattern, 'part:face patterns', 0, 200);

const overruleSchema = record('an overrule', {
  at: described(facePattern, 'part:face'),
  point: described(point, 'A point of the damage region'),
  action: oneOf(['fill', 'leave']),
});

const repairSchema = record('the repair', {
  leaveBelow: optional(depth, 'Regions shallower than this are left for the coat, mm; 1 when left out'),
  coatAllowance: optional(allowance, 'Left free of filler for the coat, mm; 0 when left out'),
  allowanceFaces: optional(facePatterns, 'Where the coat allowance holds; the running faces when left out'),
  coatedFaces: optional(facePatterns, 'Every face when left out'),
  overbuild: optional(allowance, 'Filler above the surface to be dressed off, mm; 0 when left out'),
  fillerWaste: optional(percent, '% on top of the net volume; 10 when left out'),
  coatWaste: optional(percent, '% on top of the net volume; 20 when left out'),
  applicationRate: optional(
    quantity('a rate in cm3/min', { above: 0, most: 10_000 }),
    'What this person fills and levels, cm3/min; 20 when left out',
  ),
  readingWorth: optional(
    quantity('a volume in cm3', { above: 0, most: 1_000_000 }),
    'How far the putty to order may be off, cm3; the smallest pack when left out',
  ),
  overrule: optional(list(overruleSchema, 'overrules', 0, 10_000)),
});

export const jobSchema = record('a job', {
  format: z.literal(FORMAT, { error: `${FORMAT}, the format this version reads` }),
  title: optional(text('a title', 500)),
  notes: optional(text('notes', 100_000)),
  parts: list(partSchema, 'parts', 1, MOST_PARTS),
  filler: optional(fillerSchema),
  coat: optional(coatSchema),
  repair: optional(repairSchema),
  rotor: optional(rotorSchema),
  clearance: optional(clearanceSchema),
  climate: optional(climateSchema),
  service: optional(serviceSchema, 'What the pump moves: it says which class of putty stands up to it'),
  plan: optional(planSchema),
  log: optional(logSchema, 'What was done when'),
  flowTest: optional(flowTestSchema),
  history: optional(historySchema, 'What earlier repairs found: it says how fast the parts wear'),
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
export type ClearanceFile = Known<z.infer<typeof clearanceSchema>>;
export type FlowTestFile = Known<z.infer<typeof flowTestSchema>>;
export type HistoryFile = Known<z.infer<typeof historySchema>>;
export type ServiceFile = Known<z.infer<typeof serviceSchema>>;
export type PlanFile = Known<z.infer<typeof planSchema>>;
export type LogFile = Known<z.infer<typeof logSchema>>;
export type OverruleFile = Known<z.infer<typeof overruleSchema>>;
export type BoltCircleFile = NonNullable<WearPlateFile['boltHoles']>[number];
export type OutlineFile = NonNullable<WearPlateFile['outline']>;
