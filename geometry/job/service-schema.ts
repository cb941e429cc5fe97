/** What the job file says about the parts in service: the rotor, the gap, the weather on the day and the pump's flow test. */
import {
  angle,
  coordinate,
  count,
  density,
  kindNeeds,
  length,
  list,
  localTime,
  money,
  oneOf,
  pair,
  point,
  quantity,
  record,
  temperature,
  text,
} from './field-kinds.ts';
import { z } from './zod.ts';

const partId = text('the id of a part', 64);
const gap = quantity('a gap in mm', { least: 0, most: 100 });
const speed = quantity('a speed in r/min', { above: 0, most: 100_000 });

const cutDepth = quantity('a depth in mm', { above: 0, most: 1000 });
const radii = pair(coordinate, 'two radii in mm, [from, to]').describe('Radii from and to, mm');
const angles = pair(angle, 'two angles in deg, [from, to]').describe(
  'Angles from and to, counter-clockwise, deg',
);

const holes = record('balance holes', {
  kind: z.literal('holes'),
  face: oneOf(['shroud/back', 'shroud/rim']),
  at: list(point, 'holes', 1, 100).describe(
    'Centres: on the back [radius, angle], on the rim [angle, distance below the vane side]',
  ),
  diameter: length.describe('mm'),
  depth: cutDepth.describe('To the flat bottom, mm'),
});

const skim = record('a skim', {
  kind: z.literal('skim'),
  face: z.literal('shroud/back', { error: '"shroud/back", the face that is skimmed' }),
  first: radii,
  second: angles,
  depth: cutDepth.describe('mm'),
});

const putty = record('balance putty', {
  kind: z.literal('putty'),
  face: z.literal('shroud/front', { error: '"shroud/front", the face that putty is built up on' }),
  first: radii,
  second: angles,
  height: quantity('a height in mm', { above: 0, most: 1000 }).describe('Above the shroud, mm'),
  density: density.describe('Of the mix, g/cm3'),
});

const correctionSchema = z
  .discriminatedUnion('kind', [holes, skim, putty], {
    error: kindNeeds('a correction', '"holes", "skim" or "putty"'),
  })
  .meta({ id: 'Correction', description: 'Metal taken off or putty put on to balance the rotor' });

export const rotorSchema = record('the rotor', {
  part: partId.describe('id of the impeller'),
  mass: quantity('a mass in kg', { above: 0, most: 100_000 })
    .optional()
    .describe('Of the whole rotor, kg; estimated from the part when left out'),
  speed: speed.describe('r/min'),
  grade: quantity('a balance grade in mm/s', { above: 0, most: 4000 }).describe(
    'Balance quality grade G, mm/s',
  ),
  planes: count('a number of planes', 1, 2).optional().describe('Correction planes; 1 when left out'),
  planeSpacing: length.optional().describe('Between the two correction planes, mm'),
  asFound: record('an unbalance', {
    amount: quantity('an unbalance in g.mm', { least: 0, most: 1e9 }).describe('g.mm'),
    angle: angle.describe('deg'),
  })
    .optional()
    .describe('Measured before the repair'),
  densityError: quantity('a percentage', { least: 0, most: 50 })
    .optional()
    .describe('One standard deviation of the density of the filler as mixed, %; 2 when left out'),
  corrections: list(correctionSchema, 'corrections', 0, 100)
    .optional()
    .describe('Decided on, in the order decided'),
});

export const clearanceSchema = record('the clearance', {
  plate: partId.describe('id of the wear plate'),
  impeller: partId.describe('id of the impeller'),
  asNew: gap.describe('Axial gap with both parts as new, mm'),
  least: gap.describe('Narrowest gap that runs free, mm'),
  most: gap.describe('Widest gap that is worth running, mm'),
  shim: quantity('a thickness in mm', { least: -100, most: 100 }).optional().describe('mm; 0 when left out'),
  tolerance: gap.optional().describe('Of the gap as set, mm; 0 when left out'),
});

export const climateSchema = record('the climate', {
  air: temperature.optional().describe('degC'),
  surface: temperature.optional().describe('Of the part, degC'),
  humidity: quantity('a relative humidity in %', { least: 0, most: 100 }).optional().describe('%'),
  takenAt: localTime.optional().describe('When the three were read'),
});

/** What the pump moves, in the words a fitter can answer in. */
export const serviceSchema = record('the service', {
  solids: oneOf(['none', 'soft', 'hard']).describe(
    'What is carried along; soft: wood, peel, sludge; hard: sand, grit, scale',
  ),
  grains: oneOf(['silt', 'sand', 'coarse'])
    .optional()
    .describe('silt: not felt between the fingers; sand: felt, under 2 mm; coarse: 2 mm and more'),
  concentration: oneOf(['trace', 'little', 'much'])
    .optional()
    .describe('By weight. trace: clear water with some; little: cloudy, under 5 %; much: 5 % and more'),
  shape: oneOf(['rounded', 'angular']).optional(),
});

const testPoint = record('a point of the test', {
  flow: quantity('a flow in m3/h', { least: 0, most: 1e6 }).describe('m3/h'),
  head: quantity('a head in m', { least: 0, most: 1e5 }).describe('m'),
  power: quantity('a power in kW', { least: 0, most: 1e6 }).describe('At the pump shaft, kW'),
});

export const flowTestSchema = record('the flow test', {
  density: quantity('a density in kg/m3', { above: 0, most: 10_000 }).describe('Of the liquid, kg/m3'),
  ratedSpeed: speed.describe('r/min'),
  duty: quantity('a flow in m3/h', { above: 0, most: 1e6 }).describe('m3/h'),
  hoursPerYear: quantity('hours a year', { least: 0, most: 8784 }).optional().describe('h'),
  energyPrice: money.optional().describe('A kilowatt hour'),
  runs: list(
    record('a run of the test', {
      label: text('a label', 100).optional(),
      when: text('when the run was made', 100),
      speed: speed.describe('r/min'),
      points: list(testPoint, 'points', 1, 1000),
    }),
    'runs',
    0,
    100,
  ),
});
