/** Wear plate and impeller as the job file writes them: mm, deg, g/cm3. */
import {
  angle,
  coordinate,
  count,
  density,
  depth,
  kindNeeds,
  length,
  list,
  oneOf,
  pair,
  quantity,
  record,
} from './field-kinds.ts';
import { MOST_MARKS, markSchema } from './mark-schema.ts';
import { sections } from './section-schema.ts';
import { z } from './zod.ts';

const ID_NEEDS = 'a name of 1 to 64 characters on one line, without ":" or "*"';
/** Neither blank nor with a line break or another control character: it stands in the tables of the sheet. */
const ID = /^(?=.*\S)[^:*\p{Cc}\u2028\u2029]{1,64}$/u;
const id = z
  .string({ error: ID_NEEDS })
  .regex(ID, { error: ID_NEEDS })
  .describe('Names the part in this job');

const wear = list(markSchema, 'marks', 0, MOST_MARKS).default([]).describe('Applied in the order given');
const partDensity = density.describe('Density of the metal, g/cm3');
const leastThickness = depth.optional().describe('Least wall that may be left, mm');

const corner = pair(coordinate, 'two numbers in mm, [x, y]');
const outline = record('an outline', {
  edge: list(corner, 'corners', 3, 2000).describe('Corners [x, y] of a closed polygon, mm'),
  holes: list(list(corner, 'corners', 3, 2000), 'holes', 0, 500).optional(),
});

const boltCircle = record('a circle of bolt holes', {
  count: count('a number of holes', 1, 360),
  circleDiameter: length.describe('Diameter of the circle the holes stand on, mm'),
  holeDiameter: length.describe('mm'),
  startAngle: angle.optional().describe('Angle of the first hole, deg; 0 when left out'),
});

export const wearPlateSchema = record('a wear plate', {
  id,
  kind: z.literal('wear-plate'),
  density: partDensity,
  outerDiameter: length.optional().describe('mm'),
  boreDiameter: length.optional().describe('mm'),
  thickness: length.describe('mm'),
  coneAngle: quantity('an angle in deg', { above: -45, below: 45 })
    .optional()
    .describe('deg; 0 flat, above 0 dished, lower at the bore; 0 when left out'),
  boltHoles: list(boltCircle, 'circles of bolt holes', 0, 20).optional(),
  outline: outline.optional().describe('Instead of the two diameters and the cone'),
  leastThickness,
  wear,
  sections,
}).meta({
  id: 'WearPlate',
  oneOf: [
    { required: ['outerDiameter', 'boreDiameter'], not: { required: ['outline'] } },
    {
      required: ['outline'],
      not: { anyOf: [{ required: ['outerDiameter'] }, { required: ['boreDiameter'] }] },
    },
  ],
});

const bladeAngle = quantity('an angle in deg from the tangential direction', { least: 5, most: 85 });

const vanes = record('the vanes', {
  count: count('a number of vanes', 1, 24),
  firstAngle: angle.optional().describe('Angle of the leading edge of vane 1, deg; 0 when left out'),
  inletDiameter: length.describe('Across the leading edges, mm'),
  inletAngle: bladeAngle.describe('deg from the tangential direction'),
  outletAngle: bladeAngle.describe('deg from the tangential direction'),
  camber: oneOf(['linear', 'arc']).optional().describe('linear when left out'),
  wrap: quantity('an angle in deg', { above: 0, most: 720 })
    .optional()
    .describe('Measured from leading edge to outer end, deg'),
  thicknessInlet: length.describe('mm'),
  thicknessOutlet: length.describe('mm'),
  heightInlet: length.describe('mm'),
  heightOutlet: length.describe('mm'),
  nose: oneOf(['round', 'square']).optional().describe('Shape of the leading edge'),
});

export const impellerSchema = record('an impeller', {
  id,
  kind: z.literal('impeller'),
  density: partDensity,
  rotation: oneOf(['clockwise', 'counter-clockwise']).describe('Seen from the vane side'),
  outerDiameter: length.describe('mm'),
  hubDiameter: length.describe('mm'),
  hubHeight: length
    .optional()
    .describe(
      'Of the hub above the vane side of the shroud, mm; the height of the vanes at the inlet when left out',
    ),
  boreDiameter: length.optional().describe('Of the hole through the hub, mm; half the hub when left out'),
  shroudThickness: depth.describe('mm; 0 for an open impeller, hub and vanes alone'),
  vanes,
  leastThickness,
  wear,
  sections,
}).meta({ id: 'Impeller' });

export const partSchema = z.discriminatedUnion('kind', [wearPlateSchema, impellerSchema], {
  error: kindNeeds('a part', '"wear-plate" or "impeller"'),
});
