/** Wear plate and impeller as the job file writes them: mm, deg, g/cm3. */
import {
  angle,
  byKind,
  coordinate,
  count,
  density,
  depth,
  described,
  length,
  list,
  oneOf,
  optional,
  pair,
  patterned,
  quantity,
  record,
} from './field-kinds.ts';
import { MOST_MARKS, markSchema } from './mark-schema.ts';
import { sections } from './section-schema.ts';
import { z } from './zod.ts';

/** Neither blank nor with a line break or another control character: it stands in the tables of the sheet. */
const ID = /^(?=.*\S)[^:*\p{Cc}\u2028\u2029]{1,64}$/u;
const id = described(
  patterned(ID, 'a name of 1 to 64 characters on one line, without ":" or "*"'),
  'Names the part in this job',
);

const marks = list(markSchema, 'marks', 0, MOST_MARKS);
const wear = described(z._default(marks, []), 'Applied in the order given');
const partDensity = described(density, 'Density of the metal, g/cm3');
const leastThickness = optional(depth, 'Least wall that may be left, mm');

const corner = pair(coordinate, 'two numbers in mm, [x, y]');
const outline = record('an outline', {
  edge: described(list(corner, 'corners', 3, 2000), 'Corners [x, y] of a closed polygon, mm'),
  holes: optional(list(list(corner, 'corners', 3, 2000), 'holes', 0, 500)),
});

const boltCircle = record('a circle of bolt holes', {
  count: count('a number of holes', 1, 360),
  circleDiameter: described(length, 'Diameter of the circle the holes stand on, mm'),
  holeDiameter: described(length, 'mm'),
  startAngle: optional(angle, 'Angle of the first hole, deg; 0 when left out'),
});

export const wearPlateSchema = record(
  'a wear plate',
  {
    id,
    kind: z.literal('wear-plate'),
    density: partDensity,
    outerDiameter: optional(length, 'mm'),
    boreDiameter: optional(length, 'mm'),
    thickness: described(length, 'mm'),
    coneAngle: optional(
      quantity('an angle in deg', { above: -45, below: 45 }),
      'deg; 0 flat, above 0 dished, lower at the bore; 0 when left out',
    ),
    boltHoles: optional(list(boltCircle, 'circles of bolt holes', 0, 20)),
    outline: optional(outline, 'Instead of the two diameters and the cone'),
    leastThickness,
    wear,
    sections,
  },
  {
    id: 'WearPlate',
    oneOf: [
      { required: ['outerDiameter', 'boreDiameter'], not: { required: ['outline'] } },
      {
        required: ['outline'],
        not: { anyOf: [{ required: ['outerDiameter'] }, { required: ['boreDiameter'] }] },
      },
    ],
  },
);

const bladeAngle = quantity('an angle in deg from the tangential direction', { least: 5, most: 85 });

const vanes = record('the vanes', {
  count: count('a number of vanes', 1, 24),
  firstAngle: optional(angle, 'Angle of the leading edge of vane 1, deg; 0 when left out'),
  inletDiameter: described(length, 'Across the leading edges, mm'),
  inletAngle: described(bladeAngle, 'deg from the tangential direction'),
  outletAngle: described(bladeAngle, 'deg from the tangential direction'),
  camber: optional(oneOf(['linear', 'arc']), 'linear when left out'),
  wrap: optional(
    quantity('an angle in deg', { above: 0, most: 720 }),
    'Measured from leading edge to outer end, deg',
  ),
  thicknessInlet: described(length, 'mm'),
  thicknessOutlet: described(length, 'mm'),
  heightInlet: described(length, 'mm'),
  heightOutlet: described(length, 'mm'),
  nose: optional(oneOf(['round', 'square']), 'Shape of the leading edge'),
});

export const impellerSchema = record(
  'an impeller',
  {
    id,
    kind: z.literal('impeller'),
    density: partDensity,
    rotation: described(oneOf(['clockwise', 'counter-clockwise']), 'Seen from the vane side'),
    outerDiameter: described(length, 'mm'),
    hubDiameter: described(length, 'mm'),
    hubHeight: optional(
      length,
      'Of the hub above the vane side of the shroud, mm; the height of the vanes at the inlet when left out',
    ),
    boreDiameter: optional(length, 'Of the hole through the hub, mm; half the hub when left out'),
    shroudThickness: described(depth, 'mm; 0 for an open impeller, hub and vanes alone'),
    vanes,
    leastThickness,
    wear,
    sections,
  },
  { id: 'Impeller' },
);

export const partSchema = byKind('a part', [wearPlateSchema, impellerSchema], '"wear-plate" or "impeller"');
