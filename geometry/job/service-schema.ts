/** What the job file says about the parts in service: the rotor, the gap, the weather on the day and the pump's flow test. */
import {
  angle,
  byKind,
  coordinate,
  count,
  density,
  described,
  length,
  list,
  localTime,
  money,
  oneOf,
  optional,
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
const radii = described(pair(coordinate, 'two radii in mm, [from, to]'), 'Radii from and to, mm');
const angles = described(
  pair(angle, 'two angles in deg, [from, to]'),
  'Angles from and to, counter-clockwise, deg',
);

const holes = record('balance holes', {
  kind: z.literal('holes'),
  face: oneOf(['shroud/back', 'shroud/rim']),
  at: described(
    list(point, 'holes', 1, 100),
    'Centres: on the back [radius, angle], on the rim [angle, distance below the vane side]',
  ),
  diameter: described(length, 'mm'),
  depth: described(cutDepth, 'To the flat bottom, mm'),
});

const skim = record('a skim', {
  kind: z.literal('skim'),
  face: z.literal('shroud/back', { error: '"shroud/back", the face that is skimmed' }),
  first: radii,
  second: angles,
  depth: described(cutDepth, 'mm'),
});

const putty = record('balance putty', {
  kind: z.literal('putty'),
  face: z.literal('shroud/front', { error: '"shroud/front", the face that putty is built up on' }),
  first: radii,
  second: angles,
  height: described(quantity('a height in mm', { above: 0, most: 1000 }), 'Above the shroud, mm'),
  density: described(density, 'Of the mix, g/cm3'),
});

const correctionSchema = byKind('a correction', [holes, skim, putty], '"holes", "skim" or "putty"', {
  id: 'Correction',
  description: 'Metal taken off or putty put on to balance the rotor',
});

const unbalance = record('an unbalance', {
  amount: described(quantity('an unbalance in g.mm', { least: 0, most: 1e9 }), 'g.mm'),
  angle: described(angle, 'deg'),
});

export const rotorSchema = record('the rotor', {
  part: described(partId, 'id of the impeller'),
  mass: optional(
    quantity('a mass in kg', { above: 0, most: 100_000 }),
    'Of the whole rotor, kg; estimated from the part when left out',
  ),
  speed: described(speed, 'r/min'),
  grade: described(
    quantity('a balance grade in mm/s', { above: 0, most: 4000 }),
    'Balance quality grade G, mm/s',
  ),
  planes: optional(count('a number of planes', 1, 2), 'Correction planes; 1 when left out'),
  planeSpacing: optional(length, 'Between the two correction planes, mm'),
  asFound: optional(unbalance, 'Measured before the repair'),
  densityError: optional(
    quantity('a percentage', { least: 0, most: 50 }),
    'One standard deviation of the density of the filler as mixed, %; 2 when left out',
  ),
  corrections: optional(list(correctionSchema, 'corrections', 0, 100), 'Decided on, in the order decided'),
});

export const clearanceSchema = record('the clearance', {
  plate: described(partId, 'id of the wear plate'),
  impeller: described(partId, 'id of the impeller'),
  asNew: described(gap, 'Axial gap with both parts as new, mm'),
  least: described(gap, 'Narrowest gap that runs free, mm'),
  most: described(gap, 'Widest gap that is worth running, mm'),
  shim: optional(quantity('a thickness in mm', { least: -100, most: 100 }), 'mm; 0 when left out'),
  tolerance: optional(gap, 'Of the gap as set, mm; 0 when left out'),
});

export const climateSchema = record('the climate', {
  air: optional(temperature, 'degC'),
  surface: optional(temperature, 'Of the part, degC'),
  humidity: optional(quantity('a relative humidity in %', { least: 0, most: 100 }), '%'),
  takenAt: optional(localTime, 'When the three were read'),
});

/** What the pump moves, in the words a fitter can answer in. */
export const serviceSchema = record('the service', {
  solids: described(
    oneOf(['none', 'soft', 'hard']),
    'What is carried along; soft: wood, peel, sludge; hard: sand, grit, scale',
  ),
  grains: optional(
    oneOf(['silt', 'sand', 'coarse']),
    'silt: not felt between the fingers; sand: felt, under 2 mm; coarse: 2 mm and more',
  ),
  concentration: optional(
    oneOf(['trace', 'little', 'much']),
    'By weight. trace: clear water with some; little: cloudy, under 5 %; much: 5 % and more',
  ),
  shape: optional(oneOf(['rounded', 'angular'])),
});

const testPoint = record('a point of the test', {
  flow: described(quantity('a flow in m3/h', { least: 0, most: 1e6 }), 'm3/h'),
  head: described(quantity('a head in m', { least: 0, most: 1e5 }), 'm'),
  power: described(quantity('a power in kW', { least: 0, most: 1e6 }), 'At the pump shaft, kW'),
});

export const flowTestSchema = record('the flow test', {
  density: described(quantity('a density in kg/m3', { above: 0, most: 10_000 }), 'Of the liquid, kg/m3'),
  ratedSpeed: described(speed, 'r/min'),
  duty: described(quantity('a flow in m3/h', { above: 0, most: 1e6 }), 'm3/h'),
  hoursPerYear: optional(quantity('hours a year', { least: 0, most: 8784 }), 'h'),
  energyPrice: optional(money, 'A kilowatt hour'),
  runs: list(
    record('a run of the test', {
      label: optional(text('a label', 100)),
      when: text('when the run was made', 100),
      speed: described(speed, 'r/min'),
      points: list(testPoint, 'points', 1, 1000),
    }),
    'runs',
    0,
    100,
  ),
});
